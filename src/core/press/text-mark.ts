import { type Mark, mark, round } from './mark.ts'
import { type Face, textWidth } from './measure.ts'
import type { ColourName } from './style.ts'

export interface TextStyle {
  readonly face?: Face
  readonly size?: number
  readonly colour?: ColourName
  readonly anchor?: 'start' | 'middle' | 'end'
  /** Keeps the words readable over lines. */
  readonly halo?: boolean
}

const classOf: Record<Face, string> = { sans: 't-sans', sansBold: 't-bold', serif: 't-serif', serifItalic: 't-italic' }

export interface Box {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

/** One line of text with its baseline at `y`. */
export function textMark(x: number, y: number, text: string, style: TextStyle = {}): Mark {
  const { face = 'sans', size = 12.5, colour = 'ink', anchor = 'start', halo = false } = style
  return {
    ...mark('text', {
      x,
      y,
      class: `${classOf[face]} f-${colour}${halo ? ' halo' : ''}`,
      'font-size': size,
      'text-anchor': anchor === 'start' ? undefined : anchor,
    }),
    text,
  }
}

/** The box such a line takes, a little generous: ascent 0.78 and descent 0.24 of the size. */
export function textBox(x: number, y: number, text: string, style: TextStyle = {}): Box {
  const { face = 'sans', size = 12.5, anchor = 'start' } = style
  const width = textWidth(text, size, face)
  const x0 = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return { x0: round(x0), y0: round(y - 0.78 * size), x1: round(x0 + width), y1: round(y + 0.24 * size) }
}

export function overlaps(a: Box, b: Box, gap = 0): boolean {
  return a.x0 < b.x1 + gap && b.x0 < a.x1 + gap && a.y0 < b.y1 + gap && b.y0 < a.y1 + gap
}

/** The line of text broken at spaces so that no part is wider than `width`. */
export function wrapped(text: string, width: number, size: number, face: Face = 'sans'): string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && textWidth(`${last} ${word}`, size, face) <= width)
      lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  return lines
}
