import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openStore, type Store } from '../../src/store/index.ts'
import { startPostgres, type TestServer } from './postgres.ts'

/** First line: enough of a title for the store, which is told how to find one. */
export const firstLine = (text: string) => text.trim().split('\n')[0]!

export interface Places {
  /** A place for a new, empty store. */
  fresh(): Promise<Parameters<typeof openStore>[0]['at']>
  /** A new, empty store, closed at the end if the test leaves it open. */
  open(): Promise<Store>
  end(): Promise<void>
}

/** Stores for tests, in temporary folders or on a PostgreSQL server of their own. */
export async function places(kind: 'sqlite' | 'postgresql'): Promise<Places> {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-store-'))
  const server: TestServer | null = kind === 'postgresql' ? await startPostgres() : null
  const opened: Store[] = []
  let count = 0
  const fresh = async () =>
    server === null ? { folder: join(folder, String(++count)) } : { url: await server.newDatabase() }
  return {
    fresh,
    open: async () => {
      const store = await openStore({ at: await fresh(), titleOf: firstLine })
      opened.push(store)
      return store
    },
    end: async () => {
      await Promise.all(opened.map((store) => store.close()))
      await server?.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
