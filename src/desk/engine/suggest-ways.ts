import { type SuggestOrder, readJobObject, suggestForJob } from '#job'
import type { Ways, Written } from './messages.ts'

/** Ways worth considering, best compromise first; with `pattern`, to another pattern than the job's. */
export function suggestWays(
  written: Written,
  pattern?: string,
  options: Pick<SuggestOrder, 'signal' | 'onProgress'> = {},
): Ways {
  const job = readJobObject(written)
  const found = job.ok ? suggestForJob(job.ok, { pattern, ...options }) : job
  if (!found.ok) return { ways: [], considered: 0, problems: found.problems ?? [] }
  const { routes, considered, take, written: now } = found.ok
  const ways = routes.flatMap((route, i) => {
    const taken = take(i + 1)
    return taken.ok ? [{ ...route, job: taken.ok }] : []
  })
  return { ways, ...(now && { written: { ...now, job: written } }), considered, problems: [] }
}
