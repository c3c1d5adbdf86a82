import { z } from 'zod'
import type { Problem, Result } from '#problem'
import type { JobStore, Sample } from '#store'
import {
  conflict,
  jobLine,
  newJob,
  problems,
  restoring,
  saving,
  storedJob,
  versionLine,
  written,
} from './answers.ts'
import type { Announcements } from './announcements.ts'

/** What an endpoint works with. */
export interface Desk {
  readonly store: JobStore
  readonly samples: readonly Sample[]
  readonly announcements: Announcements
}

export interface Answer {
  readonly status: number
  readonly body: unknown
}

export interface Asked {
  readonly params: Readonly<Record<string, string>>
  readonly query: Readonly<Record<string, string>>
  /** Checked against the endpoint's `body`. */
  readonly body: unknown
}

/** One thing that can be asked of the server. */
export interface Endpoint {
  readonly method: 'GET' | 'POST' | 'PUT' | 'DELETE'
  /** Parameters in braces, as OpenAPI writes them. */
  readonly path: string
  readonly summary: string
  readonly query?: Readonly<Record<string, string>>
  readonly body?: z.ZodType
  readonly answers: Readonly<Record<number, z.ZodType>>
  answer(desk: Desk, asked: Asked): Promise<Answer>
}

const id = '{id}'
const notFound = { 404: problems }

function answered<T>(result: Result<T>, status = 200): Answer {
  return result.problems ? refused(404, result.problems) : { status, body: result.ok }
}

function refused(status: number, told: readonly Problem[]): Answer {
  return { status, body: { problems: told } }
}

/** Declares an endpoint; its body arrives as what its schema says. */
function endpoint<B extends z.ZodType = z.ZodType>(
  declared: Omit<Endpoint, 'body' | 'answer'> & {
    readonly body?: B
    answer(desk: Desk, asked: Omit<Asked, 'body'> & { readonly body: z.infer<B> }): Promise<Answer>
  },
): Endpoint {
  return declared as unknown as Endpoint
}

export const endpoints: readonly Endpoint[] = [
  endpoint({
    method: 'GET',
    path: '/api/jobs',
    summary: 'The jobs on the list, last changed first.',
    query: { removed: '1 lists those put away instead' },
    answers: { 200: z.array(jobLine) },
    answer: async ({ store }, { query }) => ({
      status: 200,
      body: await store.list(query.removed === '1'),
    }),
  }),
  endpoint({
    method: 'POST',
    path: '/api/jobs',
    summary: 'Keeps a new job.',
    body: newJob,
    answers: { 201: jobLine, 400: problems },
    answer: async ({ store, announcements }, { body }) => {
      const line = await store.add(body.job)
      announcements.tell({ kind: 'list' })
      return { status: 201, body: line }
    },
  }),
  endpoint({
    method: 'GET',
    path: `/api/jobs/${id}`,
    summary: 'A job as it stands.',
    answers: { 200: storedJob, ...notFound },
    answer: async ({ store }, { params }) => answered(await store.get(params.id)),
  }),
  endpoint({
    method: 'PUT',
    path: `/api/jobs/${id}`,
    summary: 'Saves a job on top of the version its writer had.',
    body: saving,
    answers: { 200: jobLine, 400: problems, 409: conflict, ...notFound },
    answer: async ({ store, announcements }, { params, body }) => {
      const result = await store.save(params.id, body.version, body.job)
      if (result.problems) return refused(404, result.problems)
      if ('conflict' in result.ok) return { status: 409, body: result.ok.conflict }
      const { saved } = result.ok
      announcements.tell({ kind: 'job', id: saved.id, version: saved.version, by: body.by })
      return { status: 200, body: saved }
    },
  }),
  endpoint({
    method: 'DELETE',
    path: `/api/jobs/${id}`,
    summary: 'Takes a job off the list. It can be put back.',
    answers: { 200: jobLine, ...notFound },
    answer: async ({ store, announcements }, { params }) => {
      const result = await store.remove(params.id)
      announcements.tell({ kind: 'list' })
      return answered(result)
    },
  }),
  endpoint({
    method: 'POST',
    path: `/api/jobs/${id}/put-back`,
    summary: 'Puts a job back on the list.',
    answers: { 200: jobLine, ...notFound },
    answer: async ({ store, announcements }, { params }) => {
      const result = await store.remove(params.id, true)
      announcements.tell({ kind: 'list' })
      return answered(result)
    },
  }),
  endpoint({
    method: 'GET',
    path: `/api/jobs/${id}/versions`,
    summary: 'Every version of a job that was ever saved, the last first.',
    answers: { 200: z.array(versionLine), ...notFound },
    answer: async ({ store }, { params }) => answered(await store.versions(params.id)),
  }),
  endpoint({
    method: 'GET',
    path: `/api/jobs/${id}/versions/{number}`,
    summary: 'The job as it was saved under this number.',
    answers: { 200: written, ...notFound },
    answer: async ({ store }, { params }) =>
      answered(await store.version(params.id, Number(params.number))),
  }),
  endpoint({
    method: 'POST',
    path: `/api/jobs/${id}/restore`,
    summary: 'Puts an old version on top again, as a new one.',
    body: restoring,
    answers: { 200: storedJob, 400: problems, ...notFound },
    answer: async ({ store, announcements }, { params, body }) => {
      const result = await store.restore(params.id, body.number)
      if (result.ok) announcements.tell({ kind: 'job', id: params.id, version: result.ok.version })
      return answered(result)
    },
  }),
  endpoint({
    method: 'POST',
    path: '/api/samples/reset',
    summary: 'The sample jobs as they came. What was made of them stays among their versions.',
    answers: { 200: z.array(jobLine) },
    answer: async ({ store, samples, announcements }) => {
      await store.resetSamples(samples)
      const list = await store.list()
      for (const { id, version } of list.filter((line) => line.sample !== null))
        announcements.tell({ kind: 'job', id, version })
      announcements.tell({ kind: 'list' })
      return { status: 200, body: list }
    },
  }),
]
