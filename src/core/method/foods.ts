import { type Food, findFood, foodById } from '../larder/index.ts'
import type { Ingredient } from '../manuscript/index.ts'

/**
 * What stands in for a food the larder does not know: mostly water with a little of everything, as a vegetable is.
 * Assumed; a plan that uses it carries the finding `food-unknown`.
 */
export function unknownFood(name: string): Food {
  return {
    id: 'unknown',
    name,
    also: [],
    character: 'other',
    composition: { water: 0.85, protein: 0.02, fat: 0.01, carbohydrate: 0.09, fibre: 0.02, ash: 0.01, alcohol: 0 },
    starch: 0,
    sugars: 0.04,
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
    source: 'assumed',
  }
}

/** The larder's entry for a listed ingredient; a stand-in, and false, when there is none. */
export function foodOf(ingredient: Ingredient): { food: Food; known: boolean } {
  const food = (ingredient.larder ? foodById(ingredient.larder) : null) ?? foodNamed(ingredient.item)
  return food ? { food, known: true } : { food: unknownFood(ingredient.item), known: false }
}

/** The larder's entry for words of the method ("red wine"). */
export const foodNamed = (words: string): Food | null => (words.trim() === '' ? null : (findFood(words) ?? null))
