import type { Finding } from '../../core/findings/index.ts'
import type { Recipe } from '../../core/manuscript/index.ts'
import { shiftOf } from './shift.ts'

/** A finding in the margin, with its place in the text as it stands. */
export interface Note {
  /** Stays with the finding from one run to the next, so that a note does not lose its focus. */
  readonly key: string
  readonly finding: Finding
  /** Null when it is about the manuscript as a whole. */
  readonly from: number | null
  readonly to: number | null
}

export type LineKind = 'title' | 'front' | 'ingredient' | 'step' | 'blank' | 'plain'

/** What the sheet shows of a recipe: the kinds of its lines by where they start, its notes, in the order of the text. */
export interface Reading {
  readonly notes: readonly Note[]
  readonly kinds: readonly { readonly from: number; readonly kind: LineKind }[]
}

export const blankReading: Reading = { notes: [], kinds: [] }

/** Places of the findings and lines of `of`, moved into `now`. Pure; called again when either changes. */
export function readingOf(recipe: Recipe, findings: readonly Finding[], of: string, now: string): Reading {
  const shift = shiftOf(of, now)
  const seen = new Map<string, number>()
  const notes = findings.map((finding): Note => {
    const stem = `${finding.code}:${finding.span ? of.slice(finding.span.from, finding.span.to).slice(0, 40) : ''}`
    const nth = seen.get(stem) ?? 0
    seen.set(stem, nth + 1)
    return {
      key: nth === 0 ? stem : `${stem}:${nth}`,
      finding,
      ...(finding.span ? shift.span(finding.span) : { from: null, to: null }),
    }
  })
  const kinds = [
    ...(recipe.title ? [{ from: recipe.title.from, kind: 'title' as const }] : []),
    ...[recipe.yield, recipe.stated.total, recipe.stated.active]
      .filter((part) => part !== null)
      .map((part) => ({ from: part.from, kind: 'front' as const })),
    ...recipe.ingredients.map((each) => ({ from: each.from, kind: 'ingredient' as const })),
    ...recipe.steps.map((each) => ({ from: each.from, kind: 'step' as const })),
  ].map(({ from, kind }) => ({ from: shift.span({ from, to: from }).from, kind }))
  return { notes: notes.sort(byPlaceThenWeight), kinds }
}

const weight = { blocking: 0, warning: 1, hint: 2 } as const

const byPlaceThenWeight = (a: Note, b: Note): number =>
  (a.from ?? -1) - (b.from ?? -1) || weight[a.finding.severity] - weight[b.finding.severity]

/** The note about the words at a place: the narrowest that holds it. */
export function noteAt(notes: readonly Note[], at: number): Note | null {
  let best: Note | null = null
  for (const note of notes) {
    if (note.from === null || note.to === null || at < note.from || at > note.to) continue
    if (!best || note.to - note.from < best.to! - best.from!) best = note
  }
  return best
}

/** Kinds of the lines of the very text that was read. */
export function kindsOf(recipe: Recipe): Map<number, LineKind> {
  const { text } = recipe
  const lineStart = (at: number) => text.lastIndexOf('\n', at - 1) + 1
  const kinds = new Map<number, LineKind>()
  if (recipe.title) kinds.set(lineStart(recipe.title.from), 'title')
  for (const part of [recipe.yield, recipe.stated.total, recipe.stated.active])
    if (part) kinds.set(lineStart(part.from), 'front')
  for (const each of recipe.ingredients) kinds.set(lineStart(each.from), 'ingredient')
  for (const each of recipe.steps) kinds.set(lineStart(each.from), 'step')
  return kinds
}
