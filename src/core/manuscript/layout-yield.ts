import type { Span } from '../findings/index.ts'
import { amountNumber } from './amount-number.ts'
import { unitAt } from './amount-units.ts'
import type { Layout } from './layout.ts'
import type { Token } from './sentences-tokens.ts'
import { wordsIn } from './words.ts'

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

const eaters: Readonly<Record<string, string>> = {
  serving: 'servings',
  servings: 'servings',
  serve: 'servings',
  serves: 'servings',
  portion: 'portions',
  portions: 'portions',
  px: 'portions',
  pax: 'portions',
  ptn: 'portions',
  ptns: 'portions',
  covers: 'portions',
  people: 'people',
  person: 'people',
  persons: 'persons',
  diners: 'people',
  guests: 'people',
  eaters: 'people',
  meals: 'meals',
}
const volumes: Readonly<Record<string, string>> = {
  l: 'litres',
  ml: 'ml',
  cup: 'cups',
  pint: 'pints',
  quart: 'quarts',
  gallon: 'gallons',
  g: 'g',
  kg: 'kg',
  oz: 'ounces',
  lb: 'pounds',
}
const skipped = /^(?:about|approximately|approx|around|abt|roughly|up|to|at|least|for|:|-|=|\.|~|a|total|of|enough)$/
const praise =
  /^(?:generous|hungry|large|small|hearty|big|main|side|good|ample|light|main-course|starter|adult|modest|normal)$/

/** What is made: "cups", "servings", or the word behind the number. */
function unitOf(
  text: string,
  tokens: readonly Token[],
  i: number,
  fallback: string | null,
  people: boolean,
): { unit: string; next: number } | null {
  let at = i
  while (praise.test(word(tokens, at)) || (word(tokens, at) === '-' && tokens[at + 1]?.kind === 'word')) at += 1
  const known = eaters[word(tokens, at)]
  if (known) return { unit: people && (known === 'people' || known === 'persons') ? 'servings' : known, next: at + 1 }
  const unit = unitAt(text, tokens, at)
  if (unit?.code && volumes[unit.code] && tokens[at]!.kind === 'word')
    return { unit: volumes[unit.code]!, next: unit.next }
  if (fallback !== null) return { unit: fallback, next: i }
  const low = word(tokens, at)
  if (low === '' || low === '.') return { unit: 'servings', next: i }
  return tokens[at]?.kind === 'word' && !/^(?:minutes?|mins?|hours?|hrs?|days?|and|or)$/.test(low)
    ? { unit: low, next: at + 1 }
    : null
}

/** A yield promised in the words between two places; null when there is none. */
export function yieldIn(reading: string, place: Span): Layout['yield'] {
  const tokens = wordsIn(reading, { from: place.from, to: Math.min(place.to, place.from + 400) })
  for (let i = 0; i < tokens.length; i += 1) {
    const low = word(tokens, i)
    const before = word(tokens, i - 1)
    const leads = /^(?:serves?|servings?|feeds|makes|make|yields?|portions?|sufficient|enough)$/.test(low)
    if (leads) {
      const people = /^(?:serves?|servings?|feeds)$/.test(low)
      let at = i + 1
      // "enough shredded chicken for 2 to 3 meals"
      if (/^(?:sufficient|enough)$/.test(low)) {
        let far = at
        while (far < at + 6 && word(tokens, far) !== 'for' && tokens[far]) far += 1
        if (word(tokens, far) !== 'for') continue
        at = far
      }
      while (skipped.test(word(tokens, at)) && at < i + 12) at += 1
      const number = amountNumber(tokens, at)
      if (!number || number.low === null || number.high === null || number.article) continue
      const fallback =
        people || /^(?:sufficient|enough)$/.test(low) ? 'servings' : low.startsWith('portion') ? 'portions' : null
      const unit = unitOf(reading, tokens, number.next, fallback, people)
      if (!unit) continue
      // "Servings: 2 litres" makes litres; "Portion 1 Cup" behind another yield is the size of one.
      return {
        from: tokens[i]!.from,
        to: tokens[unit.next - 1]!.to,
        low: number.low,
        high: number.high,
        unit: unit.unit,
      }
    }
    // "For 6" on a line of its own
    const alone = low === 'for' && i === 0 ? amountNumber(tokens, 1) : null
    if (alone && alone.low !== null && alone.high !== null && /^\.?$/.test(word(tokens, alone.next))) {
      return {
        from: tokens[0]!.from,
        to: tokens[alone.next - 1]!.to,
        low: alone.low,
        high: alone.high,
        unit: 'servings',
      }
    }
    // "4 servings", "10 px", "For six people,"
    if (before !== '' && /^(?:per|each|of|every|than)$/.test(before)) continue
    const number = tokens[i]!.kind === 'mark' ? null : amountNumber(tokens, i)
    if (number && number.low !== null && number.high !== null && !number.article) {
      let at = number.next
      while (praise.test(word(tokens, at))) at += 1
      const unit = eaters[word(tokens, at)]
      if (unit && word(tokens, at) !== 'serve' && word(tokens, at) !== 'serves') {
        return { from: tokens[i]!.from, to: tokens[at]!.to, low: number.low, high: number.high, unit }
      }
      i = Math.max(i, number.next - 1)
    }
  }
  return null
}
