import { type Problem, type Result, failed, ok } from '#problem'
import { type Outcome, outcomeOf, planRoute } from '#planner'
import type { Job } from '../job.ts'
import { readJobObject } from '../read-job.ts'
import { smithyFor } from './smithy-for.ts'

/** What moves when one number of a job is changed. */
export interface WhatIf {
  readonly before: Outcome
  readonly after: Outcome
}

/**
 * Changes one thing in a job file, named by its place (`bars.plate[4].height`, `shop.crop`), to what
 * a person would write there, and plans both.
 */
export function whatIfOfJob(job: Job, place: string, written: unknown): Result<WhatIf> {
  const changed = withWritten(job.written, place, written)
  if (changed.problems) return changed
  const other = readJobObject(changed.ok)
  if (other.problems) return other
  const [before, after] = [outcomeOfJob(job), outcomeOfJob(other.ok)]
  if (before.problems) return before
  if (after.problems) return after
  return ok({ before: before.ok, after: after.ok })
}

/** What a job comes to as it is planned, whatever was measured since. */
export function outcomeOfJob(job: Job): Result<Outcome> {
  const smithy = smithyFor(job)
  if (smithy.problems) return smithy
  const plan = planRoute({ ...job.route, measured: [] }, smithy.ok)
  return plan.problems ? plan : ok(outcomeOf(plan.ok, smithy.ok, job.rates))
}

type Written = Readonly<Record<string, unknown>>

/** A copy of what was written with one value another; the parts on the way must be there, or be groups. */
function withWritten(whole: Written, place: string, value: unknown): Result<Written> {
  const names = place.split(/[.[\]]+/).filter((name) => name !== '')
  const copy = structuredClone(whole) as Record<string, unknown>
  let at = copy
  for (const name of names.slice(0, -1)) {
    if (at[name] === undefined && !Array.isArray(at)) at[name] = {}
    const next = at[name]
    if (typeof next !== 'object' || next === null) return failed(noSuchPlace(place))
    at = next as Record<string, unknown>
  }
  const last = names.at(-1)
  if (last === undefined || last === '__proto__' || names.includes('__proto__'))
    return failed(noSuchPlace(place))
  at[last] = value
  return ok(copy)
}

function noSuchPlace(place: string): Problem {
  return {
    at: place.slice(0, 60),
    what: 'there is no such place in the job',
    why: 'a place is named as problems name it: steps counted from 0',
    try: ['bars.plate[4].height', 'shop.crop', 'piece.thickness'],
  }
}
