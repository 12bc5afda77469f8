// Recipe and pot to Plan.
export type { Load, Pieces, Plan, PlanOperation } from './plan.ts'
