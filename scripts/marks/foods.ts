import type { Ingredient, Measure, Recipe } from '../../src/core/manuscript/index.ts'
import type { Tally } from './tally.ts'
import { type Labelled, overlap, placesOf, type TruthIngredient, type TruthMeasure } from './truth.ts'

export const foodKinds = ['line', 'amount', 'with also', 'item', 'optional', 'to taste', 'yield'] as const

const same = (a: number | null, b: number | null): boolean =>
  a === null || b === null ? a === b : Math.abs(a - b) <= 1e-4 * Math.max(1, Math.abs(b)) + 5e-5

const sameMeasure = (a: Measure | null, b: TruthMeasure | null): boolean =>
  a === null || b === null ? a === b : same(a.low, b.low) && same(a.high, b.high) && a.unit === b.unit

/** Items are compared as sets of words. */
const wordSet = (item: string): string =>
  [
    ...new Set(
      item
        .toLowerCase()
        .replace(/[’‘]/g, "'")
        .split(/[^\p{L}\p{N}%'-]+/u),
    ),
  ]
    .filter(Boolean)
    .sort()
    .join(' ')

const rightAmount = (got: Ingredient, want: TruthIngredient): boolean =>
  same(got.low, want.low) && same(got.high, want.high) && got.unit === want.unit && sameMeasure(got.pack, want.pack)

const rightAlso = (got: Ingredient, want: TruthIngredient): boolean =>
  got.also.length === want.also.length && want.also.every((m, i) => sameMeasure(got.also[i]!, m))

const show = (low: number | null, high: number | null, unit: string | null): string =>
  `${low === high ? low : `${low} to ${high}`} ${unit}`
const shown = (x: Ingredient | TruthIngredient): string => {
  const pack = x.pack ? ` of ${show(x.pack.low, x.pack.high, x.pack.unit)}` : ''
  return `${show(x.low, x.high, x.unit)}${pack}${x.also.map((m) => ` also ${show(m.low, m.high, m.unit)}`).join('')}`
}

/** Marks the ingredient lines of one text. */
export function markFoods(tally: Tally, { truth, text, source }: Labelled, recipe: Recipe): void {
  const places = placesOf(
    text,
    truth.ingredients.map((i) => i.line),
  )
  for (const [i, want] of truth.ingredients.entries()) {
    const place = places[i]!
    const where = `${truth.file}: ${JSON.stringify(want.line)}`
    const got = place
      ? recipe.ingredients.reduce<Ingredient | null>((best, each) => {
          const now = overlap(each, place)
          return now > 0 && (best === null || now > overlap(best, place)) ? each : best
        }, null)
      : null
    tally.mark(source, 'line', got !== null, () => where)
    const amount = got !== null && rightAmount(got, want)
    tally.mark(source, 'amount', amount, () => `${where} read as ${got && shown(got)}, wanted ${shown(want)}`)
    const also = amount && rightAlso(got!, want)
    tally.mark(source, 'with also', also, () => `${where} read as ${got && shown(got)}, wanted ${shown(want)}`)
    const item = got !== null && wordSet(got.item) === wordSet(want.item)
    tally.mark(source, 'item', item, () => `${where} read as ${got?.item}, wanted ${want.item}`)
    tally.mark(source, 'optional', got?.optional === want.optional, () => `${where} wanted ${want.optional}`)
    tally.mark(source, 'to taste', got?.toTaste === want.to_taste, () => `${where} wanted ${want.to_taste}`)
  }
  if (truth.yield) {
    const made = recipe.yield
    const right =
      made !== null &&
      same(made.low, truth.yield.low) &&
      same(made.high, truth.yield.high) &&
      made.unit === truth.yield.unit
    tally.mark(
      source,
      'yield',
      right,
      () => `${truth.file}: ${JSON.stringify(made)}, wanted ${JSON.stringify(truth.yield)}`,
    )
  }
}
