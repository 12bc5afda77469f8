// What is known of ingredients.
export type { Character, Composition, Food, HouseholdWeight, Kinetics } from './food.ts'
