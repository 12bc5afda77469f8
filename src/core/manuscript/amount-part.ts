import { massOfUnit_kg, type UnitCode, volumeOfUnit_m3 } from '../units/index.ts'
import { amountNumber } from './amount-number.ts'
import { type UnitKind, type UnitWord, unitAt } from './amount-units.ts'
import type { Measure } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'

/** A number with its unit. */
export interface Part extends UnitWord {
  low: number
  high: number
  next: number
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '))
export const approximate = set(
  'about around approx approximately roughly abt circa ca nearly almost rather more than least up to at just under over ' +
    'scant heaped heaping rounded generous level another only exactly ~ ≈ each',
)
const sizes = set(
  'large medium small big little tiny jumbo huge extra-large medium-large medium-small lg lge med md sm sml xl lrg fat plump ' +
    'good-size large-size medium-size small-size bigger smaller larger',
)
// Between a number and its unit these say how full, not what food.
const fullness = set(
  'heaped heaping scant level rounded generous packed full good nice whole very really loosely firmly lightly',
)

/** Word of token `i`, empty behind the last. */
export const low = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

export const isSizeWord = (word: string): boolean => sizes.has(word) || /-sized?$/.test(word)

/** Skips "about", "rather more than", "a scant": words before a number that leave its value alone. */
export function skipApproximate(tokens: readonly Token[], i: number): number {
  let at = i
  while (at < i + 4 && approximate.has(low(tokens, at))) {
    at += 1
    if (low(tokens, at) === '.' && tokens[at]!.joined) at += 1
  }
  return at
}

export interface Sizes {
  readonly next: number
  readonly size: string | null
}

/** Words of size and fullness at `i`. "extra large" and "small to medium" are one size. */
export function skipSizes(tokens: readonly Token[], i: number, alsoFullness: boolean): Sizes {
  let at = i
  let size: string | null = null
  for (;;) {
    const word = low(tokens, at)
    const joins =
      /^(?:to|or|extra|-)$/.test(word) && isSizeWord(low(tokens, at + 1)) && (word === 'extra' || size !== null)
    if (joins) {
      size = word === 'extra' ? `extra ${low(tokens, at + 1)}` : size
      at += 2
    } else if (isSizeWord(word)) {
      size ??= word
      at += 1
      // "1 lg. onion"
      if (low(tokens, at) === '.' && tokens[at]!.joined && word.length <= 3) at += 1
    } else if (size !== null && (word === 'sized' || word === 'size')) at += 1
    else if (alsoFullness && fullness.has(word)) at += 1
    else return { next: at, size }
  }
}

/** Number and unit that belong together: "14-ounce", "400 g", "1 heaped tbsp". Null unless both are there. */
export function part(text: string, tokens: readonly Token[], i: number): Part | null {
  const from = skipApproximate(tokens, i)
  const number = amountNumber(tokens, from)
  if (!number || number.low === null || number.high === null || number.article) return null
  let at = number.next
  if (low(tokens, at) === '-') at += 1
  if (/^(?:of)$/.test(low(tokens, at)) && /^an?$/.test(low(tokens, at + 1))) at += 2
  else if (/^an?$/.test(low(tokens, at))) at += 1
  const unit = unitAt(text, tokens, skipSizes(tokens, at, true).next)
  if (!unit) return null
  return { ...unit, low: number.low * unit.factor, high: number.high * unit.factor, next: unit.next }
}

export const measure = (p: { low: number; high: number; code: UnitCode | null }): Measure => ({
  low: p.low,
  high: p.high,
  unit: p.code,
})

/** Is it a measure that settles how much of the thing there is? */
export const sized = (kind: UnitKind | null): boolean => kind === 'mass' || kind === 'volume' || kind === 'length'

const worth = (code: UnitCode | null): number | null =>
  code === null ? null : (massOfUnit_kg(code) ?? volumeOfUnit_m3(code) ?? null)

/** "1 gal" and "3 qts" of the same thing are one measure in the larger unit; null when they do not add. */
export function sum(a: Measure & { kind: UnitKind }, b: Part): Measure | null {
  if (a.kind !== b.kind || !(a.kind === 'mass' || a.kind === 'volume')) return null
  const big = worth(a.unit)
  const small = worth(b.code)
  if (big === null || small === null || small > big) return null
  return { low: a.low + (b.low * small) / big, high: a.high + (b.high * small) / big, unit: a.unit }
}
