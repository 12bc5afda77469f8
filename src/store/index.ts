// Dishes, drafts and revisions on disk: SQLite in one file by default, PostgreSQL for a team.
export type { DemonstrationDish } from './demonstration.ts'
export type { Dish, DishLine, NewDish, TitleOf } from './dishes.ts'
export type { Draft, DraftOutcome, DraftWrite } from './drafts.ts'
export { StoreError, type StoreErrorCode } from './error.ts'
export { openStore, type Store, type StorePlace } from './open.ts'
export { dataFolder } from './place.ts'
export type { Kept, Revision, RevisionLine } from './revisions.ts'
