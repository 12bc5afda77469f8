import { randomBytes } from 'node:crypto'
import type { Kysely, Transaction } from 'kysely'
import { storable } from './storable.ts'
import type { Tables } from './tables.ts'

export interface DishLine {
  readonly id: string
  readonly title: string
  readonly updatedAt: string
  /** Number of the latest kept revision. */
  readonly revision: number | null
  readonly demonstration: boolean
  readonly putAway: boolean
}

export interface Dish {
  readonly id: string
  readonly title: string
  readonly titleGiven: boolean
  readonly text: string
  readonly version: number
  readonly savedAt: string
  readonly pot: string | null
  readonly altitude_m: number | null
  /** The latest kept revision. */
  readonly revision: { readonly number: number; readonly savedAt: string } | null
  readonly demonstration: boolean
  readonly putAway: boolean
  readonly createdAt: string
  readonly updatedAt: string
}

export interface NewDish {
  /** Chosen by the store when it is not given. */
  readonly id?: string
  readonly text: string
  /** Given by hand; without it the title follows the manuscript. */
  readonly title?: string
  readonly pot?: string | null
  readonly altitude_m?: number | null
  readonly demonstration?: boolean
  readonly writer: string
  readonly now: string
}

/** The title a manuscript gives itself. */
export type TitleOf = (text: string) => string

/** Sixty bits in letters that cannot be misread for one another. */
function freshId(): string {
  const letters = 'abcdefghjkmnpqrstuvwxyz023456789'
  return Array.from(randomBytes(12), (byte) => letters[byte % 32]).join('')
}

const latestKept = (db: Kysely<Tables>) =>
  db
    .selectFrom('revision')
    .select((eb) => ['dish', eb.fn.max('number').as('number')])
    .where('kind', '=', 'kept')
    .groupBy('dish')
    .as('latest')

/** Latest change first. */
export async function listDishes(db: Kysely<Tables>, p: { putAway: boolean }): Promise<DishLine[]> {
  const rows = await db
    .selectFrom('dish')
    .leftJoin(latestKept(db), 'latest.dish', 'dish.id')
    .select(['dish.id', 'title', 'updated_at', 'demonstration', 'put_away', 'latest.number'])
    .where('put_away', '=', p.putAway ? 1 : 0)
    .orderBy('updated_at', 'desc')
    .orderBy('dish.id')
    .execute()
  return rows.map((row) => ({
    id: row.id,
    title: row.title,
    updatedAt: row.updated_at,
    revision: row.number,
    demonstration: row.demonstration === 1,
    putAway: row.put_away === 1,
  }))
}

export async function getDish(db: Kysely<Tables>, id: string): Promise<Dish | null> {
  const row = await db
    .selectFrom('dish')
    .innerJoin('draft', 'draft.dish', 'dish.id')
    .leftJoin(latestKept(db), 'latest.dish', 'dish.id')
    .leftJoin('revision', (join) =>
      join.onRef('revision.dish', '=', 'dish.id').onRef('revision.number', '=', 'latest.number'),
    )
    .selectAll('dish')
    .select(['draft.text', 'version', 'draft.saved_at', 'pot', 'altitude_m'])
    .select(['revision.number as revision_number', 'revision.saved_at as revision_saved_at'])
    .where('dish.id', '=', id)
    .executeTakeFirst()
  if (row === undefined) return null
  return {
    id: row.id,
    title: row.title,
    titleGiven: row.title_given === 1,
    text: row.text,
    version: row.version,
    savedAt: row.saved_at,
    pot: row.pot,
    altitude_m: row.altitude_m,
    revision: row.revision_number === null ? null : { number: row.revision_number, savedAt: row.revision_saved_at! },
    demonstration: row.demonstration === 1,
    putAway: row.put_away === 1,
    createdAt: row.created_at,
    updatedAt: row.updated_at,
  }
}

/** Answers with the id. */
export async function createDish(db: Kysely<Tables>, titleOf: TitleOf, p: NewDish): Promise<string> {
  return db.transaction().execute((tx) => insertDish(tx, titleOf, p))
}

/** @internal Shared with the demonstration, which writes several dishes at once. */
export async function insertDish(tx: Transaction<Tables>, titleOf: TitleOf, p: NewDish): Promise<string> {
  const id = p.id ?? freshId()
  const text = storable(p.text)
  await tx
    .insertInto('dish')
    .values({
      id,
      title: storable(p.title ?? titleOf(text)),
      title_given: p.title === undefined ? 0 : 1,
      demonstration: p.demonstration ? 1 : 0,
      put_away: 0,
      created_at: p.now,
      updated_at: p.now,
    })
    .execute()
  await tx
    .insertInto('draft')
    .values({
      dish: id,
      text,
      pot: p.pot == null ? null : storable(p.pot),
      altitude_m: p.altitude_m ?? null,
      version: 1,
      saved_at: p.now,
      writer: storable(p.writer),
    })
    .execute()
  return id
}

/** False when there is no such dish. Title null = follow the manuscript again. */
export async function changeDish(
  db: Kysely<Tables>,
  titleOf: TitleOf,
  p: { dish: string; putAway?: boolean; title?: string | null; now: string },
): Promise<boolean> {
  return db.transaction().execute(async (tx) => {
    if (!(await holdDish(tx, p.dish))) return false
    const change: Partial<Tables['dish']> = { updated_at: p.now }
    if (p.putAway !== undefined) change.put_away = p.putAway ? 1 : 0
    if (typeof p.title === 'string') {
      change.title = storable(p.title)
      change.title_given = 1
    } else if (p.title === null) {
      const { text } = await tx.selectFrom('draft').select('text').where('dish', '=', p.dish).executeTakeFirstOrThrow()
      change.title = titleOf(text)
      change.title_given = 0
    }
    await tx.updateTable('dish').set(change).where('id', '=', p.dish).execute()
    return true
  })
}

/**
 * Takes the dish for this transaction, so that writers of one dish come one after another; false when there is none.
 *
 * A write that changes nothing: it locks the row in PostgreSQL and the file in SQLite, in the same words.
 *
 * @internal
 */
export async function holdDish(tx: Transaction<Tables>, dish: string): Promise<boolean> {
  const held = await tx
    .updateTable('dish')
    .set((eb) => ({ put_away: eb.ref('put_away') }))
    .where('id', '=', dish)
    .executeTakeFirst()
  return held.numUpdatedRows > 0n
}
