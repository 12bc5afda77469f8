import { requireRange } from '../numerics/index.ts'
import { saturationTemp_K } from './saturation-line.ts'

// ISO 2533, layer from −2 to 11 km.
const seaLevel_Pa = 101325
const seaLevel_K = 288.15
const lapse_K_per_m = 0.0065
const gravity_m_per_s2 = 9.80665
export const airGas_J_per_kgK = 287.05287
const exponent = gravity_m_per_s2 / (lapse_K_per_m * airGas_J_per_kgK)
const earth_m = 6356766

/**
 * Pressure of the standard atmosphere at a geopotential altitude. Maps print geometric height; the difference is
 * 0.3 m at 1,400 m and can be ignored in a kitchen, not in a check.
 *
 * Shape    101325·(1 − 0.0065 H/288.15)^5.25588
 * Range    −2000 ≤ geopotentialAltitude_m ≤ 11000
 * Outside  RangeError; nothing is clamped
 * Error    exact by definition; the weather moves the real air by ±3 %
 * Source   iso-2533
 * Check    check/steam/atmosphere.csv; round trip through standardAltitude_m
 */
export function standardPressure_Pa(geopotentialAltitude_m: number): number {
  requireRange('altitude', geopotentialAltitude_m, -2000, 11000, 'm')
  return seaLevel_Pa * (1 - (lapse_K_per_m * geopotentialAltitude_m) / seaLevel_K) ** exponent
}

/**
 * Geopotential altitude at which the standard atmosphere has a pressure.
 *
 * Shape    inverse of standardPressure_Pa
 * Range    22632 ≤ pressure_Pa ≤ 127774
 * Outside  RangeError; nothing is clamped
 * Error    exact by definition
 * Source   iso-2533
 * Check    round trip through standardPressure_Pa
 */
export function standardAltitude_m(pressure_Pa: number): number {
  requireRange('pressure', pressure_Pa, 22632, 127774, 'Pa')
  return (seaLevel_K / lapse_K_per_m) * (1 - (pressure_Pa / seaLevel_Pa) ** (1 / exponent))
}

/**
 * Geopotential altitude from height above sea level.
 *
 * Shape    r z/(r + z), r = 6356766 m
 * Range    −2000 ≤ height_m ≤ 11019
 * Outside  RangeError; nothing is clamped
 * Error    exact by definition
 * Source   iso-2533
 * Check    check/steam/atmosphere.csv; round trip through heightFromGeopotential_m
 */
export function geopotentialFromHeight_m(height_m: number): number {
  requireRange('height', height_m, -2001, 11020, 'm')
  return (earth_m * height_m) / (earth_m + height_m)
}

/**
 * Height above sea level from geopotential altitude.
 *
 * Shape    r H/(r − H), r = 6356766 m
 * Range    −2000 ≤ geopotentialAltitude_m ≤ 11000
 * Outside  RangeError; nothing is clamped
 * Error    exact by definition
 * Source   iso-2533
 * Check    round trip through geopotentialFromHeight_m
 */
export function heightFromGeopotential_m(geopotentialAltitude_m: number): number {
  requireRange('altitude', geopotentialAltitude_m, -2001, 11001, 'm')
  return (earth_m * geopotentialAltitude_m) / (earth_m - geopotentialAltitude_m)
}

/**
 * Boiling point of water in the standard atmosphere.
 *
 * Shape    saturation temperature at the standard pressure
 * Range    −2000 ≤ geopotentialAltitude_m ≤ 11000
 * Outside  RangeError; nothing is clamped
 * Error    7 mK of the formulation; ±1 K with the weather
 * Source   iapws-if97, iso-2533
 * Check    check/steam/atmosphere.csv; check/steam/altitude-boiling.csv
 */
export function boilingPoint_K(geopotentialAltitude_m: number): number {
  return saturationTemp_K(standardPressure_Pa(geopotentialAltitude_m))
}
