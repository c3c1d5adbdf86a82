import { mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import { DatabaseSync, type SQLInputValue } from 'node:sqlite'
import { Kysely, SqliteDialect } from 'kysely'
import type { Tables } from './tables.ts'

/**
 * The one place that knows which database this is: Node's own SQLite behind the query builder.
 * `:memory:` keeps nothing.
 */
export function openDatabase(file: string): Kysely<Tables> {
  if (file !== ':memory:') mkdirSync(dirname(file), { recursive: true })
  const raw = new DatabaseSync(file)
  // Another process of ours may be writing: wait for it rather than fail.
  raw.exec(
    'PRAGMA journal_mode = WAL; PRAGMA busy_timeout = 5000; PRAGMA foreign_keys = ON; PRAGMA synchronous = NORMAL',
  )
  const database = {
    close: () => raw.close(),
    prepare(sql: string) {
      const statement = raw.prepare(sql)
      return {
        reader: statement.columns().length > 0,
        all: (parameters: readonly unknown[]) =>
          statement.all(...(parameters as readonly SQLInputValue[])),
        run: (parameters: readonly unknown[]) =>
          statement.run(...(parameters as readonly SQLInputValue[])),
        iterate: (parameters: readonly unknown[]) =>
          statement.iterate(...(parameters as readonly SQLInputValue[])),
      }
    },
  }
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database: database as never }) })
}
