import { requireRange } from '../numerics/index.ts'
import { liquidUnchecked, vapourUnchecked, type WaterState } from './regions.ts'
import { saturationPressure_Pa } from './saturation-line.ts'

/** Boiling liquid at its own vapour pressure; RangeError outside 273.15–623.15 K. */
export function saturatedLiquid(temperature_K: number): WaterState {
  requireRange('temperature', temperature_K, 273.15, 623.15, 'K')
  return liquidUnchecked({ temperature_K, pressure_Pa: saturationPressure_Pa(temperature_K) })
}

/** Dry saturated steam; RangeError outside 273.15–623.15 K. */
export function saturatedVapour(temperature_K: number): WaterState {
  requireRange('temperature', temperature_K, 273.15, 623.15, 'K')
  return vapourUnchecked({ temperature_K, pressure_Pa: saturationPressure_Pa(temperature_K) })
}

/**
 * Heat that turns boiling water into steam.
 *
 * Shape    enthalpy of region 2 less that of region 1 on the saturation line
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.1 % in a pot's range
 * Source   iapws-if97
 * Check    check/steam/saturation.csv; Clausius-Clapeyron
 */
export function latentHeat_J_per_kg(temperature_K: number): number {
  return saturatedVapour(temperature_K).enthalpy_J_per_kg - saturatedLiquid(temperature_K).enthalpy_J_per_kg
}

/**
 * Enthalpy of boiling water.
 *
 * Shape    region 1 on the saturation line
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: within 0.2 kJ/kg of IAPWS-95
 * Source   iapws-if97
 * Check    check/steam/saturation.csv
 */
export function saturatedLiquidEnthalpy_J_per_kg(temperature_K: number): number {
  return saturatedLiquid(temperature_K).enthalpy_J_per_kg
}

/**
 * Enthalpy of dry saturated steam.
 *
 * Shape    region 2 on the saturation line
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: within 0.2 kJ/kg of IAPWS-95
 * Source   iapws-if97
 * Check    check/steam/saturation.csv
 */
export function saturatedVapourEnthalpy_J_per_kg(temperature_K: number): number {
  return saturatedVapour(temperature_K).enthalpy_J_per_kg
}

/**
 * Internal energy of boiling water, for balances of a closed volume.
 *
 * Shape    region 1 on the saturation line
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: within 0.2 kJ/kg of IAPWS-95
 * Source   iapws-if97
 * Check    check/steam/saturation.csv; the textbook pressure cooker in check/steam/closed-pot.csv
 */
export function saturatedLiquidEnergy_J_per_kg(temperature_K: number): number {
  return saturatedLiquid(temperature_K).energy_J_per_kg
}

/**
 * Internal energy of dry saturated steam, for balances of a closed volume.
 *
 * Shape    region 2 on the saturation line
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: within 0.2 kJ/kg of IAPWS-95
 * Source   iapws-if97
 * Check    check/steam/saturation.csv; the textbook pressure cooker in check/steam/closed-pot.csv
 */
export function saturatedVapourEnergy_J_per_kg(temperature_K: number): number {
  return saturatedVapour(temperature_K).energy_J_per_kg
}

/**
 * Density of boiling water.
 *
 * Shape    region 1 on the saturation line
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.01 %
 * Source   iapws-if97
 * Check    check/steam/saturation.csv
 */
export function saturatedLiquidDensity_kg_per_m3(temperature_K: number): number {
  return 1 / saturatedLiquid(temperature_K).volume_m3_per_kg
}

/**
 * Density of dry saturated steam.
 *
 * Shape    region 2 on the saturation line
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.1 %
 * Source   iapws-if97
 * Check    check/steam/saturation.csv
 */
export function saturatedVapourDensity_kg_per_m3(temperature_K: number): number {
  return 1 / saturatedVapour(temperature_K).volume_m3_per_kg
}

/**
 * Heat capacity of boiling water at constant pressure.
 *
 * Shape    region 1 on the saturation line
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.2 %
 * Source   iapws-if97
 * Check    check/steam/saturation.csv
 */
export function saturatedLiquidHeatCapacity_J_per_kgK(temperature_K: number): number {
  return saturatedLiquid(temperature_K).heatCapacity_J_per_kgK
}

/**
 * Volume expansion of boiling water at constant pressure. Negative below 4 °C.
 *
 * Shape    region 1 on the saturation line, mixed derivative
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: about 1 % above 20 °C
 * Source   iapws-if97
 * Check    against a finite difference of the volume
 */
export function saturatedLiquidExpansion_per_K(temperature_K: number): number {
  return saturatedLiquid(temperature_K).expansion_per_K
}
