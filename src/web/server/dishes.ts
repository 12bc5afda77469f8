import {
  type Dish,
  type DishLine,
  dish,
  dishList,
  draftConflict,
  draftSaved,
  paths,
  type Revision,
  type RevisionKept,
  type RevisionLine,
  revision,
  revisionKept,
  revisionList,
} from '../../contract/index.ts'
import { ask, Refused } from './ask.ts'

export type { Dish, DishLine, Revision, RevisionKept, RevisionLine }

/** What stands on the sheet and where it is cooked; null = the words decide, or nobody said. */
export interface Draft {
  readonly text: string
  readonly pot: string | null
  readonly altitude_m: number | null
}

export const dishes = async (): Promise<DishLine[]> => (await ask(paths.dishes, dishList)).dishes
export const dishesPutAway = async (): Promise<DishLine[]> => (await ask(paths.putAway, dishList)).dishes

// The sheet ends its lines one way only; a text that came to the server by another road may not.
const oneEnding = <T extends { readonly text: string }>(part: T): T => ({
  ...part,
  text: part.text.replace(/\r\n?/g, '\n'),
})

export const dishOf = async (id: string): Promise<Dish> => oneEnding(await ask(paths.dish(id), dish))

export const startDish = (text: string): Promise<Dish> => ask(paths.dishes, dish, { method: 'POST', body: { text } })

export const putAway = (id: string, away: boolean): Promise<Dish> =>
  ask(paths.dish(id), dish, { method: 'PATCH', body: { putAway: away } })

export const revisionsOf = async (id: string): Promise<RevisionLine[]> =>
  (await ask(paths.revisions(id), revisionList)).revisions

export const revisionOf = async (id: string, number: number): Promise<Revision> =>
  oneEnding(await ask(paths.revision(id, number), revision))

export const keepRevision = (id: string, text: string, note?: string): Promise<RevisionKept> =>
  ask(paths.revisions(id), revisionKept, { method: 'POST', body: note ? { text, note } : { text } })

export type DraftAnswer =
  | { readonly kind: 'saved'; readonly version: number }
  | { readonly kind: 'conflict'; readonly current: Draft & { readonly version: number; readonly writer: string } }

export async function saveDraft(
  id: string,
  draft: Draft,
  base: { version: number; writer: string; keepalive?: boolean },
): Promise<DraftAnswer> {
  const body = { ...draft, version: base.version, writer: base.writer }
  try {
    const saved = await ask(paths.draft(id), draftSaved, { method: 'PUT', body, keepalive: base.keepalive })
    return { kind: 'saved', version: saved.version }
  } catch (error) {
    if (error instanceof Refused && error.status === 409) {
      const conflict = draftConflict.safeParse(error.body)
      if (conflict.success) return { kind: 'conflict', current: oneEnding(conflict.data.current) }
    }
    throw error
  }
}
