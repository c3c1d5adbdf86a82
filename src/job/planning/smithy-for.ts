import { type Result, ok, within } from '#problem'
import type { Smithy } from '#operations'
import { buildPiece, compositionsFor, densitiesFor } from '../compute-job.ts'
import type { Job } from '../job.ts'
import { smithyOf } from '../smithy.ts'

/** Shop, densities and piece of a job, the same the plan is worked out with. */
export function smithyFor(job: Job): Result<Smithy> {
  const built = job.piece && buildPiece(job.piece)
  if (built?.problems) return { problems: within('piece', built.problems) }
  return ok(smithyOf(job, densitiesFor(job.steels), compositionsFor(job.steels), built?.ok))
}
