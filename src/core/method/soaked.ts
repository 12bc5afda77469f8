import type { Composition, Food } from '../larder/index.ts'

/** Water taken up when soaked through, kg per kg dry (assumed; 0.9 to 1.1 for common beans). */
export const soakedThrough_kg_per_kg = 1.0
/** Time constant of soaking in cold water (assumed: four hours bring about four fifths). */
const soaking_s = 9000

/**
 * Water soaked up by dry pulses, kg per kg dry.
 *
 * Shape    through·(1 − exp(−time/9000 s))
 * Range    time_s ≥ 0; cold water
 * Outside  RangeError
 * Error    ±10 % of the end value between lots; older beans take longer
 * Source   assumed
 * Check    test/core/method/soaked.test.ts: monotone, 0 at 0, half an hour takes little, overnight takes all but 5 %
 */
export function soakedUp_kg_per_kg(time_s: number): number {
  if (!(time_s >= 0)) throw new RangeError(`time_s is ${time_s} s; it must be 0 or more`)
  return soakedThrough_kg_per_kg * (1 - Math.exp(-time_s / soaking_s))
}

/** The same food with `uptake` kg of water per kg in it: composition per wet mass, and less left to absorb. */
export function soakedFood(food: Food, uptake: number): Food {
  const whole = 1 + uptake
  const dry = (x: number) => x / whole
  const from = food.composition
  const composition: Composition = {
    water: (from.water + uptake) / whole,
    protein: dry(from.protein),
    fat: dry(from.fat),
    carbohydrate: dry(from.carbohydrate),
    fibre: dry(from.fibre),
    ash: dry(from.ash),
    alcohol: dry(from.alcohol),
  }
  return {
    ...food,
    composition,
    starch: dry(food.starch),
    sugars: dry(food.sugars),
    salt: dry(food.salt),
    collagen: dry(food.collagen),
    suspended: dry(food.suspended),
    absorbs: Math.max(0, food.absorbs - uptake) / whole,
    // Volumes of bean and water add, near enough.
    density_kg_per_m3: whole / (1 / food.density_kg_per_m3 + uptake / 1000),
  }
}
