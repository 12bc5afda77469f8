import type { UnitCode } from './codes.ts'
import { pound_kg } from './definitions.ts'

const mass_kg: Partial<Record<UnitCode, number>> = {
  mg: 1e-6,
  g: 1e-3,
  kg: 1,
  oz: pound_kg / 16,
  lb: pound_kg,
}

/**
 * Mass of one unit in kg; null when the unit is not a unit of mass.
 *
 * Shape    a table of exact definitions
 * Range    every unit code
 * Outside  null: a cup or a bunch has no mass of its own
 * Error    none
 * Source   NIST Handbook 44, appendix C
 * Check    check/units/mass.csv
 */
export const massOfUnit_kg = (unit: UnitCode): number | null => mass_kg[unit] ?? null
