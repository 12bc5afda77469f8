import { requireRange } from '../numerics/index.ts'

// First-order rates and the two ways to say how they grow with temperature: an activation energy (Arrhenius), or the
// rise z that makes them ten times faster. The two only agree at one temperature; a pair from a paper belongs to
// the paper's own mean temperature (`matchingTemp_K` finds it).

/** R, J/(mol K), exact since 2019. */
export const gas_J_per_molK = 8.314462618

/** A figure with the band it may move in: for kitchens, and for the band that is drawn around a curve. */
export interface Spread {
  readonly value: number
  readonly low: number
  readonly high: number
}

/**
 * Rise of temperature that makes an Arrhenius rate ten times faster, between two temperatures.
 *
 * Shape    ln 10 · R · T1 · T2 / Ea, exact between T1 and T2
 * Range    activation_J_per_mol > 0; temperatures > 0; T1 = T2 gives the local value
 * Outside  RangeError; nothing is clamped
 * Error    none between the two temperatures
 * Source   levenspiel-2.3
 * Check    check/doneness/conversions.csv; round trip through activation_J_per_mol
 */
export function zFromActivation_dK(p: { activation_J_per_mol: number; low_K: number; high_K: number }): number {
  requireRange('activation energy', p.activation_J_per_mol, Number.MIN_VALUE, 1e7, 'J/mol')
  requireRange('temperature', p.low_K, 1, 2000, 'K')
  requireRange('temperature', p.high_K, 1, 2000, 'K')
  return (Math.LN10 * gas_J_per_molK * p.low_K * p.high_K) / p.activation_J_per_mol
}

/**
 * Activation energy of a rate with a given z between two temperatures.
 *
 * Shape    ln 10 · R · T1 · T2 / z
 * Range    z_dK > 0; temperatures > 0
 * Outside  RangeError; nothing is clamped
 * Error    none between the two temperatures
 * Source   levenspiel-2.3
 * Check    check/doneness/conversions.csv; round trip through zFromActivation_dK
 */
export function activation_J_per_mol(p: { z_dK: number; low_K: number; high_K: number }): number {
  requireRange('z', p.z_dK, Number.MIN_VALUE, 1e4, 'K')
  return (Math.LN10 * gas_J_per_molK * p.low_K * p.high_K) / p.z_dK
}

/**
 * Temperature at which a published pair of z and activation energy says the same.
 *
 * Shape    √(z · Ea / (ln 10 · R))
 * Range    z_dK > 0; activation_J_per_mol > 0
 * Outside  RangeError; nothing is clamped
 * Error    that of the pair
 * Source   van-loey
 * Check    check/doneness/conversions.csv
 */
export function matchingTemp_K(p: { z_dK: number; activation_J_per_mol: number }): number {
  requireRange('z', p.z_dK, Number.MIN_VALUE, 1e4, 'K')
  requireRange('activation energy', p.activation_J_per_mol, Number.MIN_VALUE, 1e7, 'J/mol')
  return Math.sqrt((p.z_dK * p.activation_J_per_mol) / (Math.LN10 * gas_J_per_molK))
}

/**
 * Activation energy from two times that do the same.
 *
 * Shape    R · ln(t1/t2) / (1/T1 − 1/T2)
 * Range    times > 0; two different temperatures
 * Outside  RangeError; nothing is clamped
 * Error    that of the times
 * Source   levenspiel-2.3
 * Check    check/doneness/conversions.csv
 */
export function activationFromTimes_J_per_mol(p: {
  first_K: number
  first_s: number
  second_K: number
  second_s: number
}): number {
  requireRange('time', p.first_s, Number.MIN_VALUE, 1e12, 's')
  requireRange('time', p.second_s, Number.MIN_VALUE, 1e12, 's')
  requireRange('difference of temperature', Math.abs(p.first_K - p.second_K), 1e-6, 2000, 'K')
  return (gas_J_per_molK * Math.log(p.first_s / p.second_s)) / (1 / p.first_K - 1 / p.second_K)
}

/**
 * z from decimal reduction times at several temperatures, by least squares of log10 D over T.
 *
 * Shape    −1 / slope
 * Range    two or more points at different temperatures; times > 0
 * Outside  RangeError; nothing is clamped
 * Error    that of the points
 * Source   odlaug-pflug
 * Check    check/doneness/conversions.csv
 */
export function zFromTimes_dK(points: readonly { readonly temperature_K: number; readonly time_s: number }[]): number {
  requireRange('number of points', points.length, 2, 1e6, '1')
  for (const p of points) requireRange('time', p.time_s, Number.MIN_VALUE, 1e12, 's')
  const n = points.length
  const mean_K = points.reduce((s, p) => s + p.temperature_K, 0) / n
  const meanLog = points.reduce((s, p) => s + Math.log10(p.time_s), 0) / n
  let sxx = 0
  let sxy = 0
  for (const p of points) {
    sxx += (p.temperature_K - mean_K) ** 2
    sxy += (p.temperature_K - mean_K) * (Math.log10(p.time_s) - meanLog)
  }
  requireRange('spread of temperatures', sxx, 1e-9, 1e9, 'K2')
  return -sxx / sxy
}

/**
 * Rate by Arrhenius from the rate at a reference temperature.
 *
 * Shape    reference · exp(−Ea/R · (1/T − 1/Tref))
 * Range    temperatures 200–2000 K
 * Outside  RangeError; nothing is clamped
 * Error    of the law; a rate is only known between the temperatures at which it was measured
 * Source   levenspiel-2.3
 * Check    check/doneness/conversions.csv; agrees with zRate_per_s between the two temperatures z was made for
 */
export function arrheniusRate_per_s(p: {
  reference_per_s: number
  reference_K: number
  activation_J_per_mol: number
  temperature_K: number
}): number {
  requireRange('temperature', p.temperature_K, 200, 2000, 'K')
  return (
    p.reference_per_s * Math.exp((p.activation_J_per_mol / gas_J_per_molK) * (1 / p.reference_K - 1 / p.temperature_K))
  )
}

/**
 * Rate by z from the rate at a reference temperature.
 *
 * Shape    reference · 10^((T − Tref)/z)
 * Range    temperatures 200–2000 K; z_dK > 0
 * Outside  RangeError; nothing is clamped
 * Error    of the law; a rate is only known between the temperatures at which it was measured
 * Source   odlaug-pflug
 * Check    check/doneness/conversions.csv
 */
export function zRate_per_s(p: {
  reference_per_s: number
  reference_K: number
  z_dK: number
  temperature_K: number
}): number {
  requireRange('temperature', p.temperature_K, 200, 2000, 'K')
  requireRange('z', p.z_dK, Number.MIN_VALUE, 1e4, 'K')
  return p.reference_per_s * 10 ** ((p.temperature_K - p.reference_K) / p.z_dK)
}

/**
 * First-order rate from a decimal reduction time.
 *
 * Shape    ln 10 / D
 * Range    reduction_s > 0
 * Outside  RangeError; nothing is clamped
 * Error    none
 * Source   food-science-handbook-10.10
 * Check    check/doneness/conversions.csv
 */
export function rateFromReduction_per_s(reduction_s: number): number {
  requireRange('decimal reduction time', reduction_s, Number.MIN_VALUE, 1e12, 's')
  return Math.LN10 / reduction_s
}

/** Rate of the cook value relative to 100 °C: equivalent minutes at 100 °C per minute, z 33.1 K unless told. */
export function cookValueRate(temperature_K: number, z_dK = 33.1): number {
  return zRate_per_s({ reference_per_s: 1, reference_K: 373.15, z_dK, temperature_K })
}
