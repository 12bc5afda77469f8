// What can go wrong with a file, and the sentence for it.
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Kysely, type Migration, sql } from 'kysely'
import Database from 'libsql'
import { afterAll, describe, expect, it } from 'vitest'
import { openStore, StoreError } from '../../src/store/index.ts'
import { migrate } from '../../src/store/migrate.ts'
import { migrations } from '../../src/store/migrations/index.ts'
import { openSqlite } from '../../src/store/sqlite.ts'
import type { Tables } from '../../src/store/tables.ts'
import { firstLine } from '../support/stores.ts'

const folder = mkdtempSync(join(tmpdir(), 'underlid-sqlite-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const fresh = (name: string) => join(folder, name)
const open = (name: string) => openStore({ at: { folder: fresh(name) }, titleOf: firstLine })
const now = '2026-11-25T09:00:00.000Z'

async function refusal(name: string): Promise<StoreError> {
  try {
    await (await open(name)).close()
  } catch (error) {
    if (error instanceof StoreError) return error
    throw error
  }
  throw new Error('was opened')
}

describe('a second copy on the same data', () => {
  it('is refused with the number and address of the first, and let in once that is closed', async () => {
    const first = await open('shared')
    first.reachableAt('http://127.0.0.1:7413')
    const error = await refusal('shared')
    expect(error.code).toBe('in-use')
    expect(error.message).toContain(`process ${process.pid}`)
    expect(error.cure).toContain('http://127.0.0.1:7413')
    await first.createDish({ text: 'Still mine', writer: 'w', now })
    await first.close()
    const second = await open('shared')
    expect(await second.listDishes({ putAway: false })).toHaveLength(1)
    await second.close()
  })

  it('is let in after the first was killed: no lock is left behind', async () => {
    const writer = fileURLToPath(new URL('./writer.ts', import.meta.url))
    const child = spawn(process.execPath, ['--import', 'tsx', writer, fresh('left')], { stdio: 'pipe' })
    await once(child.stdout, 'data')
    expect((await refusal('left')).message).toContain(`process ${child.pid}`)
    const gone = once(child, 'close')
    child.kill('SIGKILL')
    await gone
    await (await open('left')).close()
  }, 60_000)
})

it('is one file that can be copied once it is closed', async () => {
  const store = await open('one')
  const id = await store.createDish({ text: 'Copied', writer: 'w', now })
  await store.close()
  expect(readdirSync(fresh('one'))).toEqual(['underlid.sqlite'])
  mkdirSync(fresh('copy'))
  writeFileSync(join(fresh('copy'), 'underlid.sqlite'), readFileSync(join(fresh('one'), 'underlid.sqlite')))
  const copy = await open('copy')
  expect((await copy.getDish(id))?.text).toBe('Copied')
  await copy.close()
})

it('writes each commit through to the disk', async () => {
  const db = new Kysely<Tables>({ dialect: openSqlite(fresh('synchronous')).dialect })
  const pragma = async (name: string) => {
    const { rows } = await sql<Record<string, unknown>>`pragma ${sql.raw(name)}`.execute(db)
    return Object.values(rows[0]!)[0]
  }
  try {
    expect(await pragma('synchronous')).toBe(2)
    expect(await pragma('journal_mode')).toBe('wal')
    expect(await pragma('foreign_keys')).toBe(1)
  } finally {
    await db.destroy()
  }
})

describe('a file that is no healthy database', () => {
  it('is refused when it is something else', async () => {
    mkdirSync(fresh('other'))
    writeFileSync(join(fresh('other'), 'underlid.sqlite'), 'Dear diary, '.repeat(1000))
    const error = await refusal('other')
    expect(error.code).toBe('damaged')
    expect(error.message).toContain(join(fresh('other'), 'underlid.sqlite'))
    expect(error.cure).toContain('move it')
  })

  it('is refused when pages in the middle are broken', async () => {
    const store = await open('broken')
    for (let i = 0; i < 40; i++) await store.createDish({ text: `Dish ${i} `.repeat(500), writer: 'w', now })
    await store.close()
    const file = join(fresh('broken'), 'underlid.sqlite')
    const bytes = readFileSync(file)
    bytes.fill(0x5a, 3 * 4096, 12 * 4096)
    writeFileSync(file, bytes)
    expect((await refusal('broken')).code).toBe('damaged')
  })

  it('is left as it was', async () => {
    const file = join(fresh('other'), 'underlid.sqlite')
    const before = readFileSync(file)
    await refusal('other')
    expect(readFileSync(file).equals(before)).toBe(true)
  })
})

it('names a folder that cannot be made', async () => {
  writeFileSync(fresh('a-file'), '')
  const error = await refusal('a-file/data')
  expect(error.code).toBe('not-writable')
  expect(error.message).toContain(fresh('a-file/data'))
})

it('refuses a database that a newer version has changed', async () => {
  await (await open('newer')).close()
  const file = new Database(join(fresh('newer'), 'underlid.sqlite'))
  file.prepare('insert into underlid_step values (?, ?)').run(['999-later', now])
  file.close()
  const error = await refusal('newer')
  expect(error.code).toBe('newer')
  expect(error.message).toContain('999-later')
})

it('takes all pending steps or none', async () => {
  await (await open('steps')).close()
  const step: Migration = {
    up: async (db) => {
      await db.schema.createTable('half').addColumn('id', 'text').execute()
      throw new Error('the lights went out')
    },
  }
  const db = new Kysely<Tables>({ dialect: openSqlite(fresh('steps')).dialect })
  await expect(migrate(db, { ...migrations, '002-half': step })).rejects.toThrow('the lights went out')
  expect((await db.introspection.getTables()).map((table) => table.name)).not.toContain('half')
  await db.destroy()
  await (await open('steps')).close()
})
