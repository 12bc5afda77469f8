// What is known of ingredients.
export { type Allergen, allergens } from '../../../data/larder/allergens.ts'
export { type FindHint, findFood } from './find.ts'
export type { Character, Composition, Food, HouseholdWeight, Kinetics } from './food.ts'
export { foodById, foods } from './foods.ts'
export { type HouseholdAmount, type HouseholdMass, householdMass_kg } from './household.ts'
export { type Nutrients, nutrientsOf } from './nutrients.ts'
