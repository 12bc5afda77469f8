import type { Run } from '../cook/index.ts'
import type { ClockScale } from './clock-scale.ts'
import { doneScales } from './done-words.ts'
import type { Mark } from './mark.ts'
import { textWidth } from './measure.ts'
import { shortNames } from './names.ts'
import { fittedMoment, totalSentence } from './strip-words.ts'
import { type Box, textMark, wrapped } from './text-mark.ts'

// Below the axis: the total, on a narrow sheet also what is done in words, and the cursor's sentence.

/** Under this width the sentence has a line of its own. */
const narrow = 760

/** Lines that do not depend on the cursor, so that the plot keeps its height while it moves. */
export function footLines(run: Run, width: number, size: number): readonly string[] {
  const total = totalSentence(run)
  if (width >= narrow) return [total]
  const lines = wrapped(total, width - 2, size + 1.5, 'serifItalic')
  return width >= 640
    ? lines
    : [...lines, doneWords(run, (text) => textWidth(text, size + 1.5, 'serifItalic') <= width - 2)]
}

export function footHeight(lines: readonly string[], size: number): number {
  return 2 * size + 16 + (size + 6) * lines.length
}

interface FootPlace {
  readonly width: number
  readonly plot: Box
  readonly size: number
  readonly cursor_s: number | undefined
}

export function stripFoot(run: Run, clock: ClockScale, { width, plot, size, cursor_s }: FootPlace): Mark[] {
  const lines = footLines(run, width, size)
  const own = width < narrow
  const x0 = own ? 0 : plot.x0
  const first = plot.y1 + 2 * size + 12
  const italic = { face: 'serifItalic', size: size + 1.5, colour: 'soft' } as const
  const marks = lines.map((line, i) => textMark(x0, first + i * (size + 6), line, italic))
  if (cursor_s === undefined) return marks
  // On a wide sheet the sentence stands under its cursor, past the total.
  const low = own ? 0 : x0 + textWidth(lines[0], size + 1.5, 'serifItalic') + 18
  const fits = (text: string) => textWidth(text, size, 'sansBold') <= width - low - 2
  const sentence = fittedMoment(run, cursor_s, fits)
  const at = Math.max(low, Math.min(clock.x(cursor_s) + 4, width - textWidth(sentence, size, 'sansBold') - 2))
  const y = first + (own ? lines.length * (size + 6) : 0)
  return [...marks, textMark(at, y, sentence, { face: 'sansBold', size })]
}

/** What is done, for a strip too narrow for measures: "pork tender, leeks soft", as many as fit. */
function doneWords(run: Run, fits: (text: string) => boolean): string {
  const names = shortNames(run.plan)
  const parts = doneScales(run)
    .flatMap(({ load }) => run.pieces.filter((piece) => piece.load === load))
    .map((piece) => `${names[piece.load]} ${piece.word}`)
  for (let n = Math.min(parts.length, 4); n > 0; n--) {
    const words = parts.slice(0, n).join(', ')
    if (fits(words)) return words
  }
  return ''
}
