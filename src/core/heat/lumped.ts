import { requireRange } from '../numerics/index.ts'

/** How much of the resistance to heat lies inside a body: film × size / conductivity. */
export function biotNumber(p: { film_W_per_m2K: number; size_m: number; k_W_per_mK: number }): number {
  requireRange('conductivity', p.k_W_per_mK, Number.MIN_VALUE, 1e4, 'W/(m K)')
  return (p.film_W_per_m2K * p.size_m) / p.k_W_per_mK
}

/** How far heat has got: alpha × time / size². */
export function fourierNumber(p: { alpha_m2_per_s: number; time_s: number; size_m: number }): number {
  requireRange('size', p.size_m, Number.MIN_VALUE, 10, 'm')
  return (p.alpha_m2_per_s * p.time_s) / p.size_m ** 2
}

/**
 * Temperature of a body without inner resistance in a bath.
 *
 * Shape    bath − (bath − start)·exp(−time/tau)
 * Range    time_s ≥ 0; tau_s > 0; thin means biot ≤ 0.1 (call `biotNumber` first)
 * Outside  RangeError; nothing is clamped
 * Error    of the model, not of rounding: grows with biot, see docs/models/conduction.md
 * Source   heat-textbook
 * Check    check/heat/warming.csv; t = 0; t → ∞; agrees with the series as biot → 0
 */
export function lumpedTemp_K(p: { start_K: number; bath_K: number; tau_s: number; time_s: number }): number {
  requireRange('time', p.time_s, 0, Infinity, 's')
  requireRange('time constant', p.tau_s, Number.MIN_VALUE, Infinity, 's')
  return p.bath_K - (p.bath_K - p.start_K) * Math.exp(-p.time_s / p.tau_s)
}
