import { requireRange } from '../numerics/index.ts'
import { saturatedLiquid } from './saturated.ts'

const critical_K = 647.096
const critical_kg_per_m3 = 322

// R12-08 table 1 and table 2: [power of 1/T̄ − 1, power of ρ̄ − 1, coefficient].
const dilute = [1.67752, 2.20462, 0.6366564, -0.241605]
const dense: readonly (readonly [number, number, number])[] = [
  [0, 0, 5.20094e-1],
  [1, 0, 8.50895e-2],
  [2, 0, -1.08374],
  [3, 0, -2.89555e-1],
  [0, 1, 2.22531e-1],
  [1, 1, 9.99115e-1],
  [2, 1, 1.88797],
  [3, 1, 1.26613],
  [5, 1, 1.20573e-1],
  [0, 2, -2.81378e-1],
  [1, 2, -9.06851e-1],
  [2, 2, -7.72479e-1],
  [3, 2, -4.89837e-1],
  [4, 2, -2.5704e-1],
  [0, 3, 1.61913e-1],
  [1, 3, 2.57399e-1],
  [0, 4, -3.25372e-2],
  [3, 4, 6.98452e-2],
  [4, 5, 8.72102e-3],
  [3, 6, -4.35673e-3],
  [5, 6, -5.93264e-4],
]

/**
 * Viscosity of water or steam. The critical enhancement is left out: it is 1 within 2 % outside 645.91–650.77 K.
 *
 * Shape    R12-08: dilute gas factor times exponential in density
 * Range    273.15 ≤ temperature_K ≤ 1173.15; 0 ≤ density_kg_per_m3 ≤ 1300
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 1–2 % for the liquid
 * Source   iapws-viscosity-2008
 * Check    check/steam/viscosity.csv
 */
export function viscosity_Pas(p: { temperature_K: number; density_kg_per_m3: number }): number {
  requireRange('temperature', p.temperature_K, 273.15, 1173.15, 'K')
  requireRange('density', p.density_kg_per_m3, 0, 1300, 'kg/m3')
  const t = p.temperature_K / critical_K
  const r = p.density_kg_per_m3 / critical_kg_per_m3
  let below = 0
  dilute.forEach((h, i) => {
    below += h / t ** i
  })
  let sum = 0
  for (const [i, j, h] of dense) sum += (1 / t - 1) ** i * (r - 1) ** j * h
  return ((100 * Math.sqrt(t)) / below) * Math.exp(r * sum) * 1e-6
}

/**
 * Viscosity of boiling water.
 *
 * Shape    R12-08 at the density of IF97
 * Range    273.15 ≤ temperature_K ≤ 623.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 1 %
 * Source   iapws-viscosity-2008
 * Check    check/steam/saturation.csv
 */
export function saturatedLiquidViscosity_Pas(temperature_K: number): number {
  return viscosity_Pas({ temperature_K, density_kg_per_m3: 1 / saturatedLiquid(temperature_K).volume_m3_per_kg })
}

// R15-11 table 1 and table 2.
const diluteConductivity = [2.443221e-3, 1.323095e-2, 6.770357e-3, -3.454586e-3, 4.096266e-4]
const denseConductivity = [
  [1.60397357, -0.646013523, 0.111443906, 0.102997357, -0.0504123634, 0.00609859258],
  [2.33771842, -2.78843778, 1.53616167, -0.463045512, 0.0832827019, -0.00719201245],
  [2.19650529, -4.54580785, 3.55777244, -1.40944978, 0.275418278, -0.0205938816],
  [-1.21051378, 1.60812989, -0.621178141, 0.0716373224, 0, 0],
  [-2.720337, 4.57586331, -3.18369245, 1.1168348, -0.19268305, 0.012913842],
]

/**
 * Conductivity of liquid water on the saturation line. The critical enhancement, below 0.3 % in a pot, is left out.
 *
 * Shape    R15-11: dilute gas factor times exponential in density
 * Range    273.15 ≤ temperature_K ≤ 473.15
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 1.5 %; of leaving out the enhancement: see check/steam/saturation.csv
 * Source   iapws-conductivity-2011
 * Check    check/steam/conductivity.csv; check/steam/saturation.csv
 */
export function saturatedLiquidConductivity_W_per_mK(temperature_K: number): number {
  requireRange('temperature', temperature_K, 273.15, 473.15, 'K')
  return waterConductivity_W_per_mK({
    temperature_K,
    density_kg_per_m3: 1 / saturatedLiquid(temperature_K).volume_m3_per_kg,
  })
}

/**
 * Conductivity of water or steam without the critical enhancement, which is below 0.3 % in a pot.
 *
 * Shape    R15-11: dilute gas factor times exponential in density
 * Range    273.15 ≤ temperature_K ≤ 1173.15; 0 ≤ density_kg_per_m3 ≤ 1300
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation 1.5 % for the liquid; near the critical point the part left out dominates
 * Source   iapws-conductivity-2011
 * Check    check/steam/conductivity.csv
 */
export function waterConductivity_W_per_mK(p: { temperature_K: number; density_kg_per_m3: number }): number {
  requireRange('temperature', p.temperature_K, 273.15, 1173.15, 'K')
  requireRange('density', p.density_kg_per_m3, 0, 1300, 'kg/m3')
  const t = p.temperature_K / critical_K
  const r = p.density_kg_per_m3 / critical_kg_per_m3
  let below = 0
  diluteConductivity.forEach((l, i) => {
    below += l / t ** i
  })
  let sum = 0
  denseConductivity.forEach((row, i) => {
    let inner = 0
    row.forEach((l, j) => {
      inner += l * (r - 1) ** j
    })
    sum += (1 / t - 1) ** i * inner
  })
  return (Math.sqrt(t) / below) * Math.exp(r * sum) * 1e-3
}

/**
 * Surface tension of water against its vapour.
 *
 * Shape    235.8e-3·τ^1.256·(1 − 0.625 τ), τ = 1 − T/647.096 K
 * Range    248.15 ≤ temperature_K ≤ 647.096
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.5 %
 * Source   iapws-surface-tension-2014
 * Check    check/steam/saturation.csv; zero at the critical point
 */
export function surfaceTension_N_per_m(temperature_K: number): number {
  requireRange('temperature', temperature_K, 248.15, critical_K, 'K')
  const tau = 1 - temperature_K / critical_K
  return 235.8e-3 * tau ** 1.256 * (1 - 0.625 * tau)
}

/** Prandtl number of boiling water: how much thicker its velocity layer is than its thermal one. */
export function saturatedLiquidPrandtl(temperature_K: number): number {
  return (
    (saturatedLiquid(temperature_K).heatCapacity_J_per_kgK * saturatedLiquidViscosity_Pas(temperature_K)) /
    saturatedLiquidConductivity_W_per_mK(temperature_K)
  )
}
