// Prose to Recipe, with spans and queries. Never throws on text.
export type * from './recipe.ts'
export { verbCodes } from './recipe.ts'
