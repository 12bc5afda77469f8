import type { Kysely, Transaction } from 'kysely'
import { holdDish } from './dishes.ts'
import { storable } from './storable.ts'
import type { Tables } from './tables.ts'

export interface RevisionLine {
  readonly number: number
  readonly parent: number | null
  readonly kind: 'kept' | 'automatic'
  readonly note: string | null
  readonly savedAt: string
}

export interface Revision extends RevisionLine {
  readonly text: string
}

export interface Kept {
  readonly number: number
  readonly savedAt: string
  /** False when the latest kept revision had this text already. */
  readonly isNew: boolean
}

/** Null when there is no such dish. */
export async function keepRevision(
  db: Kysely<Tables>,
  p: { dish: string; text: string; note?: string | null; now: string },
): Promise<Kept | null> {
  return db.transaction().execute(async (tx) => {
    if (!(await holdDish(tx, p.dish))) return null
    const text = storable(p.text)
    const latest = await latestKept(tx, p.dish)
    if (latest?.text === text) return { number: latest.number, savedAt: latest.saved_at, isNew: false }
    return insertRevision(tx, {
      dish: p.dish,
      parent: latest?.number ?? null,
      kind: 'kept',
      text,
      note: p.note ? storable(p.note) : null,
      saved_at: p.now,
    })
  })
}

/**
 * Keeps a text that would otherwise be lost; a text the dish has kept before is not kept twice.
 *
 * @internal The caller holds the dish.
 */
export async function keepAutomatically(
  tx: Transaction<Tables>,
  p: { dish: string; text: string; note: string; now: string },
): Promise<Kept> {
  const before = await tx
    .selectFrom('revision')
    .select(['number', 'saved_at'])
    .where('dish', '=', p.dish)
    .where('text', '=', p.text)
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst()
  if (before !== undefined) return { number: before.number, savedAt: before.saved_at, isNew: false }
  const parent = (await latestKept(tx, p.dish))?.number ?? null
  return insertRevision(tx, {
    dish: p.dish,
    parent,
    kind: 'automatic',
    text: p.text,
    note: p.note,
    saved_at: p.now,
  })
}

async function insertRevision(tx: Transaction<Tables>, row: Omit<Tables['revision'], 'number'>): Promise<Kept> {
  const last = await tx
    .selectFrom('revision')
    .select((eb) => eb.fn.max('number').as('number'))
    .where('dish', '=', row.dish)
    .executeTakeFirst()
  const number = (last?.number ?? 0) + 1
  await tx
    .insertInto('revision')
    .values({ ...row, number })
    .execute()
  await tx.updateTable('dish').set({ updated_at: row.saved_at }).where('id', '=', row.dish).execute()
  return { number, savedAt: row.saved_at, isNew: true }
}

function latestKept(tx: Transaction<Tables>, dish: string) {
  return tx
    .selectFrom('revision')
    .select(['number', 'text', 'saved_at'])
    .where('dish', '=', dish)
    .where('kind', '=', 'kept')
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst()
}

/** Latest first; empty when there is no such dish. */
export async function listRevisions(db: Kysely<Tables>, dish: string): Promise<RevisionLine[]> {
  const rows = await db
    .selectFrom('revision')
    .select(['number', 'parent', 'kind', 'note', 'saved_at'])
    .where('dish', '=', dish)
    .orderBy('number', 'desc')
    .execute()
  return rows.map(({ saved_at, ...row }) => ({ ...row, savedAt: saved_at }))
}

export async function getRevision(db: Kysely<Tables>, dish: string, number: number): Promise<Revision | null> {
  const row = await db
    .selectFrom('revision')
    .select(['number', 'parent', 'kind', 'note', 'saved_at', 'text'])
    .where('dish', '=', dish)
    .where('number', '=', number)
    .executeTakeFirst()
  if (row === undefined) return null
  const { saved_at, ...rest } = row
  return { ...rest, savedAt: saved_at }
}
