import { type Kysely, type Migration, Migrator, sql } from 'kysely'
import { StoreError } from './error.ts'

const table = 'underlid_step'

/** Brings the database up to the last step: all pending steps or none. */
export async function migrate<T>(db: Kysely<T>, migrations: Record<string, Migration>): Promise<void> {
  const unknown = (await taken(db)).find((name) => !Object.hasOwn(migrations, name))
  if (unknown !== undefined) {
    throw new StoreError(
      'newer',
      `This database was last opened by a newer Underlid (it has taken the step "${unknown}", unknown here).`,
      'Start the newer Underlid, or give this one a folder of its own with --data.',
    )
  }
  const migrator = new Migrator({
    db,
    provider: { getMigrations: async () => migrations },
    migrationTableName: table,
    migrationLockTableName: `${table}_lock`,
  })
  const { error } = await migrator.migrateToLatest()
  if (error !== undefined) throw error
}

async function taken<T>(db: Kysely<T>): Promise<string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true })
  if (!tables.some(({ name }) => name === table)) return []
  const { rows } = await sql<{ name: string }>`select name from ${sql.table(table)}`.execute(db)
  return rows.map(({ name }) => name)
}
