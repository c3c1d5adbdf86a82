import { type Result, ok } from '#problem'
import type { QuantityKind } from '#units'
import {
  type Lever,
  type Outcome,
  leversOf,
  likelyOff,
  outcomeOf,
  planRoute,
  whatIf,
} from '#planner'
import type { Job } from '../job.ts'
import { smithyFor } from './smithy-for.ts'

/** A number of a route moved as far as it is likely off, and what moves with it. */
export interface Leverage extends Lever {
  readonly of: QuantityKind
  /** How far it is moved either way, SI. */
  readonly off: number
  /** `off` is what the job's tolerances say; else they say nothing, and it is a hundredth of the number. */
  readonly isLikely: boolean
  /** With so much less and so much more; left out where the route cannot be done so. */
  readonly less?: Outcome
  readonly more?: Outcome
}

/** The numbers of a job's route, planned once, to be moved one after another. */
export interface Levers {
  readonly now: Outcome
  readonly count: number
  /** Moves one of them, by its number from 0, and plans the route both ways. */
  move(index: number): Leverage
}

/** Moved by this share where the tolerances say nothing. */
const A_HUNDREDTH = 0.01

export function leversOfJob(job: Job): Result<Levers> {
  const smithy = smithyFor(job)
  if (smithy.problems) return smithy
  const route = { ...job.route, measured: [] }
  const plan = planRoute(route, smithy.ok)
  if (plan.problems) return plan
  const now = outcomeOf(plan.ok, smithy.ok, job.rates)
  const levers = leversOf(route)
  const steps = new Map(plan.ok.steps.map((step) => [step.at, step]))
  const start = Object.fromEntries(plan.ok.solved.map((s) => [`${s.at}.${s.name}`, s.value]))
  return ok({
    now,
    count: levers.length,
    move(index) {
      const lever = levers[index]
      const step = steps.get(lever.at)
      const parameter = step?.operation.parameters[lever.name]
      const likely = step && likelyOff(step, lever.name, job.tolerances)
      const off = likely ?? A_HUNDREDTH * Math.abs(lever.value)
      const at = (by: number) =>
        whatIf(route, lever, lever.value + by, smithy.ok, job.rates, { start }).ok
      const [less, more] = [at(-off), at(off)]
      return {
        ...lever,
        of: parameter?.form === 'quantity' ? parameter.of : 'ratio',
        off,
        isLikely: likely !== undefined,
        ...(less && { less }),
        ...(more && { more }),
      }
    },
  })
}
