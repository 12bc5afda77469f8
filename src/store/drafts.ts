import type { Kysely } from 'kysely'
import { holdDish, type TitleOf } from './dishes.ts'
import { keepAutomatically } from './revisions.ts'
import { storable } from './storable.ts'
import type { Tables } from './tables.ts'

export interface DraftWrite {
  readonly dish: string
  readonly text: string
  readonly pot: string | null
  readonly altitude_m: number | null
  /** The version the writer started from. */
  readonly version: number
  readonly writer: string
  readonly now: string
}

export interface Draft {
  readonly text: string
  readonly pot: string | null
  readonly altitude_m: number | null
  readonly version: number
  readonly savedAt: string
  readonly writer: string
}

export type DraftOutcome =
  | { readonly ok: true; readonly version: number; readonly savedAt: string }
  | { readonly ok: false; readonly code: 'not-found' }
  | {
      readonly ok: false
      readonly code: 'newer-draft'
      /** The draft that stands. */
      readonly current: Draft
      /** Where the text that came too late was put. */
      readonly kept: { readonly number: number; readonly savedAt: string }
    }

/**
 * Saves the draft, unless somebody saved a newer one meanwhile.
 *
 * A write that says what the draft already says is answered as saved, whatever version it names: it is the second try
 * of a writer whose first answer got lost on the way.
 */
export async function saveDraft(db: Kysely<Tables>, titleOf: TitleOf, p: DraftWrite): Promise<DraftOutcome> {
  const text = storable(p.text)
  const pot = p.pot === null ? null : storable(p.pot)
  return db.transaction().execute(async (tx): Promise<DraftOutcome> => {
    if (!(await holdDish(tx, p.dish))) return { ok: false, code: 'not-found' }
    const now = await tx.selectFrom('draft').selectAll().where('dish', '=', p.dish).executeTakeFirstOrThrow()

    if (now.text === text && now.pot === pot && now.altitude_m === p.altitude_m) {
      return { ok: true, version: now.version, savedAt: now.saved_at }
    }

    if (now.version !== p.version) {
      const note = `Came too late: the draft had been saved from another window at ${now.saved_at}.`
      const { number, savedAt } = await keepAutomatically(tx, { dish: p.dish, text, note, now: p.now })
      const { dish: _, saved_at, ...current } = now
      return {
        ok: false,
        code: 'newer-draft',
        current: { ...current, savedAt: saved_at },
        kept: { number, savedAt },
      }
    }

    const version = now.version + 1
    await tx
      .updateTable('draft')
      .set({ text, pot, altitude_m: p.altitude_m, version, saved_at: p.now, writer: storable(p.writer) })
      .where('dish', '=', p.dish)
      .execute()
    await tx.updateTable('dish').set({ updated_at: p.now }).where('id', '=', p.dish).execute()
    if (now.text !== text) {
      await tx
        .updateTable('dish')
        .set({ title: titleOf(text) })
        .where('id', '=', p.dish)
        .where('title_given', '=', 0)
        .execute()
    }
    return { ok: true, version, savedAt: p.now }
  })
}
