import { massOfUnit_kg, type UnitCode, volumeOfUnit_m3 } from '../units/index.ts'
import { amountNumber } from './amount-number.ts'
import { unitAt, unitOfWord } from './amount-units.ts'
import type { Ingredient, Measure } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'
import { shareWord } from './times-numbers.ts'

/** How much of a listed amount a mention takes, as written. */
export interface Portion {
  /** Share of the whole by word: "half of the pork". */
  readonly share: number | null
  /** "1 tablespoon of the oil". */
  readonly amount: {
    readonly low: number
    readonly high: number
    readonly unit: UnitCode | null
    readonly factor: number
  } | null
  /** "the remaining salt", "the rest of the oil". */
  readonly rest: boolean
  /** "a little of the oil", "some of the stock": an unknown part. */
  readonly vague: boolean
  /** "all but 1 tablespoon of the fat". */
  readonly allBut: boolean
  /** Place of the first token that belongs to the portion. */
  readonly at: number
}

const wordAt = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''
const set = (words: string): ReadonlySet<string> => new Set(words.split(' '))
const restWords = set('remaining rest remainder last leftover')
const vagueWords = set(
  'little some few bit splash drizzle dash pinch knob touch sprinkling squeeze handful spoonful most more thread drop glug dollop scattering ' +
    'grating grind grinding twist dusting plenty',
)
const linking = set(
  "of the a an your its their about another other all but each good big small heaped level generous scant more further extra ~ 's ( both -",
)
const counts = set('one two three four five six eight ten twelve')

/**
 * The portion in front of a mention at token `at`, looking back no further than `floor`: "1 1/2 teaspoons of the salt",
 * "half of the pork", "the remaining 1/4 cup cream". Null when nothing narrows it.
 */
export function portionBefore(text: string, tokens: readonly Token[], floor: number, at: number): Portion | null {
  // Walk back over linking words and figures to where the portion starts.
  let from = at
  while (from > floor && at - from < 10) {
    const token = tokens[from - 1]!
    const low = token.low
    if (
      token.kind === 'number' ||
      linking.has(low) ||
      restWords.has(low) ||
      vagueWords.has(low) ||
      shareWord(low) !== undefined
    )
      from -= 1
    else if (
      token.kind === 'word' &&
      (unitOfWord(low) || low === 'fl' || (low.length === 1 && unitAt(text, tokens, from - 1)))
    )
      from -= 1
    else if ((low === '.' || low === '/') && token.joined) from -= 1
    else if (/^(?:to|or)$/u.test(low) && tokens[from]?.kind === 'number' && tokens[from - 2]?.kind === 'number')
      from -= 1
    else if (counts.has(low)) from -= 1
    else break
  }
  let share: number | null = null
  let amount: Portion['amount'] = null
  let rest = false
  let vague = false
  let allBut = false
  let seen = false
  let first = at
  for (let i = from; i < at; i += 1) {
    const low = wordAt(tokens, i)
    if (low === 'all' && wordAt(tokens, i + 1) === 'but') {
      allBut = true
      first = Math.min(first, i)
      i += 1
      continue
    }
    if (restWords.has(low) || (low === 'rest' && wordAt(tokens, i + 1) === 'of')) {
      rest = true
      first = Math.min(first, i)
      continue
    }
    if (low === 'other' && wordAt(tokens, i + 1) === 'half') {
      rest = true
      first = Math.min(first, i)
      i += 1
      continue
    }
    if (vagueWords.has(low)) {
      vague = low !== 'more' || vague
      first = Math.min(first, i)
      continue
    }
    const number = low === 'a' || low === 'an' || low === 'the' ? null : amountNumber(tokens, i)
    if (number && number.low !== null && number.next <= at) {
      const unit = unitAt(text, tokens, number.next)
      const fraction =
        shareWord(low) !== undefined ||
        (number.low < 1 && shareWord(wordAt(tokens, number.next - 1)) !== undefined) ||
        (number.low < 1 && !unit && tokens[i]!.kind === 'number')
      first = Math.min(first, i)
      if (unit?.code && unit.next <= at) {
        amount = { low: number.low, high: number.high ?? number.low, unit: unit.code, factor: unit.factor }
        i = unit.next - 1
      } else if (fraction || (number.low < 1 && shareWord(low) !== undefined)) {
        share = number.low
        i = number.next - 1
      } else {
        amount = { low: number.low, high: number.high ?? number.low, unit: null, factor: 1 }
        i = number.next - 1
      }
      seen = true
      continue
    }
    // "another tablespoon of the oil"
    const unit = low === 'a' || low === 'another' || low === 'an' ? unitAt(text, tokens, i + 1) : null
    if (unit?.code && unit.next <= at && unit.kind !== 'length' && !vagueWords.has(wordAt(tokens, i + 1))) {
      amount = { low: 1, high: 1, unit: unit.code, factor: unit.factor }
      first = Math.min(first, i)
      i = unit.next - 1
    } else if (shareWord(low) !== undefined) {
      share = shareWord(low)!
      first = Math.min(first, i)
    }
  }
  void seen
  if (share === null && amount === null && !rest && !vague && !allBut) return null
  return { share, amount, rest, vague, allBut, at: first }
}

const masses = (measure: Measure, factor = 1): number | null => {
  const unit = measure.unit === null ? null : massOfUnit_kg(measure.unit)
  return unit === null ? null : ((measure.low + measure.high) / 2) * unit * factor
}
const volumes = (measure: Measure, factor = 1): number | null => {
  const unit = measure.unit === null ? null : volumeOfUnit_m3(measure.unit)
  return unit === null ? null : ((measure.low + measure.high) / 2) * unit * factor
}

/** Every way the list measures an ingredient. */
function listed(ingredient: Ingredient): Measure[] {
  const own =
    ingredient.low === null
      ? []
      : [{ low: ingredient.low, high: ingredient.high ?? ingredient.low, unit: ingredient.unit }]
  const pack =
    ingredient.pack && ingredient.low !== null
      ? [
          {
            low: ingredient.pack.low * ingredient.low,
            high: ingredient.pack.high * (ingredient.high ?? ingredient.low),
            unit: ingredient.pack.unit,
          },
        ]
      : []
  return [...own, ...pack, ...ingredient.also]
}

/** Share of the listed amount that an amount in a step is; null when the two cannot be compared. */
export function shareOfListed(ingredient: Ingredient, amount: NonNullable<Portion['amount']>): number | null {
  const said: Measure = { low: amount.low, high: amount.high, unit: amount.unit }
  const written = listed(ingredient)
  // "1 litre (4 cups)": cups are compared with cups.
  const same = written.find((measure) => measure.unit === said.unit && measure.low + measure.high > 0)
  if (same) return ((said.low + said.high) * amount.factor) / (same.low + same.high)
  for (const measure of written) {
    for (const size of [masses, volumes]) {
      const part = size(said, amount.factor)
      const whole = size(measure)
      if (part !== null && whole !== null && whole > 0) return part / whole
    }
  }
  const mass = masses(said, amount.factor)
  if (mass !== null && ingredient.mass_kg) {
    const whole_kg = (ingredient.mass_kg.low + ingredient.mass_kg.high) / 2
    if (whole_kg > 0) return mass / whole_kg
  }
  return null
}
