import * as z from 'zod/mini'

/** GET `paths.health`. */
export const health = z.object({
  ok: z.literal(true),
  name: z.literal('underlid'),
  version: z.string(),
  store: z.enum(['sqlite', 'postgresql']),
})
export type Health = z.infer<typeof health>
