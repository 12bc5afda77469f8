import { Kysely } from 'kysely'
import { type DemonstrationDish, layDemonstration } from './demonstration.ts'
import {
  changeDish,
  createDish,
  type Dish,
  type DishLine,
  getDish,
  listDishes,
  type NewDish,
  type TitleOf,
} from './dishes.ts'
import { type DraftOutcome, type DraftWrite, saveDraft } from './drafts.ts'
import type { StoreError } from './error.ts'
import { leaveNote } from './holder.ts'
import { migrate } from './migrate.ts'
import { migrations } from './migrations/index.ts'
import { describeUrl, openPostgresql, postgresqlError } from './postgresql.ts'
import { getRevision, type Kept, keepRevision, listRevisions, type Revision, type RevisionLine } from './revisions.ts'
import { openSqlite, sqliteError } from './sqlite.ts'
import type { Tables } from './tables.ts'

/**
 * The dishes of one kitchen. Every moment is passed in by the caller, as ISO 8601 text in UTC. A promise that has
 * resolved means: on disk. Errors of disk and network are `StoreError`s with a sentence.
 */
export interface Store {
  readonly kind: 'sqlite' | 'postgresql'
  /** File or server, fit to be shown: without a password. */
  readonly where: string
  listDishes(p: { putAway: boolean }): Promise<DishLine[]>
  createDish(p: NewDish): Promise<string>
  getDish(id: string): Promise<Dish | null>
  /** Puts away, takes out again, renames; false when there is no such dish. */
  changeDish(p: { dish: string; putAway?: boolean; title?: string | null; now: string }): Promise<boolean>
  saveDraft(p: DraftWrite): Promise<DraftOutcome>
  keepRevision(p: { dish: string; text: string; note?: string | null; now: string }): Promise<Kept | null>
  listRevisions(dish: string): Promise<RevisionLine[]>
  getRevision(dish: string, number: number): Promise<Revision | null>
  layDemonstration(p: { dishes: readonly DemonstrationDish[]; now: string }): Promise<boolean>
  /** Tells a second copy on the same data where this one can be reached. */
  reachableAt(address: string): void
  close(): Promise<void>
}

export interface StorePlace {
  /** A folder for the embedded database, or the address of a PostgreSQL database. */
  readonly at: { readonly folder: string } | { readonly url: string }
  readonly titleOf: TitleOf
}

export async function openStore({ at, titleOf }: StorePlace): Promise<Store> {
  const opened = 'folder' in at ? openFolder(at.folder) : openServer(at.url)
  const { db } = opened

  /** Turns what the driver throws into a sentence; faults of our own pass as they are. */
  const guard =
    <A extends unknown[], R>(act: (...given: A) => Promise<R>) =>
    async (...given: A): Promise<R> => {
      try {
        return await act(...given)
      } catch (error) {
        throw opened.sentence(error) ?? error
      }
    }

  try {
    await guard(() => migrate(db, migrations))()
  } catch (error) {
    await db.destroy()
    throw error
  }

  return {
    kind: opened.kind,
    where: opened.where,
    listDishes: guard((p) => listDishes(db, p)),
    createDish: guard((p) => createDish(db, titleOf, p)),
    getDish: guard((id) => getDish(db, id)),
    changeDish: guard((p) => changeDish(db, titleOf, p)),
    saveDraft: guard((p) => saveDraft(db, titleOf, p)),
    keepRevision: guard((p) => keepRevision(db, p)),
    listRevisions: guard((dish) => listRevisions(db, dish)),
    getRevision: guard((dish, number) => getRevision(db, dish, number)),
    layDemonstration: guard((p) => layDemonstration(db, titleOf, p)),
    reachableAt: opened.reachableAt,
    close: () => db.destroy(),
  }
}

interface Opened {
  readonly kind: 'sqlite' | 'postgresql'
  readonly where: string
  readonly db: Kysely<Tables>
  readonly sentence: (error: unknown) => StoreError | null
  readonly reachableAt: (address: string) => void
}

function openFolder(folder: string): Opened {
  const { dialect, file } = openSqlite(folder)
  leaveNote(folder, { pid: process.pid, address: null })
  return {
    kind: 'sqlite',
    where: file,
    db: new Kysely<Tables>({ dialect }),
    sentence: (error) => sqliteError(error, folder),
    reachableAt: (address) => leaveNote(folder, { pid: process.pid, address }),
  }
}

function openServer(url: string): Opened {
  return {
    kind: 'postgresql',
    db: new Kysely<Tables>({ dialect: openPostgresql(url) }),
    where: describeUrl(url)!,
    sentence: (error) => postgresqlError(error, url),
    reachableAt: () => {},
  }
}
