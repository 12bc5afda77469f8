import type { Kysely, Migration } from 'kysely'

/** Dishes with their drafts and revisions. */
export const dishes: Migration = {
  async up(db: Kysely<unknown>): Promise<void> {
    await db.schema
      .createTable('dish')
      .addColumn('id', 'text', (column) => column.primaryKey())
      .addColumn('title', 'text', (column) => column.notNull())
      .addColumn('title_given', 'integer', (column) => column.notNull())
      .addColumn('demonstration', 'integer', (column) => column.notNull())
      .addColumn('put_away', 'integer', (column) => column.notNull())
      .addColumn('created_at', 'text', (column) => column.notNull())
      .addColumn('updated_at', 'text', (column) => column.notNull())
      .execute()

    await db.schema
      .createTable('draft')
      .addColumn('dish', 'text', (column) => column.primaryKey().references('dish.id'))
      .addColumn('text', 'text', (column) => column.notNull())
      .addColumn('pot', 'text')
      .addColumn('altitude_m', 'double precision')
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('saved_at', 'text', (column) => column.notNull())
      .addColumn('writer', 'text', (column) => column.notNull())
      .execute()

    await db.schema
      .createTable('revision')
      .addColumn('dish', 'text', (column) => column.notNull().references('dish.id'))
      .addColumn('number', 'integer', (column) => column.notNull())
      .addColumn('parent', 'integer')
      .addColumn('kind', 'text', (column) => column.notNull())
      .addColumn('text', 'text', (column) => column.notNull())
      .addColumn('note', 'text')
      .addColumn('saved_at', 'text', (column) => column.notNull())
      .addPrimaryKeyConstraint('revision_key', ['dish', 'number'])
      .addForeignKeyConstraint('revision_parent', ['dish', 'parent'], 'revision', ['dish', 'number'])
      .execute()

    await db.schema
      .createTable('setting')
      .addColumn('name', 'text', (column) => column.primaryKey())
      .addColumn('value', 'text', (column) => column.notNull())
      .execute()
  },
}
