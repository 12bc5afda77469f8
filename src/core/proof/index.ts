// Rules on text and run.
export { headlineTime, spoken } from './headline-time.ts'
