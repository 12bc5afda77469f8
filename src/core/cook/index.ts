// Plan to Run.
export type * from './run.ts'
