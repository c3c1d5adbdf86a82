import { type Result, ok } from '#problem'
import type { Smithy } from '#operations'
import {
  type Allowance,
  type DrawOrder,
  type Drawn,
  type LikelyRange,
  type Plan,
  allowanceFor,
  drawPlan,
  planRoute,
  rangeOf,
} from '#planner'
import type { Job } from '../job.ts'
import { smithyFor } from './smithy-for.ts'

export interface RangeOrder {
  readonly draws?: number
  /** Stacks cut longer by this share. */
  readonly longer?: number
  readonly signal?: AbortSignal
}

/** Makings drawn unless said otherwise. */
export const USUAL_DRAWS = 10_000

/** A plan ready to be made over and over. */
function planned(job: Job): Result<{ readonly plan: Plan; readonly smithy: Smithy }> {
  const smithy = smithyFor(job)
  if (smithy.problems) return smithy
  const plan = planRoute({ ...job.route, measured: [] }, smithy.ok)
  return plan.problems ? plan : ok({ plan: plan.ok, smithy: smithy.ok })
}

/** Draws some of the makings of a job: whoever draws which, together they are the same. */
export type Drawer = (order: Omit<DrawOrder, 'seed'>) => Drawn

/** Plans a job once, to be made over and over. */
export function drawerOfJob(job: Job): Result<Drawer> {
  const at = planned(job)
  if (at.problems) return at
  const { plan, smithy } = at.ok
  return ok((order) => drawPlan(plan, smithy, job.tolerances, { ...order, seed: job.seed }))
}

/** How a job is likely to turn out in this shop, in one thread. */
export function rangeOfJob(job: Job, order: RangeOrder = {}): Result<LikelyRange> {
  const draw = drawerOfJob(job)
  if (draw.problems) return draw
  const count = order.draws ?? USUAL_DRAWS
  const parts: Drawn[] = []
  for (let from = 0; from < count; from += 1000) {
    order.signal?.throwIfAborted()
    parts.push(draw.ok({ from, count: Math.min(1000, count - from), longer: order.longer }))
  }
  return ok(rangeOf(parts))
}

/** Draws behind an allowance: its risk is then known to a hundredth or so. */
const ALLOWANCE_DRAWS = 1000

/** How much longer to cut the stacks so that the piece comes up short no oftener than this. */
export function allowanceOfJob(
  job: Job,
  risk: number,
  signal?: AbortSignal,
): Result<Allowance | undefined> {
  const at = planned(job)
  if (at.problems) return at
  const order = { seed: job.seed, count: ALLOWANCE_DRAWS }
  return ok(allowanceFor(risk, at.ok.plan, at.ok.smithy, job.tolerances, order, signal))
}
