import type { Mesh } from '#geometry'
import { type Treated, routePatterns, treatJob } from '#job'
import { stacksOf } from '#pattern'
import type { Imprint } from '#piece'
import { faceted, pressedCorners, smoothNormals } from '#view'
import { type Facets, boxMesh, cutFacets } from '#scene'
import type { LaidSteel, SteelPlace } from './laid-steel.ts'
import type { Written } from './messages.ts'
import { workedJob } from './worked-job.ts'

/** The steel of a job worked out; undefined where the job does not work out or has no such step. */
export function laySteel(
  job: Written,
  place: SteelPlace | undefined,
  known: string | undefined,
  shape: 'facets' | 'mesh',
): LaidSteel | undefined {
  const kept = workedJob(job)
  const { computed } = kept
  if (!computed) return undefined
  const { steps, partly } = (kept.patterns ??= routePatterns(computed))
  const at = place
    ? steps.findIndex((p) => p.bar === place.bar && p.index === place.index)
    : steps.findLastIndex((p) => p.bar === computed.job.route.finish)
  const found = partly(at, place?.done ?? 1)
  if (!found) return undefined
  const { solid, billet, origin, light, bar, index, done } = found
  const size = solid?.size ?? billet.size
  const low = [0, -size.width / 2, -size.height / 2] as const
  const high = [size.length, size.width / 2, size.height / 2] as const
  const surface = solid
    ? `${JSON.stringify(job.piece)} ${solid.imprint?.told ?? ''}`
    : `box ${JSON.stringify(size)}`
  const facet = size.length / ALONG
  return {
    place: { bar, index, ...(done !== undefined && { done }) },
    surface,
    ...(known !== surface &&
      (shape === 'mesh'
        ? { mesh: solid ? faceted(solid, facet) : boxMesh(low, high) }
        : { facets: facetsOf(solid?.mesh(facet) ?? boxMesh(low, high), solid?.imprint) })),
    low,
    high,
    origin,
    light,
    isPiece: solid !== undefined,
    stacks: stacksOf(origin).map((s) => s.bar),
    steps: steps.map((p) => ({
      bar: p.bar,
      index: p.index,
      after: p.after,
      gradual: p.gradual,
      size: p.solid?.size ?? p.billet.size,
    })),
  }
}

/** Facets on the longest side: fine enough that none is seen from nearby, few enough for any card. */
const ALONG = 220

function facetsOf(
  { positions, triangles }: Pick<Mesh, 'positions' | 'triangles'>,
  imprint: Imprint | undefined,
): Facets {
  const smooth = smoothNormals(positions, triangles, imprint)
  return cutFacets(positions, triangles, smooth, imprint && pressedCorners(positions, imprint))
}

/** What the heats of a job leave; undefined where it does not work out. */
export function layHeats(job: Written): Treated | undefined {
  const known = workedJob(job)
  return known.computed && (known.treated ??= treatJob(known.computed))
}
