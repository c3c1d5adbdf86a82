import type { Problem } from '#problem'
import type { Written } from './engine/messages.ts'

/** What the server says, as its description has it. */

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
export interface VersionLine {
  readonly number: number
  readonly basedOn: number | null
  readonly aside: boolean
  readonly savedAt: string
  readonly name: string
}

export type Saved =
  | { readonly kind: 'saved'; readonly line: JobLine }
  | { readonly kind: 'conflict'; readonly standing: StoredJob; readonly keptAs: number }
  | { readonly kind: 'gone' }

/** Thrown when the server is not there: the network is gone or it was stopped. */
export class NoServer extends Error {}

/** Thrown when the server refuses, with its reasons. */
export class Refused extends Error {
  readonly problems: readonly Problem[]
  readonly status: number
  constructor(status: number, problems: readonly Problem[]) {
    super(problems[0]?.what ?? `status ${status}`)
    this.status = status
    this.problems = problems
  }
}

/** This window, so that it knows its own announcements. */
export const thisWindow = Math.random().toString(36).slice(2, 12)

async function ask(method: string, path: string, body?: unknown): Promise<Response> {
  try {
    return await fetch(path, {
      method,
      ...(body !== undefined && {
        body: JSON.stringify(body),
        headers: { 'content-type': 'application/json' },
      }),
    })
  } catch {
    throw new NoServer('the server does not answer')
  }
}

async function got<T>(response: Promise<Response>): Promise<T> {
  const answer = await response
  const body: unknown = await answer.json()
  if (answer.ok) return body as T
  throw new Refused(answer.status, (body as { problems?: Problem[] }).problems ?? [])
}

const at = (id: string) => `/api/jobs/${encodeURIComponent(id)}`

export const server = {
  list: () => got<JobLine[]>(ask('GET', '/api/jobs')),
  get: (id: string) => got<StoredJob>(ask('GET', at(id))),
  add: (job: Written) => got<JobLine>(ask('POST', '/api/jobs', { job })),
  remove: (id: string) => got<JobLine>(ask('DELETE', at(id))),
  putBack: (id: string) => got<JobLine>(ask('POST', `${at(id)}/put-back`)),
  versions: (id: string) => got<VersionLine[]>(ask('GET', `${at(id)}/versions`)),
  version: (id: string, number: number) => got<Written>(ask('GET', `${at(id)}/versions/${number}`)),
  restore: (id: string, number: number) =>
    got<StoredJob>(ask('POST', `${at(id)}/restore`, { number })),
  resetSamples: () => got<JobLine[]>(ask('POST', '/api/samples/reset')),
  async save(id: string, version: number, job: Written): Promise<Saved> {
    const answer = await ask('PUT', at(id), { version, job, by: thisWindow })
    const body: unknown = await answer.json()
    if (answer.ok) return { kind: 'saved', line: body as JobLine }
    if (answer.status === 409)
      return { kind: 'conflict', ...(body as { standing: StoredJob; keptAs: number }) }
    if (answer.status === 404) return { kind: 'gone' }
    throw new Refused(answer.status, (body as { problems?: Problem[] }).problems ?? [])
  },
}
