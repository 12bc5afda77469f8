import type { UnitCode } from './codes.ts'
import { inch_m } from './definitions.ts'

/** What a manuscript may give lengths in; 'mm' and 'foot' are written but are no unit codes of the contract. */
export type LengthUnit = 'inch' | 'cm' | 'mm' | 'foot'

const length_m: Record<LengthUnit, number> = { inch: inch_m, cm: 0.01, mm: 0.001, foot: 12 * inch_m }

/**
 * Length of one unit in m.
 *
 * Shape    a table of exact definitions
 * Range    'inch', 'cm', 'mm', 'foot'
 * Outside  not reachable through the type
 * Error    none
 * Source   NIST Handbook 44, appendix C
 * Check    check/units/length.csv
 */
export const lengthOf_m = (unit: LengthUnit): number => length_m[unit]

/** Length of one unit code in m; null when the unit is not a unit of length. */
export const lengthOfUnit_m = (unit: UnitCode): number | null =>
  unit === 'inch' || unit === 'cm' ? length_m[unit] : null

/** Metres from feet, for altitudes. */
export const metresFromFeet = (feet: number): number => feet * length_m.foot
/** Feet from metres, for altitudes. */
export const feetFromMetres = (metres: number): number => metres / length_m.foot
