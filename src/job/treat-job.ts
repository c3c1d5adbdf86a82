import { type FollowOptions, type Treated, treatPlan } from '#heats'
import { type Computed, compositionsFor } from './compute-job.ts'
import { smithyOf } from './smithy.ts'

/** Follows the metal of a worked-out job through every heat and says what is left. Never throws but when stopped. */
export function treatJob(
  { job, plan, densities, solid }: Computed,
  options: FollowOptions = {},
): Treated {
  const smithy = smithyOf(job, densities, compositionsFor(job.steels), solid)
  return treatPlan(plan, smithy, job.steels, options)
}
