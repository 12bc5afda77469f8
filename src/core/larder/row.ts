import type { Character } from './food.ts'

// One line a food in data/larder/foods.ts, written by scripts/larder/build.ts. Order is the encoding:
// change it here, in the script and in foods.ts of this room together.

/** Fractions of the edible portion, in percent: water, protein, fat, carbohydrate, fibre, ash, alcohol. */
export type CompositionPercents = readonly [number, number, number, number, number, number, number]

/** In percent: starch, sugars, salt, collagen, suspended solids, acid. */
export type PartPercents = readonly [number, number, number, number, number, number]

/** Unit, form ('' when plain), low and high in grams, source ('' is the record of the row itself). */
export type MeasureRow = readonly [string, string, number, number, string]

export type Row = readonly [
  id: string,
  name: string,
  also: readonly string[],
  character: Character,
  /** 'usda-sr28 11282' */
  source: string,
  composition: CompositionPercents,
  parts: PartPercents,
  /** Net water taken up, kg per kg; edible share; density, kg/m3. */
  absorbs: number,
  edible: number,
  density_kg_per_m3: number,
  /** 'collagen chuck', 'plant carrot', 'plant bean 5' (with its pace), 'lean' or ''. */
  kinetics: string,
  /** 'brick 40' in mm, or ''. */
  piece: string,
  measures: readonly MeasureRow[],
  allergens: readonly string[],
  checkLabel: readonly string[],
  tags: readonly string[],
  basis: Readonly<Record<string, string>>,
]
