// Prose to Recipe, with spans and queries. Never throws on text.

export { readCut } from './cut.ts'
export { readIngredients } from './ingredient.ts'
export { type Cell, type IngredientLine, type Layout, layOut, type Note, type StepText } from './layout.ts'
export { statedTimes_s } from './queries-times.ts'
export { readRecipe } from './read.ts'
export type * from './recipe.ts'
export { verbCodes } from './recipe.ts'
export { measureSystem } from './system.ts'
