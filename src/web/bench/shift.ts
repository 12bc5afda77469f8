import type { Cure, Edit, Span } from '../../core/findings/index.ts'

/** Where a place of one text lies in another that grew out of it by one stretch of changes. */
export interface Shift {
  /** The words between two places; they do not take in what was put right before or after them. */
  readonly span: (words: Span) => Span
  /** True when the stretch is untouched. */
  readonly untouched: (from: number, to: number) => boolean
}

/**
 * Findings come back a few keys after the text they speak of. What differs between the two texts is taken as one
 * stretch (common start, common end): enough for the hand of one writer, and it needs no record of the keys.
 */
export function shiftOf(before: string, after: string): Shift {
  if (before === after) return { span: (words) => words, untouched: () => true }
  const shorter = Math.min(before.length, after.length)
  let head = 0
  while (head < shorter && before.charCodeAt(head) === after.charCodeAt(head)) head++
  let tail = 0
  while (
    tail < shorter - head &&
    before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail)
  )
    tail++
  const end = before.length - tail
  const grown = after.length - before.length
  const place = (at: number, side: 'from' | 'to'): number => {
    // At a mere insertion both sides are possible: words begin after it and end before it.
    if (at === head && at === end) return side === 'from' ? at + grown : at
    if (at <= head) return at
    if (at >= end) return at + grown
    return side === 'from' ? head : after.length - tail
  }
  return {
    span: ({ from, to }) => {
      const start = place(from, 'from')
      return { from: start, to: Math.max(start, place(to, 'to')) }
    },
    untouched: (from, to) => to <= head || from >= end,
  }
}

/** The cure's edits in the text as it stands, in order; null when its words have changed since. */
export function placedEdits(cure: Cure, of: string, now: string): readonly Edit[] | null {
  const shift = shiftOf(of, now)
  const edits: Edit[] = []
  for (const edit of [...cure.edits].sort((a, b) => a.from - b.from)) {
    if (!shift.untouched(edit.from, edit.to)) return null
    edits.push({ ...shift.span(edit), insert: edit.insert })
  }
  return edits
}
