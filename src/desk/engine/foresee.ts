import {
  type Computed,
  type Drawn,
  allowanceOfJob,
  cardSteps,
  computeJob,
  drawerOfJob,
  leversOfJob,
  outcomeOfJob,
  rangeOf,
  readJobObject,
  treatJob,
} from '#job'
import type { Foreseen, Tried, Weighed, Written } from './messages.ts'

/** Makings drawn for the card: the chance of coming up short is then known to two in a hundred. */
const MAKINGS = 2000
const AT_A_TIME = 100

interface Long {
  readonly signal?: AbortSignal
  /** How many are done, and of how many. */
  readonly onProgress?: (done: number, of: number) => void
}

/** How the piece is likely to turn out: the makings drawn, and the hardness with the models' own error. */
export function foresee(written: Written, { signal, onProgress }: Long): Foreseen {
  const job = readJobObject(written)
  const draw = job.ok ? drawerOfJob(job.ok) : job
  if (!job.ok || !draw.ok) return { hardness: [], problems: draw.problems ?? [] }
  const parts: Drawn[] = []
  for (let from = 0; from < MAKINGS; from += AT_A_TIME) {
    signal?.throwIfAborted()
    onProgress?.(from, MAKINGS)
    parts.push(draw.ok({ from, count: AT_A_TIME }))
  }
  // As the makings are: from the first cut on, whatever was measured since.
  const route = { ...job.ok.route, measured: [] }
  const computed = computeJob({ ...job.ok, route }, { signal })
  if (!computed.ok) return { hardness: [], problems: computed.problems }
  const { totals } = cardSteps(computed.ok)
  return {
    range: rangeOf(parts),
    planned: {
      mass: totals.finishedMass,
      length: totals.finishedSize.length,
      lines: computed.ok.lines?.perMetre,
      heats: totals.heats,
    },
    hardness: hardnessOf(computed.ok, signal),
    problems: [],
  }
}

/** Each steel of the piece as tempered, all bars it lies in together. */
function hardnessOf(computed: Computed, signal?: AbortSignal): Foreseen['hardness'] {
  const found = new Map<string, Foreseen['hardness'][number]>()
  for (const { steel, tempered } of treatJob(computed, { signal }).steels) {
    if (!tempered) continue
    const { value, range } = tempered
    const known = found.get(steel)
    found.set(steel, {
      steel,
      value: known?.value ?? value,
      low: Math.min(range[0], known?.low ?? Infinity),
      high: Math.max(range[1], known?.high ?? -Infinity),
    })
  }
  return [...found.values()]
}

/** How much longer to cut the stacks; undefined where no length helps. */
export function allow(written: Written, risk: number, { signal }: Long) {
  const job = readJobObject(written)
  return job.ok ? allowanceOfJob(job.ok, risk, signal).ok : undefined
}

/** Every number of the route moved as far as it is likely off. */
export function weighNumbers(written: Written, { signal, onProgress }: Long): Weighed {
  const job = readJobObject(written)
  const levers = job.ok ? leversOfJob(job.ok) : job
  if (!levers.ok) return { numbers: [], problems: levers.problems ?? [] }
  const { now, count, move } = levers.ok
  const numbers = Array.from({ length: count }, (_, i) => {
    signal?.throwIfAborted()
    onProgress?.(i, count)
    return move(i)
  })
  return { now, numbers, problems: [] }
}

/** What two versions of a job come to, as they are planned. */
export function tryOut(written: Written, other: Written): Tried {
  const [before, after] = [written, other].map((one) => {
    const job = readJobObject(one)
    return job.ok ? outcomeOfJob(job.ok) : job
  })
  return {
    before: before.ok,
    after: after.ok,
    problems: after.problems ?? before.problems ?? [],
  }
}
