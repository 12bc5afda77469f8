import { requireRange } from '../numerics/index.ts'
import { steamTables } from '../steam/index.ts'

const gravity_m_per_s2 = 9.80665

/** What Rohsenow's law asks of a liquid and its vapour at saturation. */
export interface BoilingProperties {
  readonly viscosity_Pas: number
  readonly latent_J_per_kg: number
  readonly liquid_kg_per_m3: number
  readonly vapour_kg_per_m3: number
  readonly tension_N_per_m: number
  readonly cp_J_per_kgK: number
  readonly prandtl: number
}

/** Water at a saturation temperature, from the tables; RangeError outside 273.15–433.15 K. */
export function boilingWater(saturation_K: number): BoilingProperties {
  const s = steamTables
  const cp_J_per_kgK = s.liquidHeatCapacity_J_per_kgK(saturation_K)
  const viscosity_Pas = s.liquidViscosity_Pas(saturation_K)
  return {
    viscosity_Pas,
    latent_J_per_kg: s.latentHeat_J_per_kg(saturation_K),
    liquid_kg_per_m3: s.liquidDensity_kg_per_m3(saturation_K),
    vapour_kg_per_m3: s.vapourDensity_kg_per_m3(saturation_K),
    tension_N_per_m: s.surfaceTension_N_per_m(saturation_K),
    cp_J_per_kgK,
    prandtl: (cp_J_per_kgK * viscosity_Pas) / s.liquidConductivity_W_per_mK(saturation_K),
  }
}

/** Polished stainless steel and water. Other surfaces run from 0.006 to 0.015: a factor of ten in the flux. */
export const stainlessSurface = 0.013

/** Rohsenow's factor in front of superheat³, W/(m2 K3), for any liquid whose properties are given. */
export function rohsenow(p: BoilingProperties, surface = stainlessSurface, prandtlPower = 1): number {
  return (
    p.viscosity_Pas *
    p.latent_J_per_kg *
    Math.sqrt((gravity_m_per_s2 * (p.liquid_kg_per_m3 - p.vapour_kg_per_m3)) / p.tension_N_per_m) *
    (p.cp_J_per_kgK / (surface * p.latent_J_per_kg * p.prandtl ** prandtlPower)) ** 3
  )
}

/**
 * Flux of nucleate boiling at one kelvin of superheat; the flux grows with its cube.
 *
 * Shape    Rohsenow with n = 1; a thicker serum lowers it by the square of its factor
 * Range    273.15 ≤ saturation_K ≤ 433.15; 1 ≤ viscosityFactor ≤ 10
 * Outside  RangeError; nothing is clamped
 * Error    of the law ±100 % in flux, ±25 % in superheat
 * Source   rohsenow
 * Check    check/heat/boiling.csv
 */
export function boilingCoefficient_W_per_m2K3(saturation_K: number, viscosityFactor = 1): number {
  requireRange('viscosity factor', viscosityFactor, 1, 10, '1')
  // Viscosity stands once in front and once, through the Prandtl number, under the cube: f / f³.
  return rohsenow(boilingWater(saturation_K)) / (viscosityFactor * viscosityFactor)
}

/**
 * Flux of nucleate boiling from the pot's floor into water or a thin serum.
 *
 * Shape    Rohsenow: coefficient × superheat³
 * Range    0 ≤ superheat_dK ≤ 30; 273.15 ≤ saturation_K ≤ 433.15; 1 ≤ viscosityFactor ≤ 10
 * Outside  RangeError; nothing is clamped. Compare with criticalHeatFlux_W_per_m2: above it the law does not hold
 * Error    of the law ±100 % in flux, ±25 % in superheat
 * Source   rohsenow
 * Check    check/heat/boiling.csv; round trip through boilingSuperheat_dK
 */
export function nucleateBoilingFlux_W_per_m2(p: {
  superheat_dK: number
  saturation_K: number
  viscosityFactor?: number
}): number {
  requireRange('superheat', p.superheat_dK, 0, 30, 'K')
  return boilingCoefficient_W_per_m2K3(p.saturation_K, p.viscosityFactor ?? 1) * p.superheat_dK ** 3
}

/**
 * Superheat of the floor that a flux of nucleate boiling needs.
 *
 * Shape    cube root of flux over coefficient
 * Range    0 ≤ flux_W_per_m2 ≤ 3e6; 273.15 ≤ saturation_K ≤ 433.15; 1 ≤ viscosityFactor ≤ 10
 * Outside  RangeError; nothing is clamped
 * Error    of the law ±25 %
 * Source   rohsenow
 * Check    round trip through nucleateBoilingFlux_W_per_m2
 */
export function boilingSuperheat_dK(p: {
  flux_W_per_m2: number
  saturation_K: number
  viscosityFactor?: number
}): number {
  requireRange('flux', p.flux_W_per_m2, 0, 3e6, 'W/m2')
  return Math.cbrt(p.flux_W_per_m2 / boilingCoefficient_W_per_m2K3(p.saturation_K, p.viscosityFactor ?? 1))
}

/** Zuber's own constant, π/24. Lienhard and Dhir take 0.149 for a large flat plate, one textbook 0.12. */
export const zuberConstant = 0.131

/** Zuber's law for any liquid whose properties are given, W/m2. */
export function zuber(p: BoilingProperties, constant = zuberConstant): number {
  const lift =
    p.tension_N_per_m * gravity_m_per_s2 * p.vapour_kg_per_m3 ** 2 * (p.liquid_kg_per_m3 - p.vapour_kg_per_m3)
  return constant * p.latent_J_per_kg * lift ** 0.25
}

/**
 * Flux above which vapour blankets the floor. A pot's 30 kW/m2 is 2 to 3 % of it, so it never limits: it is there
 * so that a mistake shows.
 *
 * Shape    Zuber, constant 0.131
 * Range    273.15 ≤ saturation_K ≤ 433.15
 * Outside  RangeError; nothing is clamped
 * Error    of the law ±20 %, mostly its constant
 * Source   zuber
 * Check    check/heat/boiling.csv
 */
export function criticalHeatFlux_W_per_m2(saturation_K: number, constant = zuberConstant): number {
  return zuber(boilingWater(saturation_K), constant)
}
