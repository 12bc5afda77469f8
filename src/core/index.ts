// The library's public face: the verbs as typed functions, and the types they speak in.

// What they speak in
export type * from './cook/index.ts'
// The verbs one by one
// Pots and constants
export {
  type Assumed,
  type AssumptionName,
  assumptions,
  type Constants,
  type CookOptions,
  cookPlan,
} from './cook/index.ts'
export type * from './findings/index.ts'
export { applyCure, byPlace, bySeverityThenPlace } from './findings/index.ts'
export type { Food } from './larder/index.ts'
export type * from './manuscript/index.ts'
export { readRecipe } from './manuscript/index.ts'
// Read, plan and cook in one call
export { cookManuscript, type GlassOptions, type UnderGlass } from './manuscript-under-glass.ts'
export type { Load, Pieces, Plan, PlanOperation } from './method/index.ts'
export { planRecipe } from './method/index.ts'
export { defaultPotId, type PotCard, potById, potCards } from './pots/index.ts'
