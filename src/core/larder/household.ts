import { type MeasureSystem, massOfUnit_kg, type UnitCode, volumeOfUnit_m3 } from '../units/index.ts'
import { bulkDensity } from './bulk.ts'
import type { Food, HouseholdWeight } from './food.ts'
import { bestForms } from './forms.ts'

export interface HouseholdAmount {
  readonly low: number
  readonly high: number
  /** Null or 'each' is a bare count. */
  readonly unit: UnitCode | 'each' | null
  /** As the thing is when it is measured: "chopped" in "1 cup chopped onion". */
  readonly form?: string | null
  readonly size?: 'small' | 'medium' | 'large' | 'extra large' | null
  /** Whose cups and spoons; US when not said. */
  readonly system?: MeasureSystem
}

export interface HouseholdMass {
  readonly low_kg: number
  readonly high_kg: number
  /** How it was found, to be printed: "household weight, 1 cup chopped = 160 g, USDA SR28 11282". */
  readonly from: string
}

/**
 * Mass of the edible part in kg that an amount in household measures stands for, with its spread; null when neither a
 * household weight nor a density settles it.
 *
 * Shape    amount x household weight; volumes through g per mL, so that every cup and spoon is served by one weight
 * Range    low and high >= 0, low <= high
 * Outside  RangeError; a count or a bunch of what the tables do not count is null
 * Error    the spread given: forms, records and sizes; not the hand that fills the cup (USDA weighs levelled cups)
 * Source   usda-sr28 household weights; where marked, common practice without a source
 * Check    check/larder/household.csv
 */
export function householdMass_kg(food: Food, amount: HouseholdAmount): HouseholdMass | null {
  const { low, high, unit } = amount
  if (!(low >= 0 && high >= low && high < Number.POSITIVE_INFINITY))
    throw new RangeError(`amount: ${low} to ${high}, allowed 0 <= low <= high`)
  const scaled = (low_kg: number, high_kg: number, from: string) => ({
    low_kg: low * low_kg,
    high_kg: high * high_kg,
    from,
  })
  if (unit !== null && unit !== 'each') {
    const mass = massOfUnit_kg(unit)
    if (mass !== null) return scaled(mass, mass, 'weight as written')
  }
  // A pinch of saffron and a dash of pepper have weights of their own; so has a stick of butter.
  const counted = countedMass(food, amount)
  if (counted) return scaled(counted.low_kg, counted.high_kg, counted.from)
  if (unit === null || unit === 'each') return null
  if (unit === 'handful') return scaled(...handfulOf(food))
  // Half a cup is a stick of butter; a stick of celery is a stalk, and of anything else nobody knows.
  if (unit === 'stick' && food.character !== 'fat') return null
  const volume_m3 = volumeOfUnit_m3(unit, amount.system ?? 'us')
  if (volume_m3 === null) return null
  const density = measuredDensity(food, unit, amount) ?? bulkDensity(food, amount.form ?? null)
  return scaled(volume_m3 * density.low_kg_per_m3, volume_m3 * density.high_kg_per_m3, density.from)
}

function handfulOf({ character }: Food): [number, number, string] {
  const [low, high] = character === 'herb' ? [8, 25] : character === 'leafy vegetable' ? [20, 50] : [30, 60]
  return [low / 1000, high / 1000, `a handful is ${low} to ${high} g of such a food, common practice, no source`]
}

const inUs_m3 = (unit: string): number | null => volumeOfUnit_m3(unit as UnitCode, 'us')
/** Spoons and cups: the weight of a tablespoonful says more of a teaspoonful than that of a cup does. */
const spoons = new Set(['tsp', 'tbsp', 'dessertspoon', 'dash', 'pinch', 'drop'])
/** Measured by volume only where no weight of the measure itself is known. */
const smallMeasures = new Set(['pinch', 'dash', 'drop', 'stick'])

function measuredDensity(food: Food, unit: UnitCode, amount: HouseholdAmount) {
  const volumes = food.measures.filter((m) => inUs_m3(m.unit) !== null && !smallMeasures.has(m.unit))
  const chosen = bestForms(volumes, amount.form ?? null)
  if (chosen.length === 0) return null
  const like = chosen.filter((m) => spoons.has(m.unit) === spoons.has(unit))
  const same = chosen.filter((m) => m.unit === unit)
  const rows = same.length > 0 ? same : like.length > 0 ? like : chosen
  const perVolume = (m: HouseholdWeight) => inUs_m3(m.unit) as number
  const first = sentence(food, rows[0])
  const from = rows.length === 1 ? first : `${first}, and ${rows.length - 1} more`
  return {
    low_kg_per_m3: Math.min(...rows.map((m) => m.low_kg / perVolume(m))),
    high_kg_per_m3: Math.max(...rows.map((m) => m.high_kg / perVolume(m))),
    from: amount.system && amount.system !== 'us' && unit !== rows[0].unit ? `${from}, by volume` : from,
  }
}

/** Names a cook uses for one and the same thing. */
const same: Readonly<Record<string, readonly string[]>> = {
  each: ['each'],
  piece: ['piece', 'each'],
  rib: ['rib', 'stalk'],
  stalk: ['stalk', 'rib'],
  head: ['head', 'each'],
  sprig: ['sprig', 'stalk'],
  stick: ['stick', 'stalk'],
  leaf: ['leaf', 'each'],
  packet: ['packet'],
  inch: ['inch'],
  cm: ['cm'],
}

function countedMass(food: Food, { unit, size, form }: HouseholdAmount): HouseholdMass | null {
  const key = unit ?? 'each'
  if (inUs_m3(key) !== null && !smallMeasures.has(key)) return null
  for (const name of same[key] ?? [key]) {
    const rows = food.measures.filter((m) => m.unit === name)
    if (rows.length === 0) continue
    const ofForm = size ?? form ?? null
    const exact = rows.find((m) => m.form === (size ?? null)) ?? rows.find((m) => m.form === ofForm)
    if (exact) return one(food, exact, exact.low_kg, exact.high_kg)
    if (size) {
      const plain = rows.find((m) => m.form === null)
      if (plain) return one(food, plain, ...shareOf(plain, size))
      continue
    }
    const low = rows.reduce((a, b) => (b.low_kg < a.low_kg ? b : a))
    const high = rows.reduce((a, b) => (b.high_kg > a.high_kg ? b : a))
    if (low === high) return one(food, low, low.low_kg, low.high_kg)
    return {
      low_kg: low.low_kg,
      high_kg: high.high_kg,
      from: `count, ${low.form ?? 'plain'} to ${high.form ?? 'plain'}, ${grams(low.low_kg)} to ${grams(high.high_kg)} each, ${cite(low.source)}`,
    }
  }
  return null
}

/** A size where only the plain count is known: the lower, middle or upper third of its spread. */
function shareOf(m: HouseholdWeight, size: string): [number, number] {
  const third = (m.high_kg - m.low_kg) / 3
  if (size === 'small') return [m.low_kg, m.low_kg + third]
  if (size === 'medium') return [m.low_kg + third, m.high_kg - third]
  return [m.high_kg - third, m.high_kg]
}

const one = (food: Food, m: HouseholdWeight, low_kg: number, high_kg: number): HouseholdMass => ({
  low_kg,
  high_kg,
  from: sentence(food, m, low_kg, high_kg),
})

function sentence(food: Food, m: HouseholdWeight, low_kg = m.low_kg, high_kg = m.high_kg): string {
  const what = m.unit === 'each' ? [m.form, food.id.replaceAll('-', ' ')] : [m.unit, m.form]
  const weight = grams(low_kg) === grams(high_kg) ? grams(low_kg) : `${grams(low_kg, false)} to ${grams(high_kg)}`
  return `household weight, 1 ${what.filter(Boolean).join(' ')} = ${weight}, ${cite(m.source)}`
}

const cite = (source: string): string =>
  source.replaceAll('usda-sr28 ', 'USDA SR28 ').replaceAll('usda-foundation-2024-10 ', 'USDA Foundation Foods 2024-10 ')

function grams(mass_kg: number, unit = true): string {
  const g = mass_kg * 1000
  const figure = g >= 100 ? g.toFixed(0) : g >= 10 ? String(Number(g.toFixed(1))) : String(Number(g.toPrecision(2)))
  return unit ? `${figure} g` : figure
}
