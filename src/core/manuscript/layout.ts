import type { Span } from '../findings/index.ts'
import { collect } from './layout-collect.ts'
import { headOf } from './layout-head.ts'
import { itemsOf } from './layout-items.ts'
import { isText, kindOf } from './layout-kind.ts'
import { linesOf } from './layout-lines.ts'
import { proseFoods } from './layout-prose.ts'
import { regionsOf } from './layout-regions.ts'
import { plainReading, withoutEmphasis } from './reading.ts'
import type { Range, Recipe, StatedTime } from './recipe.ts'

/**
 * The parts of a manuscript, found by their look and place and not yet understood. Spans count UTF-16 code units
 * into the text as given, are trimmed of blanks, and lie in the order of the text.
 */
export interface Layout {
  /** The text exactly as given. */
  readonly text: string
  /**
   * The text as it is read: just as long, so that every offset means the same place, with markup blanked and look-alike
   * characters made plain (curly quotes, no-break blanks, odd hyphens, the fraction slash, full-width digits).
   * Read words from here, quote them from `text`.
   */
  readonly reading: string
  readonly kind: Recipe['kind']
  /** The name of the dish, without yield or pot notes that share its line; null when the text has none. */
  readonly title: Span | null
  /** How much it makes; the span covers the words from "Serves" to the last word of the yield. */
  readonly yield: (Span & Range & { readonly unit: string }) | null
  /** Times the head of the manuscript promises. The span covers label and figure: "Total time: 50 to 55 minutes". */
  readonly stated: {
    readonly total: StatedTime | null
    readonly active: StatedTime | null
    /** Time under heat when it is stated apart ("Cook 45 minutes"). */
    readonly cooking: StatedTime | null
  }
  readonly ingredients: readonly IngredientLine[]
  /** Every paragraph or numbered step of the method, without its number or bullet. */
  readonly steps: readonly StepText[]
  /** Storage, make-ahead and other advice, headnotes, equipment: text that is neither list nor method. */
  readonly notes: readonly Note[]
  /** Headings inside and around list and method, without the trailing colon. */
  readonly headings: readonly Span[]
}

/**
 * One entry of the ingredient list, without its bullet. In a manuscript without a list it is the phrase in the prose
 * that names the food ("300 ml boiling water"), and lies inside a step.
 */
export interface IngredientLine extends Span {
  /** `text.slice(from, to)`. */
  readonly line: string
  /** Columns of a table or card, where the line has them; null for a plain line. */
  readonly cells: readonly Cell[] | null
  /** Heading it stands under ("For the marinade"), null for none. */
  readonly group: Span | null
}

export interface Cell extends Span {
  /** What the column holds, by its header or by what it contains. */
  readonly column: 'item' | 'weight' | 'measure' | 'issue' | 'note'
}

export interface StepText extends Span {
  /** `text.slice(from, to)`. */
  readonly text: string
  /** Number the step carries in the manuscript, null for none. */
  readonly number: number | null
  /** Heading it stands under, null for none. */
  readonly group: Span | null
}

export interface Note extends Span {
  readonly kind: 'headnote' | 'storage' | 'ahead' | 'equipment' | 'tip'
}

/** A heading without the marks that make it one. */
function bareHeading(reading: string, place: Span): Span {
  let { from, to } = place
  while (from < to && /[\s#*_=:+]/.test(reading[from]!)) from += 1
  while (to > from && /[\s#*_=:]/.test(reading[to - 1]!)) to -= 1
  return { from, to }
}

/** Splits any text into the parts of a recipe. Never throws; time grows in proportion to the text. */
export function layOut(text: string): Layout {
  const marked = plainReading(text)
  const reading = withoutEmphasis(marked)
  const empty: Layout = {
    text,
    reading,
    kind: 'empty',
    title: null,
    yield: null,
    stated: { total: null, active: null, cooking: null },
    ingredients: [],
    steps: [],
    notes: [],
    headings: [],
  }
  const lines = linesOf(marked)
  if (lines.length === 0) return empty
  if (!isText(text)) return { ...empty, kind: 'not-text' }
  const items = itemsOf(reading, lines)
  const regions = regionsOf(reading, items)
  const head = headOf(reading, items, regions)
  const parts = collect(reading, items, regions, head.title)
  const prose = parts.ingredients.length === 0 ? proseFoods(reading, parts.steps) : []
  const ingredients =
    prose.length > 0 ? prose.map((p) => ({ ...p, line: '', cells: null, group: null })) : parts.ingredients
  return {
    ...empty,
    ...head,
    kind: kindOf(reading, ingredients.length, parts.steps, prose.length > 0),
    ingredients: ingredients.map((line) => ({ ...line, line: text.slice(line.from, line.to) })),
    steps: parts.steps.map((step) => ({ ...step, text: text.slice(step.from, step.to) })),
    notes: parts.notes,
    headings: items.filter((i) => i.heading !== null && !i.columns).map((i) => bareHeading(reading, i)),
  }
}
