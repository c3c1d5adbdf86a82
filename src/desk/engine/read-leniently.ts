import type { Problem } from '#problem'
import { type Job, readJobObject } from '#job'
import { type Path, barNames, pathOf, valueAt, withValue } from './places.ts'
import type { Written } from './messages.ts'

/** A job read as far as it can be, and all that was wrong with the rest. */
export interface Lenient {
  readonly job?: Job
  readonly problems: readonly Problem[]
  readonly whole: boolean
}

/** How often a part that cannot be read is left out before giving up. */
const MOST_PARTS = 40

/**
 * Reads a job that is being written: parts that cannot be read are left out, a bar from its first
 * bad step on, and their problems kept.
 */
export function readLeniently(written: Written): Lenient {
  const first = readJobObject(written)
  if (first.ok) return { job: first.ok, problems: [], whole: true }
  // A card with no bar yet has a piece all the same: it is drawn, weighed and sized.
  const begun = readJobObject(written, { notBegun: true })
  if (begun.ok) return { job: begun.ok, problems: first.problems, whole: false }
  let now = written
  let problems: readonly Problem[] = first.problems
  for (let tried = 0; tried < MOST_PARTS; tried++) {
    const less = withoutParts(now, problems)
    if (!less) break
    now = less
    const read = readJobObject(now, { notBegun: true })
    if (read.ok) return { job: read.ok, problems: first.problems, whole: false }
    problems = read.problems
  }
  return { problems: first.problems, whole: false }
}

function withoutParts(job: Written, problems: readonly Problem[]): Written | undefined {
  const names = barNames(job)
  let less = job
  for (const { at } of problems) {
    const path = pathOf(at, names)
    if (path[0] === 'bars' && typeof path[2] === 'number') less = cutBar(less, path)
    else if (path[0] === 'finish') {
      const last = barNames(less).at(-1)
      less = withValue(less, ['finish'], last)
    } else if (['piece', 'wishes', 'shop', 'measured', 'steels', 'seed'].includes(String(path[0])))
      less = withValue(less, [path[0]], undefined)
    else if (!['bars', 'name', 'billetwright'].includes(String(path[0])) && path.length > 0)
      less = withValue(less, [path[0]], undefined)
  }
  return less === job ? undefined : less
}

/** The bar up to the step that cannot be read; without any, no bar. */
function cutBar(job: Written, [, name, index]: Path): Written {
  const steps = valueAt(job, ['bars', name])
  if (!Array.isArray(steps) || steps.length <= (index as number)) return job
  const kept = steps.slice(0, index as number)
  return withValue(job, ['bars', name], kept.length > 0 ? kept : undefined)
}
