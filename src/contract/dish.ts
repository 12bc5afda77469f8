import * as z from 'zod/mini'
import { altitude_m, dishId, draftVersion, moment, pot, revisionNumber, text, title } from './parts.ts'

export const dishLine = z.object({
  id: dishId,
  title: z.string(),
  /** Last change of draft, title or revisions. */
  updatedAt: moment,
  /** Number of the latest kept revision; null while nothing has been kept. */
  revision: z.nullable(revisionNumber),
  /** One of the dishes that came with the application. */
  demonstration: z.boolean(),
  putAway: z.boolean(),
})
export type DishLine = z.infer<typeof dishLine>

/** GET `paths.dishes`: the dishes on the bench, latest change first. GET `paths.putAway`: those put away. */
export const dishList = z.object({ dishes: z.array(dishLine) })
export type DishList = z.infer<typeof dishList>

/** GET `paths.dish(id)`. */
export const dish = z.object({
  id: dishId,
  title: z.string(),
  /** True when the title was given by hand; false when it follows the manuscript. */
  titleGiven: z.boolean(),
  /** The draft as last saved. */
  text: z.string(),
  /** Send it back with the next save. */
  version: draftVersion,
  savedAt: moment,
  pot,
  altitude_m,
  /** The latest kept revision. */
  revision: z.nullable(z.object({ number: revisionNumber, savedAt: moment })),
  demonstration: z.boolean(),
  putAway: z.boolean(),
})
export type Dish = z.infer<typeof dish>

/** POST `paths.dishes`, answered by 201 and a `Dish`. Without a title the manuscript's own is taken. */
export const newDish = z.strictObject({
  text,
  title: z.optional(title),
  pot: z.optional(pot),
  altitude_m: z.optional(altitude_m),
})
export type NewDish = z.infer<typeof newDish>

/** PATCH `paths.dish(id)`, answered by a `Dish`. Title null = follow the manuscript again. */
export const dishChange = z.strictObject({
  putAway: z.optional(z.boolean()),
  title: z.optional(z.nullable(title)),
})
export type DishChange = z.infer<typeof dishChange>
