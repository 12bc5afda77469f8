import type { Entry } from '../../data/larder/selection/entry.ts'
import type { NutrientRow } from '../../src/core/larder/nutrients.ts'
import type { Tables } from './tables.ts'

const columns = [
  'energy_kcal',
  'saturated_fat_g',
  'trans_fat_g',
  'cholesterol_mg',
  'sodium_mg',
  'calcium_mg',
  'iron_mg',
  'potassium_mg',
  'vitamin_d_ug',
] as const

/** Label nutrients of an entry's record, per 100 g; unknown stays null. */
export function nutrientRowOf(entry: Entry, tables: Tables): NutrientRow {
  const record = tables.record(entry.record)
  const share = entry.dilute ? 1 - entry.dilute[0] : 1
  const figures = columns.map((column) => {
    const figure = record.figure(column)
    const value = column === 'sodium_mg' ? sodium(entry, figure) : figure
    return value === null ? null : Number((value * share).toPrecision(4))
  })
  return [entry.id, ...figures]
}

/** Where the cure is stated, sodium follows it; leavening keeps the record's sodium though it is no salt. */
function sodium(entry: Entry, recorded: number | null): number | null {
  if (!entry.salt) return recorded
  if (entry.salt[0] > 0) return (entry.salt[0] * 1e5) / 2.54
  return entry.character === 'leavening' ? recorded : null
}
