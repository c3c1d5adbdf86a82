import { type Result, ok, within } from '#problem'
import type { Smithy } from '#operations'
import { buildPiece, compositionsFor, densitiesFor } from '../compute-job.ts'
import type { Job } from '../job.ts'

/** Shop, densities and piece of a job, as the planner wants them. */
export function smithyFor(job: Job): Result<Smithy> {
  const built = job.piece && buildPiece(job.piece)
  if (built?.problems) return { problems: within('piece', built.problems) }
  return ok({
    shop: job.shop,
    densities: densitiesFor(job.steels),
    piece: built?.ok,
    compositions: compositionsFor(job.steels),
  })
}
