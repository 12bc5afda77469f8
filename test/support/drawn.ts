// What a drawing says and where, read back from its elements: for tests that look for overlaps and bad numbers.
import { type Mark, marksOf } from '../../src/core/press/index.ts'
import type { Face } from '../../src/core/press/measure.ts'
import { type Box, textBox } from '../../src/core/press/text-mark.ts'

export interface DrawnText {
  readonly text: string
  readonly box: Box
}

const faces: Record<string, Face> = {
  't-sans': 'sans',
  't-bold': 'sansBold',
  't-serif': 'serif',
  't-italic': 'serifItalic',
}

export function textsOf(drawing: Mark): DrawnText[] {
  return [...marksOf(drawing)]
    .filter((mark) => mark.tag === 'text' && mark.text)
    .map((mark) => {
      const face = faces[String(mark.attrs.class).split(' ')[0]]
      const anchor = (mark.attrs['text-anchor'] ?? 'start') as 'start'
      const style = { face, size: Number(mark.attrs['font-size']), anchor }
      return {
        text: mark.text as string,
        box: textBox(Number(mark.attrs.x), Number(mark.attrs.y), mark.text as string, style),
      }
    })
}

/** Pairs of texts that cover each other by more than half a pixel either way. */
export function collisions(texts: readonly DrawnText[]): string[] {
  const hits: string[] = []
  texts.forEach((a, i) => {
    for (const b of texts.slice(i + 1)) {
      const wide = Math.min(a.box.x1, b.box.x1) - Math.max(a.box.x0, b.box.x0)
      const tall = Math.min(a.box.y1, b.box.y1) - Math.max(a.box.y0, b.box.y0)
      if (wide > 0.5 && tall > 0.5) hits.push(`"${a.text}" and "${b.text}"`)
    }
  })
  return hits
}

/** Every attribute that holds a number which is none. */
export function badNumbers(drawing: Mark): string[] {
  return [...marksOf(drawing)].flatMap((mark) =>
    Object.entries(mark.attrs)
      .filter(([, value]) => /NaN|Infinity|undefined|null/.test(String(value)))
      .map(([name, value]) => `${mark.tag} ${name}=${value}`),
  )
}
