import { requireRange } from '../numerics/index.ts'
import { liquidTempTerms, liquidTerms, type Term, vapourIdealTerms, vapourResidualTerms } from './if97-coefficients.ts'
import { saturationPressure_Pa } from './saturation-line.ts'

/** Specific gas constant of IF97, J/(kg K). It belongs to the formulation: do not mix with newer values. */
const gas_J_per_kgK = 461.526

/** Everything that follows from the Gibbs energy at one temperature and pressure. */
export interface WaterState {
  readonly volume_m3_per_kg: number
  readonly enthalpy_J_per_kg: number
  readonly energy_J_per_kg: number
  readonly entropy_J_per_kgK: number
  readonly heatCapacity_J_per_kgK: number
  readonly soundSpeed_m_per_s: number
  /** Volume expansion at constant pressure, 1/K. */
  readonly expansion_per_K: number
}

export interface At {
  readonly temperature_K: number
  readonly pressure_Pa: number
}

interface Gibbs {
  g: number
  p: number
  pp: number
  t: number
  tt: number
  pt: number
}

/** Sums c·a^i·b^j and its derivatives with respect to a and b. */
function sumTerms(terms: readonly Term[], a: number, b: number): Gibbs {
  const sum: Gibbs = { g: 0, p: 0, pp: 0, t: 0, tt: 0, pt: 0 }
  for (const [i, j, c] of terms) {
    const term = c * a ** i * b ** j
    sum.g += term
    sum.p += (i / a) * term
    sum.pp += ((i * (i - 1)) / (a * a)) * term
    sum.t += (j / b) * term
    sum.tt += ((j * (j - 1)) / (b * b)) * term
    sum.pt += ((i * j) / (a * b)) * term
  }
  return sum
}

function stateFrom(g: Gibbs, { temperature_K: T, pressure_Pa: p }: At, pi: number, tau: number): WaterState {
  const R = gas_J_per_kgK
  const cross = g.p - tau * g.pt
  return {
    volume_m3_per_kg: (R * T * pi * g.p) / p,
    enthalpy_J_per_kg: R * T * tau * g.t,
    energy_J_per_kg: R * T * (tau * g.t - pi * g.p),
    entropy_J_per_kgK: R * (tau * g.t - g.g),
    heatCapacity_J_per_kgK: -R * tau * tau * g.tt,
    soundSpeed_m_per_s: Math.sqrt((R * T * g.p * g.p) / ((cross * cross) / (tau * tau * g.tt) - g.pp)),
    expansion_per_K: cross / (g.p * T),
  }
}

/** Liquid by region 1, without the check of the range. */
export function liquidUnchecked({ temperature_K, pressure_Pa }: At): WaterState {
  const pi = pressure_Pa / 16.53e6
  const tau = 1386 / temperature_K
  const s = sumTerms(liquidTerms, 7.1 - pi, tau - 1.222)
  // The sum runs in (7.1 − π): its derivative in π changes sign.
  const g: Gibbs = { g: s.g, p: -s.p, pp: s.pp, t: s.t, tt: s.tt, pt: -s.pt }
  return stateFrom(g, { temperature_K, pressure_Pa }, pi, tau)
}

/** Vapour by region 2, without the check of the range. */
export function vapourUnchecked({ temperature_K, pressure_Pa }: At): WaterState {
  const pi = pressure_Pa / 1e6
  const tau = 540 / temperature_K
  const g = sumTerms(vapourResidualTerms, pi, tau - 0.5)
  g.g += Math.log(pi)
  g.p += 1 / pi
  g.pp -= 1 / (pi * pi)
  for (const [j, c] of vapourIdealTerms) {
    const term = c * tau ** j
    g.g += term
    g.t += (j / tau) * term
    g.tt += ((j * (j - 1)) / (tau * tau)) * term
  }
  return stateFrom(g, { temperature_K, pressure_Pa }, pi, tau)
}

/** Slack for a state that a caller puts on the saturation line by rounding. */
const onLine = 1e-9

/**
 * Liquid water at a temperature and pressure (region 1): RangeError outside 273.15–623.15 K, below the saturation
 * pressure or above 100 MPa.
 */
export function liquidState(at: At): WaterState {
  requireRange('temperature', at.temperature_K, 273.15, 623.15, 'K')
  const least = saturationPressure_Pa(at.temperature_K)
  requireRange('pressure of the liquid', at.pressure_Pa, least * (1 - onLine), 100e6, 'Pa')
  return liquidUnchecked(at)
}

/**
 * Steam at a temperature and pressure (region 2): RangeError outside 273.15–1073.15 K and above the saturation
 * pressure, the boundary to region 3, or 100 MPa.
 */
export function vapourState(at: At): WaterState {
  requireRange('temperature', at.temperature_K, 273.15, 1073.15, 'K')
  const T = at.temperature_K
  const most =
    T <= 623.15
      ? saturationPressure_Pa(T)
      : T <= 863.15
        ? (0.34805185628969e3 + T * (-0.11671859879975e1 + T * 0.10192970039326e-2)) * 1e6
        : 100e6
  // The vapour has no least pressure but zero, where its volume is infinite.
  requireRange('pressure of the vapour', at.pressure_Pa, Number.MIN_VALUE, most * (1 + onLine), 'Pa')
  return vapourUnchecked(at)
}

/**
 * Specific volume of liquid water.
 *
 * Shape    Gibbs energy of IF97 region 1
 * Range    273.15 ≤ temperature_K ≤ 623.15; saturation ≤ pressure_Pa ≤ 100e6
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.001 % below 400 K and 10 MPa
 * Source   iapws-if97
 * Check    check/steam/if97-liquid.csv
 */
export function liquidVolume_m3_per_kg(at: At): number {
  return liquidState(at).volume_m3_per_kg
}

/**
 * Specific enthalpy of liquid water; zero energy and entropy at the triple point.
 *
 * Shape    Gibbs energy of IF97 region 1
 * Range    273.15 ≤ temperature_K ≤ 623.15; saturation ≤ pressure_Pa ≤ 100e6
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: within 0.2 kJ/kg of IAPWS-95
 * Source   iapws-if97
 * Check    check/steam/if97-liquid.csv
 */
export function liquidEnthalpy_J_per_kg(at: At): number {
  return liquidState(at).enthalpy_J_per_kg
}

/**
 * Isobaric heat capacity of liquid water.
 *
 * Shape    Gibbs energy of IF97 region 1, second derivative
 * Range    273.15 ≤ temperature_K ≤ 623.15; saturation ≤ pressure_Pa ≤ 100e6
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.2 %
 * Source   iapws-if97
 * Check    check/steam/if97-liquid.csv
 */
export function liquidHeatCapacity_J_per_kgK(at: At): number {
  return liquidState(at).heatCapacity_J_per_kgK
}

/**
 * Specific volume of steam.
 *
 * Shape    Gibbs energy of IF97 region 2
 * Range    273.15 ≤ temperature_K ≤ 1073.15; 0 < pressure_Pa ≤ saturation (or the boundary to region 3)
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.05 % in a pot's range
 * Source   iapws-if97
 * Check    check/steam/if97-vapour.csv
 */
export function vapourVolume_m3_per_kg(at: At): number {
  return vapourState(at).volume_m3_per_kg
}

/**
 * Specific enthalpy of steam, same zero as the liquid.
 *
 * Shape    Gibbs energy of IF97 region 2
 * Range    273.15 ≤ temperature_K ≤ 1073.15; 0 < pressure_Pa ≤ saturation (or the boundary to region 3)
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: within 0.2 kJ/kg of IAPWS-95
 * Source   iapws-if97
 * Check    check/steam/if97-vapour.csv
 */
export function vapourEnthalpy_J_per_kg(at: At): number {
  return vapourState(at).enthalpy_J_per_kg
}

/**
 * Isobaric heat capacity of steam.
 *
 * Shape    Gibbs energy of IF97 region 2, second derivative
 * Range    273.15 ≤ temperature_K ≤ 1073.15; 0 < pressure_Pa ≤ saturation (or the boundary to region 3)
 * Outside  RangeError; nothing is clamped
 * Error    of the formulation: 0.2 %
 * Source   iapws-if97
 * Check    check/steam/if97-vapour.csv
 */
export function vapourHeatCapacity_J_per_kgK(at: At): number {
  return vapourState(at).heatCapacity_J_per_kgK
}

/**
 * Temperature of liquid water from pressure and enthalpy, without iteration.
 *
 * Shape    backward polynomial of IF97 region 1
 * Range    611 ≤ pressure_Pa ≤ 100e6; enthalpy from the freezing to the boiling liquid at that pressure
 * Outside  RangeError when the answer leaves 273.15 K (less its own error) or the liquid; nothing is clamped
 * Error    within 25 mK of the forward equation
 * Source   iapws-if97
 * Check    check/steam/if97-liquid-temp.csv; round trip through liquidEnthalpy_J_per_kg
 */
export function liquidTemp_K({
  pressure_Pa,
  enthalpy_J_per_kg,
}: {
  pressure_Pa: number
  enthalpy_J_per_kg: number
}): number {
  requireRange('pressure', pressure_Pa, 611, 100e6, 'Pa')
  requireRange('enthalpy', enthalpy_J_per_kg, -1e3, 1.7e6, 'J/kg')
  const pi = pressure_Pa / 1e6
  const eta = enthalpy_J_per_kg / 2.5e6
  let T = 0
  for (const [i, j, c] of liquidTempTerms) T += c * pi ** i * (eta + 1) ** j
  // The polynomial errs by 25 mK at most, so an answer this far out is out.
  requireRange('temperature', T, 273.15 - 0.03, 623.15 + 0.03, 'K')
  if (T > 273.15 && saturationPressure_Pa(Math.min(T, 623.15)) > pressure_Pa * 1.002) {
    throw new RangeError(`enthalpy = ${enthalpy_J_per_kg} J/kg at ${pressure_Pa} Pa is no longer liquid`)
  }
  return T
}
