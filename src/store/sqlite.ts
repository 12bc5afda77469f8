import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { type DialectAdapter, SqliteAdapter, SqliteDialect } from 'kysely'
import Database from 'libsql'
import { codeOf, StoreError } from './error.ts'
import { describeHolder, forgetHolder, type Holder } from './holder.ts'

export const sqliteFile = 'underlid.sqlite'

/** Long enough for a copy that is just closing; a copy that runs on keeps the lock for good. */
const patience_ms = 500

/**
 * Opens the file for this process alone.
 *
 * Alone, because two copies of the application on one file would each show the other's old text. The lock is the
 * database's own exclusive lock, which the system lifts when the process ends, however it ends: a lock file with a
 * process number in it can be left behind and then has to be guessed stale.
 */
export function openSqlite(folder: string): { dialect: SqliteDialect; file: string } {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
  } catch (error) {
    throw notWritable(folder, error)
  }
  const file = join(folder, sqliteFile)
  let database: Database.Database | undefined
  try {
    database = new Database(file)
    // First, or the next line fails at once where another copy is just letting go.
    database.pragma(`busy_timeout = ${patience_ms}`)
    database.pragma('locking_mode = EXCLUSIVE')
    database.pragma('journal_mode = WAL')
    // FULL: an acknowledged save has left for the disk, so that it survives a power cut as well as a killed process.
    database.pragma('synchronous = FULL')
    database.pragma('foreign_keys = ON')
    // Takes the exclusive lock now, not at the first save.
    database.exec('BEGIN IMMEDIATE; COMMIT')
    const verdict = database.prepare('PRAGMA quick_check(1)').all([]) as { quick_check: string }[]
    if (verdict[0]?.quick_check !== 'ok') throw damaged(file, verdict[0]?.quick_check)
  } catch (error) {
    database?.close()
    throw sqliteError(error, folder) ?? error
  }
  return { dialect: new Embedded({ database: closingTidily(database, folder) }), file }
}

/** SQLite takes back a broken-off migration like any other transaction; the stock adapter is too modest. */
class Embedded extends SqliteDialect {
  override createAdapter(): DialectAdapter {
    return new TransactionalAdapter()
  }
}

class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true
  }
}

function closingTidily(database: Database.Database, folder: string) {
  return {
    prepare: (sql: string) => database.prepare(sql),
    close: () => {
      try {
        // Leaving write-ahead mode puts everything into the one file, so that a closed store can be copied as it is.
        database.pragma('journal_mode = DELETE')
        // The binding keeps a closed connection, and with it the lock, until its last statement is collected:
        // give the lock back by hand (the read makes the change take effect).
        database.pragma('locking_mode = NORMAL')
        database.prepare('SELECT count(*) FROM sqlite_master').all([])
      } finally {
        forgetHolder(folder)
        database.close()
      }
    },
  }
}

/** The sentence for an error of the binding; null when the error is of another kind. */
export function sqliteError(error: unknown, folder: string): StoreError | null {
  if (error instanceof StoreError) return error
  const code = codeOf(error)
  const file = join(folder, sqliteFile)
  if (/^SQLITE_(BUSY|LOCKED)/.test(code)) return inUse(folder, describeHolder(folder), error)
  if (/^SQLITE_(CORRUPT|NOTADB)/.test(code)) return damaged(file, (error as Error).message, error)
  if (/^SQLITE_FULL/.test(code)) {
    return new StoreError('full', `The disk that holds ${folder} is full.`, 'Make room on it and save again.', error)
  }
  if (/^SQLITE_(CANTOPEN|READONLY|PERM|AUTH|IOERR)/.test(code)) return notWritable(folder, error)
  return null
}

function inUse(folder: string, holder: Holder | null, cause: unknown): StoreError {
  const who = holder === null ? 'another copy of Underlid' : `another copy of Underlid (process ${holder.pid})`
  return new StoreError(
    'in-use',
    `The data in ${folder} are open in ${who}.`,
    holder?.address
      ? `Use the copy that runs, at ${holder.address}, or stop it first.`
      : 'Stop that copy first, or choose another folder with --data.',
    cause,
  )
}

function damaged(file: string, what: string | undefined, cause?: unknown): StoreError {
  return new StoreError(
    'damaged',
    `The database ${file} is damaged or is not a database of Underlid (${what ?? 'it cannot be read'}).`,
    'Keep it: move it to another place, put your last copy of it here, or start without it and a new one is made.',
    cause,
  )
}

function notWritable(folder: string, cause: unknown): StoreError {
  return new StoreError(
    'not-writable',
    `The folder ${folder} cannot be written (${codeOf(cause) || (cause as Error).message}).`,
    'Make it yours to write, or choose another with --data FOLDER or UNDERLID_DATA.',
    cause,
  )
}
