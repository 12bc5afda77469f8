// Messages between page and server, with their checks. The page sends and reads these shapes; the server refuses
// anything else. Types come from the checks, never from a second list.
export {
  type Dish,
  type DishChange,
  type DishLine,
  type DishList,
  dish,
  dishChange,
  dishLine,
  dishList,
  type NewDish,
  newDish,
} from './dish.ts'
export { type DraftConflict, type DraftSaved, type DraftWrite, draftConflict, draftSaved, draftWrite } from './draft.ts'
export { type ErrorBody, type ErrorCode, errorBody, errorCodes, type Refusal } from './error.ts'
export { type Health, health } from './health.ts'
export { altitudeLimits_m, maxBody_bytes, maxTextUnits, maxTitleUnits } from './limits.ts'
export { dishId } from './parts.ts'
export { paths } from './paths.ts'
export {
  type NewRevision,
  newRevision,
  type Revision,
  type RevisionKept,
  type RevisionLine,
  type RevisionList,
  revision,
  revisionKept,
  revisionLine,
  revisionList,
} from './revision.ts'
