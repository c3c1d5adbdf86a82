import { randomUUID } from 'node:crypto'
import { join } from 'node:path'
import type { Kysely } from 'kysely'
import { type Problem, type Result, failed, ok } from '#problem'
import { writeJob } from '#job'
import { migrateToLatest } from './migrations.ts'
import { openDatabase } from './sqlite.ts'
import type { Tables } from './tables.ts'

/** A job file's object as it is written. */
export type Written = Readonly<Record<string, unknown>>

/** One line of the list of jobs. */
export interface JobLine {
  readonly id: string
  readonly name: string
  readonly sample: string | null
  readonly version: number
  readonly changedAt: string
}

export interface StoredJob extends JobLine {
  readonly job: Written
}

/** One line of the list of versions of a job. */
export interface VersionLine {
  readonly number: number
  readonly basedOn: number | null
  readonly aside: boolean
  readonly savedAt: string
  readonly name: string
}

/** A saving that came too late: what stands, and the number under which the late one was kept. */
export interface Conflict {
  readonly standing: StoredJob
  readonly keptAs: number
}

export type Saved = { readonly saved: JobLine } | { readonly conflict: Conflict }

/** A sample job: the name it is known by and what is in it. */
export interface Sample {
  readonly id: string
  readonly job: Written
}

const FILE = 'billetwright.sqlite'

/** Opens (or begins) the database in a folder; without one, a database that keeps nothing. */
export async function openStore(folder?: string): Promise<JobStore> {
  const db = openDatabase(folder === undefined ? ':memory:' : join(folder, FILE))
  await migrateToLatest(db)
  return new JobStore(db)
}

const now = () => new Date().toISOString()

function nameOf(job: Written): string {
  return typeof job.name === 'string' && job.name.trim() !== '' ? job.name.slice(0, 200) : '–'
}

/** Jobs and every version of them that was ever saved. Nothing in it is ever thrown away. */
export class JobStore {
  private readonly db: Kysely<Tables>

  constructor(db: Kysely<Tables>) {
    this.db = db
  }

  close(): Promise<void> {
    return this.db.destroy()
  }

  /** Jobs on the list, last changed first; with `removed`, those put away instead. */
  async list(removed = false): Promise<JobLine[]> {
    const rows = await this.db
      .selectFrom('jobs')
      .selectAll()
      .where('removed_at', removed ? 'is not' : 'is', null)
      .orderBy('changed_at', 'desc')
      .orderBy('id')
      .execute()
    return rows.map(lineOf)
  }

  async get(id: string): Promise<Result<StoredJob>> {
    const row = await this.db.selectFrom('jobs').selectAll().where('id', '=', id).executeTakeFirst()
    if (!row) return failed(noSuchJob(id))
    const body = await this.body(this.db, id, row.version)
    return body === undefined ? failed(noSuchJob(id)) : ok({ ...lineOf(row), job: parsed(body) })
  }

  /** A new job; `id` only for samples, which keep theirs. */
  async add(job: Written, from: { id?: string; sample?: string } = {}): Promise<JobLine> {
    const id = from.id ?? randomUUID().replaceAll('-', '').slice(0, 12)
    const at = now()
    const row = {
      id,
      name: nameOf(job),
      sample: from.sample ?? null,
      version: 1,
      created_at: at,
      changed_at: at,
      removed_at: null,
    }
    await this.db.transaction().execute(async (tx) => {
      await tx.insertInto('jobs').values(row).execute()
      await tx
        .insertInto('versions')
        .values({
          job_id: id,
          number: 1,
          based_on: null,
          aside: 0,
          body: writeJob(job),
          saved_at: at,
        })
        .execute()
    })
    return lineOf(row)
  }

  /**
   * Saves a job on top of the version its writer had. If another stands by now, the late one is kept
   * as a version of its own and both are told; nothing is lost and nothing is decided.
   */
  async save(id: string, basedOn: number, job: Written): Promise<Result<Saved>> {
    return this.db.transaction().execute(async (tx) => {
      const row = await tx.selectFrom('jobs').selectAll().where('id', '=', id).executeTakeFirst()
      if (!row) return failed(noSuchJob(id))
      const body = writeJob(job)
      const standing = (await this.body(tx, id, row.version)) ?? '{}'
      // The same words again are no new version.
      if (standing === body) return ok({ saved: lineOf(row) })
      const last = await tx
        .selectFrom('versions')
        .select(({ fn }) => fn.max('number').as('number'))
        .where('job_id', '=', id)
        .executeTakeFirstOrThrow()
      const number = Number(last.number) + 1
      const aside = row.version !== basedOn
      const at = now()
      await tx
        .insertInto('versions')
        .values({
          job_id: id,
          number,
          based_on: basedOn,
          aside: aside ? 1 : 0,
          body,
          saved_at: at,
        })
        .execute()
      if (aside)
        return ok({
          conflict: { standing: { ...lineOf(row), job: parsed(standing) }, keptAs: number },
        })
      const changed = { name: nameOf(job), version: number, changed_at: at, removed_at: null }
      await tx.updateTable('jobs').set(changed).where('id', '=', id).execute()
      return ok({ saved: lineOf({ ...row, ...changed }) })
    })
  }

  async versions(id: string): Promise<Result<VersionLine[]>> {
    const rows = await this.db
      .selectFrom('versions')
      .selectAll()
      .where('job_id', '=', id)
      .orderBy('number', 'desc')
      .execute()
    if (rows.length === 0) return failed(noSuchJob(id))
    return ok(
      rows.map((row) => ({
        number: row.number,
        basedOn: row.based_on,
        aside: row.aside === 1,
        savedAt: row.saved_at,
        name: nameOf(parsed(row.body)),
      })),
    )
  }

  async version(id: string, number: number): Promise<Result<Written>> {
    const body = await this.body(this.db, id, number)
    return body === undefined ? failed(noSuchVersion(id, number)) : ok(parsed(body))
  }

  /** Puts an old version on top again: as a new one, so that this too can be undone. */
  async restore(id: string, number: number): Promise<Result<StoredJob>> {
    const old = await this.version(id, number)
    if (old.problems) return old
    const standing = await this.get(id)
    if (standing.problems) return standing
    const saved = await this.save(id, standing.ok.version, old.ok)
    return saved.problems ? saved : this.get(id)
  }

  /** Takes a job off the list, or with `back` puts it on again. */
  async remove(id: string, back = false): Promise<Result<JobLine>> {
    const row = await this.db
      .updateTable('jobs')
      .set({ removed_at: back ? null : now() })
      .where('id', '=', id)
      .returningAll()
      .executeTakeFirst()
    return row ? ok(lineOf(row)) : failed(noSuchJob(id))
  }

  /** The samples as they came; what was made of them stays among their versions. */
  async resetSamples(samples: readonly Sample[]): Promise<void> {
    for (const { id, job } of samples) {
      const standing = await this.get(id)
      if (standing.problems) {
        await this.add(job, { id, sample: id })
        continue
      }
      await this.remove(id, true)
      await this.save(id, standing.ok.version, job)
    }
  }

  /** Whether nothing was ever kept here. */
  async isEmpty(): Promise<boolean> {
    return !(await this.db.selectFrom('jobs').select('id').limit(1).executeTakeFirst())
  }

  private async body(db: Kysely<Tables>, id: string, number: number): Promise<string | undefined> {
    const row = await db
      .selectFrom('versions')
      .select('body')
      .where('job_id', '=', id)
      .where('number', '=', number)
      .executeTakeFirst()
    return row?.body
  }
}

function lineOf(row: Tables['jobs']): JobLine {
  const { id, name, sample, version, changed_at } = row
  return { id, name, sample, version, changedAt: changed_at }
}

function parsed(body: string): Written {
  return JSON.parse(body) as Written
}

function noSuchJob(id: string): Problem {
  return {
    at: 'id',
    what: `there is no job "${id.slice(0, 60)}"`,
    why: 'no job was ever kept under this id',
    try: ['open the list of jobs'],
  }
}

function noSuchVersion(id: string, number: number): Problem {
  return {
    at: 'number',
    what: `the job has no version ${number}`,
    why: `no such version of "${id.slice(0, 60)}" was ever saved`,
    try: ['open the list of versions'],
  }
}
