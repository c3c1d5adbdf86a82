import type { Composition } from '#steel'
import type { PieceSolid } from '#piece'
import type { Densities } from '#billet'
import type { Smithy } from '#operations'
import { scaledShop, workingTimes } from '#heats'
import type { Job } from './job.ts'

/** The smithy a job is done in: its scale as the job asks for it, and how long a heat lasts there. */
export function smithyOf(
  job: Job,
  densities: Densities,
  compositions: Readonly<Record<string, Composition>>,
  piece: PieceSolid | undefined,
): Smithy {
  const shop = scaledShop(job.shop, job.written.shop)
  return { shop, densities, piece, compositions, workingTime: workingTimes(shop) }
}
