import { nutrientRows } from '../../../data/larder/nutrients.ts'
import type { Food } from './food.ts'

/** What a label asks beyond composition, per kg of the edible raw food; null where the tables have no figure. */
export interface Nutrients {
  readonly energy_J_per_kg: number | null
  /** kg per kg. */
  readonly saturated: number | null
  readonly trans: number | null
  readonly cholesterol: number | null
  /** All sodium, that of leavening too; `Food.salt` counts only what is common salt. */
  readonly sodium: number | null
  readonly calcium: number | null
  readonly iron: number | null
  readonly potassium: number | null
  readonly vitaminD: number | null
}

/** Per 100 g: kcal, saturated g, trans g, cholesterol mg, sodium mg, calcium mg, iron mg, potassium mg, vitamin D ug. */
export type NutrientRow = readonly [id: string, ...figures: (number | null)[]]

const joulePerKilocalorie = 4184
const of = (figure: number | null | undefined, factor: number): number | null =>
  figure === null || figure === undefined ? null : figure * factor

const byId = new Map(nutrientRows.map(([id, ...figures]) => [id, figures]))

/** Label nutrients of a food; where another record stands in for its composition (`basis.note`) it stands in here too. */
export function nutrientsOf(food: Food): Nutrients | null {
  const figures = byId.get(food.id)
  if (!figures) return null
  const [energy, saturated, trans, cholesterol, sodium, calcium, iron, potassium, vitaminD] = figures
  return {
    energy_J_per_kg: of(energy, 10 * joulePerKilocalorie),
    saturated: of(saturated, 1e-2),
    trans: of(trans, 1e-2),
    cholesterol: of(cholesterol, 1e-5),
    sodium: of(sodium, 1e-5),
    calcium: of(calcium, 1e-5),
    iron: of(iron, 1e-5),
    potassium: of(potassium, 1e-5),
    vitaminD: of(vitaminD, 1e-8),
  }
}
