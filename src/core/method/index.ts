// Recipe and pot to Plan.

// The plan

export { choosePot, potInWords } from './choose-pot.ts'
export type { BenchPart, Load, Pieces, Plan, PlanOperation } from './plan.ts'
export { type PlanOptions, planRecipe } from './plan-recipe.ts'
export { type MethodCode, methodCodes } from './say.ts'

// The clock

export { type StatedPart, type StatedSum, statedSum } from './stated-sum.ts'
export { type Band, plannedTime_s, type Timeline, timeline } from './timeline.ts'

// Bodies and waters

export { type PiecesAsked, piecesOf } from './pieces.ts'
export { soakedFood, soakedUp_kg_per_kg } from './soaked.ts'

// Norms and other assumptions, each open to correction

export { assumedAmount_kg, assumedSpread, saltToTaste_kg_per_kg } from './assumed-amounts.ts'
export {
  type HandTime,
  type HandTimeId,
  type HandTimes,
  handTime,
  handTimes,
  holdUntilDone,
  lifted,
  potTimes,
  simmerUntilDone,
} from './norms.ts'
export { startTemperatures_K } from './start.ts'
