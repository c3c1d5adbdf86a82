import type { Kysely } from 'kysely'
import { type Migration, Migrator } from 'kysely/migration'

/** In order of their names; one that has run anywhere is never changed again. */
const migrations: Readonly<Record<string, Migration>> = {
  '0001-jobs-and-versions': {
    async up(db) {
      await db.schema
        .createTable('jobs')
        .addColumn('id', 'text', (c) => c.primaryKey())
        .addColumn('name', 'text', (c) => c.notNull())
        .addColumn('sample', 'text')
        .addColumn('version', 'integer', (c) => c.notNull())
        .addColumn('created_at', 'text', (c) => c.notNull())
        .addColumn('changed_at', 'text', (c) => c.notNull())
        .addColumn('removed_at', 'text')
        .execute()
      await db.schema
        .createTable('versions')
        .addColumn('job_id', 'text', (c) => c.notNull().references('jobs.id').onDelete('cascade'))
        .addColumn('number', 'integer', (c) => c.notNull())
        .addColumn('based_on', 'integer')
        .addColumn('aside', 'integer', (c) => c.notNull().defaultTo(0))
        .addColumn('body', 'text', (c) => c.notNull())
        .addColumn('saved_at', 'text', (c) => c.notNull())
        .addPrimaryKeyConstraint('versions_key', ['job_id', 'number'])
        .execute()
      await db.schema.createIndex('jobs_changed').on('jobs').column('changed_at').execute()
    },
  },
}

/** Brings the tables to today's form. */
export async function migrateToLatest<T>(db: Kysely<T>): Promise<void> {
  const migrator = new Migrator({
    db,
    provider: { getMigrations: () => Promise.resolve({ ...migrations }) },
  })
  const { error } = await migrator.migrateToLatest()
  if (error) throw error instanceof Error ? error : new Error('the database could not be migrated')
}
