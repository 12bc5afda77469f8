import { amountAt } from './amount.ts'
import { word } from './ingredient-parts.ts'
import type { Measure } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'

/** A measure said behind the food. */
export interface SaidMeasure extends Measure {
  /** "15 oz each" */
  readonly each: boolean
  readonly word: string | null
  /** A number without unit or "about": an amount only where the line has no other. */
  readonly bare: boolean
}

/** Measures that fill a phrase: "about 1-1/4 pounds", "15 oz each", "6 big ones". */
function phraseMeasures(text: string, tokens: readonly Token[]): readonly SaidMeasure[] | null {
  if (tokens.length === 0) return null
  const lead = /^(?:or|weighing|weight|total|that)$/.test(word(tokens, 0))
    ? word(tokens, 1) === 'weighs' || word(tokens, 1) === 'weigh'
      ? 2
      : 1
    : 0
  const amount = amountAt(text, tokens, lead)
  if (!amount || amount.low === null || amount.high === null || amount.article) return null
  let at = amount.next
  let each = false
  if (/^(?:each|ea|apiece)$/.test(word(tokens, at))) {
    each = true
    at += 1
  }
  while (/^(?:total|in|all|altogether|ones?|weight|drained|net|or|so)$/.test(word(tokens, at))) at += 1
  if (at < tokens.length || amount.kind === 'length') return null
  // "(1 large)": only an amount where the line has no other.
  const bare =
    amount.unit === null &&
    amount.word === null &&
    lead === 0 &&
    !/^(?:about|around|approx|approximately|roughly|abt|~|ca)$/.test(word(tokens, 0))
  const main = amount.pack ?? { low: amount.low, high: amount.high, unit: amount.unit }
  return [main, ...amount.also].map((m) => ({ ...m, each, word: amount.word, bare }))
}

/** Measures at the head of a phrase that goes on ("about 1.5 cups, chopped"), or inside it ("that weighs ~750 grams"). */
export function measuresIn(
  text: string,
  tokens: readonly Token[],
): { measures: readonly SaidMeasure[]; rest: readonly Token[] } | null {
  const comma = tokens.findIndex((t) => t.low === ',' || t.low === ';')
  const first = comma < 0 ? tokens : tokens.slice(0, comma)
  const found = phraseMeasures(text, first)
  if (found && found.length > 0) return { measures: found, rest: comma < 0 ? [] : tokens.slice(comma + 1) }
  return null
}
