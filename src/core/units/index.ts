// Exact conversions, kitchen measures, amounts as written.
export { type UnitCode, unitCodes } from './codes.ts'
