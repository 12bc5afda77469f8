import { requireRange } from '../numerics/index.ts'
import { rateFromReduction_per_s, type Spread, zRate_per_s } from './kinetics.ts'
import { rateTable } from './rate-table.ts'

const green = rateTable((temperature_K) =>
  zRate_per_s({ reference_per_s: rateFromReduction_per_s(13 * 60), reference_K: 394.25, z_dK: 51, temperature_K }),
)

/** Times faster that green goes per pH unit below 6.5: "log-linear" is published, the slope is assumed. */
export const greenPerPH: Spread = { value: 2, low: 1.5, high: 3 }

/**
 * Rate at which green goes olive: chlorophyll a of spinach.
 *
 * Shape    first order, D(121.1 °C) = 13 min at pH 6.5, z = 51 K; twice as fast per pH unit below
 * Range    273.15 ≤ temperature_K ≤ 433.15 (measured 127–149 °C); 3 ≤ pH ≤ 9
 * Outside  RangeError; nothing is clamped
 * Error    30 % in the measured range; below 100 °C extrapolated, peas give 73 kJ/mol (z 37 K) instead
 * Source   food-science-handbook-10.10, chlorophyll-peas, assumed
 * Check    check/doneness/colour.csv
 */
export function chlorophyllRate_per_s(temperature_K: number, pH = 6.5): number {
  requireRange('temperature', temperature_K, 273.15, 433.15, 'K')
  requireRange('pH', pH, 3, 9, '1')
  return green(temperature_K) * greenPerPH.value ** (6.5 - pH)
}

/** Time in which a dry face at 180 °C browns well, and the rise that doubles the pace: assumed. */
export const browning = {
  time_s: { value: 70, low: 40, high: 140 },
  doubling_dK: { value: 15, low: 10, high: 25 },
} as const satisfies Record<string, Spread>

/**
 * Rate at which a dry face browns; 1 − exp(−integral) is how brown it is. A wet face stays at the boil and does not
 * brown: the caller counts only the dry part.
 *
 * Shape    1/70 s at 180 °C, doubling every 15 K
 * Range    273.15 ≤ surface_K ≤ 573.15
 * Outside  RangeError; nothing is clamped
 * Error    a factor of 2; sugars, proteins and pH differ
 * Source   assumed
 * Check    check/doneness/colour.csv; grows with temperature
 */
export function browningRate_per_s(surface_K: number): number {
  requireRange('surface temperature', surface_K, 273.15, 573.15, 'K')
  return 2 ** ((surface_K - 453.15) / browning.doubling_dK.value) / browning.time_s.value
}
