// Plan to Run.
export { type Assumed, type AssumptionName, assumptions, type Constants, constantsWith } from './assumptions.ts'
export { type CookOptions, cookPlan } from './cook-plan.ts'
export type * from './run.ts'
