import { type Mark, mark, round } from './mark.ts'
import { spread } from './spread.ts'
import { textMark } from './text-mark.ts'
import type { Point } from './thin.ts'

/** A note beside a drawing, tied by a thin leader to the spot it speaks of. */
export interface Callout {
  readonly spot: Point
  /** First line in ink, the rest in softer ink. */
  readonly lines: readonly string[]
  readonly bad?: boolean
}

/** Notes down one side, in the order of their spots, moved apart so that none overlaps; leaders have one bend. */
export function calloutMarks(
  notes: readonly Callout[],
  side: 'left' | 'right',
  edge: number,
  room: { y0: number; y1: number },
  size: number,
): Mark[] {
  const line = size + 3.5
  const centres = spread(
    notes.map((note) => ({ at: note.spot.y, size: note.lines.length * line + 5 })),
    room.y0,
    room.y1,
  )
  return notes.flatMap((note, i) => {
    const top = centres[i] - (note.lines.length * line) / 2
    const first = top + line / 2
    const out = side === 'left' ? edge + 5 : edge - 5
    const bend = side === 'left' ? edge + 16 : edge - 16
    return [
      mark('path', {
        class: `line s-${note.bad ? 'heat' : 'soft'}`,
        d: `M${round(out)} ${round(first)}L${round(bend)} ${round(first)}L${round(note.spot.x)} ${round(note.spot.y)}`,
        'stroke-width': 0.8,
        'stroke-linejoin': 'round',
      }),
      mark('circle', { class: note.bad ? 'f-heat' : 'f-ink', cx: note.spot.x, cy: note.spot.y, r: 1.9 }),
      ...note.lines.map((text, k) =>
        textMark(edge, first + 0.35 * size + k * line, text, {
          size,
          anchor: side === 'left' ? 'end' : 'start',
          colour: k > 0 ? 'soft' : note.bad ? 'heat' : 'ink',
          face: note.bad && k === 0 ? 'sansBold' : 'sans',
        }),
      ),
    ]
  })
}
