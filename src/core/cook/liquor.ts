import type { Food } from '../larder/index.ts'

// What is liquid or dissolved or suspended in the vessel, by kind, in kg. One mutable record per vessel: the loop
// must not allocate.

export const liquorParts = [
  'water',
  'fat',
  'salt',
  'sugar',
  'gelatin',
  'starchRaw',
  'starchSwollen',
  'suspended',
  'alcohol',
  'other',
] as const
export type LiquorPart = (typeof liquorParts)[number]
export type Liquor = Record<LiquorPart, number>

/** Heat capacities held constant so that the energy books close exactly; water's is its mean over 20 to 120 °C. */
export const heatCapacity_J_per_kgK = { water: 4200, fat: 2100, alcohol: 2700, solids: 1500 } as const

export const emptyLiquor = (): Liquor => ({
  water: 0,
  fat: 0,
  salt: 0,
  sugar: 0,
  gelatin: 0,
  starchRaw: 0,
  starchSwollen: 0,
  suspended: 0,
  alcohol: 0,
  other: 0,
})

/** What a food brings to the liquor when it goes in without pieces, per kg. The parts sum to 1. */
export function liquorOf(food: Food): Liquor {
  const c = food.composition
  const water = Math.min(1, c.water)
  const fat = Math.min(1 - water, c.fat)
  const alcohol = Math.min(1 - water - fat, c.alcohol)
  let rest = 1 - water - fat - alcohol
  const take = (share: number): number => {
    const taken = Math.min(rest, share)
    rest -= taken
    return taken
  }
  const salt = take(food.salt)
  const suspended = take(food.suspended)
  // A puree's sugar is counted with its suspended solids when the two overlap.
  const starchRaw = take(food.starch)
  const sugar = take(Math.max(0, food.sugars - Math.max(0, suspended - c.fibre - c.protein)))
  return { water, fat, salt, sugar, gelatin: 0, starchRaw, starchSwollen: 0, suspended, alcohol, other: rest }
}

export function addScaled(into: Liquor, from: Liquor, factor: number): void {
  for (const part of liquorParts) into[part] += from[part] * factor
}

export function mass_kg(l: Liquor): number {
  return (
    l.water + l.fat + l.salt + l.sugar + l.gelatin + l.starchRaw + l.starchSwollen + l.suspended + l.alcohol + l.other
  )
}

/** Without the fat that floats and the alcohol: what thickens is a share of this. */
export function serum_kg(l: Liquor): number {
  return l.water + l.salt + l.sugar + l.gelatin + l.starchRaw + l.starchSwollen + l.suspended + l.other + l.alcohol
}

export function heatCapacity_J_per_K(l: Liquor): number {
  const solids = l.salt + l.sugar + l.gelatin + l.starchRaw + l.starchSwollen + l.suspended + l.other
  return (
    heatCapacity_J_per_kgK.water * l.water +
    heatCapacity_J_per_kgK.fat * l.fat +
    heatCapacity_J_per_kgK.alcohol * l.alcohol +
    heatCapacity_J_per_kgK.solids * solids
  )
}

/** Volume in m3; water at its own density for the temperature, solids at 1550, fat at 890, alcohol at 740 kg/m3. */
export function volume_m3(l: Liquor, waterDensity_kg_per_m3: number): number {
  const solids = l.salt + l.sugar + l.gelatin + l.starchRaw + l.starchSwollen + l.suspended + l.other
  return l.water / waterDensity_kg_per_m3 + l.fat / 890 + l.alcohol / 740 + solids / 1550
}
