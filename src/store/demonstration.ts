import type { Kysely } from 'kysely'
import { insertDish, type TitleOf } from './dishes.ts'
import type { Tables } from './tables.ts'

export interface DemonstrationDish {
  readonly id: string
  readonly text: string
}

/**
 * Lays the demonstration dishes, once in the life of a database: a user who puts them away does not meet them again.
 * Each has a first revision, so that a change shows against something. False when they had been laid before.
 */
export async function layDemonstration(
  db: Kysely<Tables>,
  titleOf: TitleOf,
  p: { dishes: readonly DemonstrationDish[]; now: string },
): Promise<boolean> {
  return db.transaction().execute(async (tx) => {
    const first = await tx
      .insertInto('setting')
      .values({ name: 'demonstration-laid', value: p.now })
      .onConflict((conflict) => conflict.doNothing())
      .executeTakeFirst()
    if (!first.numInsertedOrUpdatedRows) return false
    for (const [index, { id, text }] of p.dishes.entries()) {
      // The newest comes first in the list: a second between them keeps the order they were given in.
      const now = new Date(Date.parse(p.now) - index * 1000).toISOString()
      await insertDish(tx, titleOf, { id, text, demonstration: true, writer: 'underlid', now })
      await tx
        .insertInto('revision')
        .values({ dish: id, number: 1, parent: null, kind: 'kept', text, note: 'As it came.', saved_at: now })
        .execute()
    }
    return true
  })
}
