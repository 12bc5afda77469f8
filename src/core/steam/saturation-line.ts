import { requireRange } from '../numerics/index.ts'

// IF97 region 4, coefficients of table 34.
const n1 = 0.11670521452767e4
const n2 = -0.72421316703206e6
const n3 = -0.17073846940092e2
const n4 = 0.1202082470247e5
const n5 = -0.32325550322333e7
const n6 = 0.1491510861353e2
const n7 = -0.48232657361591e4
const n8 = 0.40511340542057e6
const n9 = -0.23855557567849
const n10 = 0.65017534844798e3

/**
 * Pressure at which water and steam are in balance. Gives 101.418 kPa at 100 °C: water boils at 99.974 °C under
 * 101.325 kPa.
 *
 * Shape    implicit quadratic of IF97 region 4
 * Range    273.15 ≤ temperature_K ≤ 647.096
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.025 %
 * Source   iapws-if97
 * Check    check/steam/if97-saturation.csv; round trip through saturationTemp_K
 */
export function saturationPressure_Pa(temperature_K: number): number {
  requireRange('temperature', temperature_K, 273.15, 647.096, 'K')
  const theta = temperature_K + n9 / (temperature_K - n10)
  const A = (theta + n1) * theta + n2
  const B = (n3 * theta + n4) * theta + n5
  const C = (n6 * theta + n7) * theta + n8
  return ((2 * C) / (-B + Math.sqrt(B * B - 4 * A * C))) ** 4 * 1e6
}

/**
 * Boiling temperature at an absolute pressure.
 *
 * Shape    implicit quadratic of IF97 region 4, the same as of the pressure
 * Range    611.213 ≤ pressure_Pa ≤ 22.064e6
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: that of the pressure, 0.025 %, about 7 mK in a pot
 * Source   iapws-if97
 * Check    check/steam/if97-saturation.csv; round trip through saturationPressure_Pa
 */
export function saturationTemp_K(pressure_Pa: number): number {
  requireRange('pressure', pressure_Pa, 611.2126, 22.064e6, 'Pa')
  const beta = (pressure_Pa / 1e6) ** 0.25
  const E = (beta + n3) * beta + n6
  const F = (n1 * beta + n4) * beta + n7
  const G = (n2 * beta + n5) * beta + n8
  const D = (2 * G) / (-F - Math.sqrt(F * F - 4 * E * G))
  const u = n10 + D
  return (u - Math.sqrt(u * u - 4 * (n9 + n10 * D))) / 2
}

/**
 * Slope of the saturation line, dp/dT.
 *
 * Shape    derivative of the implicit quadratic of IF97 region 4
 * Range    273.15 ≤ temperature_K ≤ 647.096
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: below 0.1 %
 * Source   iapws-if97
 * Check    against a finite difference; against Clausius-Clapeyron with the latent heat and volumes of regions 1 and 2
 */
export function saturationSlope_Pa_per_K(temperature_K: number): number {
  const p = saturationPressure_Pa(temperature_K)
  const theta = temperature_K + n9 / (temperature_K - n10)
  const dTheta = 1 - n9 / (temperature_K - n10) ** 2
  const beta = (p / 1e6) ** 0.25
  // F(β, ϑ) = β²ϑ² + n1 β²ϑ + n2 β² + n3 βϑ² + n4 βϑ + n5 β + n6 ϑ² + n7 ϑ + n8 = 0
  const byBeta = 2 * beta * (theta * (theta + n1) + n2) + (n3 * theta + n4) * theta + n5
  const byTheta = beta * beta * (2 * theta + n1) + beta * (2 * n3 * theta + n4) + 2 * n6 * theta + n7
  const dBeta = (-byTheta / byBeta) * dTheta
  return ((4 * p) / beta) * dBeta
}
