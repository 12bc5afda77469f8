import { requireRange } from '../numerics/index.ts'
import { airGas_J_per_kgK } from './atmosphere.ts'
import { saturationTemp_K } from './saturation-line.ts'

/** Molar masses that turn the air's share of moles into a share of mass, kg/mol. */
export const airMolar_kg_per_mol = 0.0289644
export const waterMolar_kg_per_mol = 0.018015268

/**
 * Partial pressure of a mass of dry air in a headspace.
 *
 * Shape    ideal gas
 * Range    mass_kg ≥ 0; volume_m3 > 0; 200 ≤ temperature_K ≤ 600
 * Outside  RangeError; nothing is clamped
 * Error    below 0.1 % up to 500 kPa (compressibility of air)
 * Source   iso-2533
 * Check    check/steam/closed-pot.csv; round trip through airMass_kg
 */
export function airPressure_Pa(p: { mass_kg: number; volume_m3: number; temperature_K: number }): number {
  requireRange('mass of air', p.mass_kg, 0, 1e3, 'kg')
  requireRange('volume', p.volume_m3, Number.MIN_VALUE, 1e3, 'm3')
  requireRange('temperature', p.temperature_K, 200, 600, 'K')
  return (p.mass_kg * airGas_J_per_kgK * p.temperature_K) / p.volume_m3
}

/**
 * Mass of dry air that fills a volume at a partial pressure.
 *
 * Shape    ideal gas
 * Range    pressure_Pa ≥ 0; volume_m3 ≥ 0; 200 ≤ temperature_K ≤ 600
 * Outside  RangeError; nothing is clamped
 * Error    below 0.1 % up to 500 kPa (compressibility of air)
 * Source   iso-2533
 * Check    round trip through airPressure_Pa
 */
export function airMass_kg(p: { pressure_Pa: number; volume_m3: number; temperature_K: number }): number {
  requireRange('partial pressure of air', p.pressure_Pa, 0, 1e6, 'Pa')
  requireRange('volume', p.volume_m3, 0, 1e3, 'm3')
  requireRange('temperature', p.temperature_K, 200, 600, 'K')
  return (p.pressure_Pa * p.volume_m3) / (airGas_J_per_kgK * p.temperature_K)
}

/**
 * Temperature of the steam over boiling water when part of the headspace is air: the gauge reads the sum, the food
 * feels the steam's share.
 *
 * Shape    saturation temperature at the steam's partial pressure (Dalton)
 * Range    0 ≤ air_share < 1 (of moles); steam's share of the pressure within 611.213–22.064e6 Pa
 * Outside  RangeError; nothing is clamped
 * Error    below 0.1 K (ideal mixing)
 * Source   iapws-if97
 * Check    check/steam/closed-pot.csv; air_share = 0 is the saturation temperature
 */
export function headspaceTemp_K(p: { pressure_Pa: number; air_share: number }): number {
  requireRange('share of air', p.air_share, 0, 1, 'mol/mol')
  return saturationTemp_K(p.pressure_Pa * (1 - p.air_share))
}

/** Share of moles that is air, from its partial pressure and the total. */
export function airShare(p: { air_Pa: number; total_Pa: number }): number {
  requireRange('partial pressure of air', p.air_Pa, 0, p.total_Pa, 'Pa')
  return p.air_Pa / p.total_Pa
}
