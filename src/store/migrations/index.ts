// One file a step, in order, never changed once released: a database somewhere has already taken it.
import type { Migration } from 'kysely'
import { dishes } from './001-dishes.ts'

export const migrations: Record<string, Migration> = {
  '001-dishes': dishes,
}
