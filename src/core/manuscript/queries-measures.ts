import { massOfUnit_kg, volumeOfUnit_m3 } from '../units/index.ts'
import type { Measure } from './recipe.ts'

export const middle = (measure: Measure): number => (measure.low + measure.high) / 2

/** Mass of a measure of weight, kg; null for any other. */
export function massOf_kg(measure: Measure): number | null {
  const unit_kg = measure.unit === null ? null : massOfUnit_kg(measure.unit)
  return unit_kg === null ? null : middle(measure) * unit_kg
}

/** Volume of a measure of volume, m3; null for any other. */
export function volumeOf_m3(measure: Measure): number | null {
  const unit_m3 = measure.unit === null ? null : volumeOfUnit_m3(measure.unit)
  return unit_m3 === null ? null : middle(measure) * unit_m3
}
