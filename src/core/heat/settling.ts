import { requireRange } from '../numerics/index.ts'

const gravity_m_per_s2 = 9.80665

/**
 * Speed at which a drop of fat rises through a liquor (or, negative, a grain sinks).
 *
 * Shape    Stokes: (liquor − drop)·g·d²/(18 mu)
 * Range    1e-7 ≤ diameter_m; Reynolds number of the drop ≤ 1; viscosity_Pas > 0
 * Outside  RangeError, also when the drop is too large or too fast for Stokes; nothing is clamped
 * Error    10 % at Reynolds 1, none below 0.1; clusters of drops rise faster
 * Source   stokes
 * Check    check/heat/settling.csv
 */
export function stokesRise_m_per_s(p: {
  diameter_m: number
  liquor_kg_per_m3: number
  drop_kg_per_m3: number
  viscosity_Pas: number
}): number {
  requireRange('diameter', p.diameter_m, 1e-7, 0.1, 'm')
  requireRange('viscosity', p.viscosity_Pas, 1e-5, 1e6, 'Pa s')
  const over = p.liquor_kg_per_m3 - p.drop_kg_per_m3
  requireRange('difference of density', over, -2e4, 2e4, 'kg/m3')
  const speed = (over * gravity_m_per_s2 * p.diameter_m ** 2) / (18 * p.viscosity_Pas)
  const reynolds = (p.liquor_kg_per_m3 * Math.abs(speed) * p.diameter_m) / p.viscosity_Pas
  requireRange('Reynolds number of the drop', reynolds, 0, 1, '1')
  return speed
}

/**
 * Time for such drops to rise through a depth of liquor.
 *
 * Shape    depth over Stokes speed
 * Range    depth_m ≥ 0; the drop lighter than the liquor; as stokesRise_m_per_s
 * Outside  RangeError; nothing is clamped
 * Error    as stokesRise_m_per_s; a liquor that still moves takes longer
 * Source   stokes
 * Check    check/heat/settling.csv
 */
export function settlingTime_s(p: {
  depth_m: number
  diameter_m: number
  liquor_kg_per_m3: number
  drop_kg_per_m3: number
  viscosity_Pas: number
}): number {
  requireRange('depth', p.depth_m, 0, 10, 'm')
  const speed = stokesRise_m_per_s(p)
  requireRange('speed', speed, Number.MIN_VALUE, 10, 'm/s')
  return p.depth_m / speed
}
