import { rows } from '../../../data/larder/foods.ts'
import type { Food, HouseholdWeight, Kinetics } from './food.ts'
import type { MeasureRow, Row } from './row.ts'

/** Everything the larder knows, in the order in which ties between names are settled. */
export const foods: readonly Food[] = rows.map(foodOf)

const byId = new Map(foods.map((food) => [food.id, food]))

/** The food of an id, or null when the larder has none. */
export const foodById = (id: string): Food | null => byId.get(id) ?? null

function foodOf([
  id,
  name,
  also,
  character,
  source,
  composition,
  parts,
  absorbs,
  edible,
  density_kg_per_m3,
  kinetics,
  piece,
  measures,
  allergens,
  checkLabel,
  tags,
  basis,
]: Row): Food {
  const [water, protein, fat, carbohydrate, fibre, ash, alcohol] = composition.map((percent) => percent / 100)
  const [starch, sugars, salt, collagen, suspended, acid] = parts.map((percent) => percent / 100)
  const pace = Number(kinetics.split(' ')[2] ?? 1)
  return {
    id,
    name,
    also: also.map((each) => each.replace(/^=/, '')),
    character,
    composition: { water, protein, fat, carbohydrate, fibre, ash, alcohol },
    starch,
    sugars,
    salt,
    collagen,
    suspended,
    kinetics: kineticsOf(kinetics),
    usualPiece: pieceOf(piece),
    absorbs,
    density_kg_per_m3,
    measures: measures.map((measure) => weightOf(measure, source)),
    edible,
    allergens,
    checkLabel,
    source,
    ...(acid > 0 && { acid }),
    ...(pace !== 1 && { pace }),
    ...(tags.length > 0 && { tags }),
    ...(Object.keys(basis).length > 0 && { basis }),
  }
}

function kineticsOf(words: string): Kinetics | null {
  const [kind, which] = words.split(' ')
  if (kind === 'collagen') return { kind, cut: which as Extract<Kinetics, { kind: 'collagen' }>['cut'] }
  if (kind === 'plant') return { kind, tissue: which as Extract<Kinetics, { kind: 'plant' }>['tissue'] }
  return kind === 'lean' ? { kind } : null
}

function pieceOf(words: string): Food['usualPiece'] {
  if (words === '') return null
  const [shape, size_mm] = words.split(' ')
  return { shape: shape as NonNullable<Food['usualPiece']>['shape'], size_m: Number(size_mm) / 1000 }
}

function weightOf([unit, form, low_g, high_g, from]: MeasureRow, source: string): HouseholdWeight {
  return {
    unit,
    form: form === '' ? null : form,
    low_kg: low_g / 1000,
    high_kg: high_g / 1000,
    source: from === '' ? source : from,
  }
}
