import type { Character, Food } from '../../../src/core/larder/index.ts'

/** A food with nothing special about it, for tests that are about something else. */
export const someFood = (character: Character, more: Partial<Food> = {}): Food => ({
  id: 'some-food',
  name: 'some food',
  also: [],
  character,
  composition: { water: 0.75, protein: 0.1, fat: 0.05, carbohydrate: 0.07, fibre: 0.02, ash: 0.01, alcohol: 0 },
  starch: 0.04,
  sugars: 0.01,
  salt: 0,
  collagen: 0,
  suspended: 0,
  kinetics: null,
  usualPiece: null,
  absorbs: 0,
  density_kg_per_m3: 1000,
  measures: [],
  edible: 1,
  allergens: [],
  checkLabel: [],
  source: 'test',
  ...more,
})
