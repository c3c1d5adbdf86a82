import type { SplineSurface } from '#geometry'
import { type Warp, relief } from '#warp'
import { broadPart, deepestBelow } from './broad-part.ts'

/** Broad is what a Gaussian of this share of the feature leaves: with it slopes come nearest a half-space's, computed. */
const BLUR = 0.08
/** The rest is of waves shorter than the Gaussian: it reaches a quarter of its width, or as far as it must. */
const FINE_REACH = 0.25
/** So many times as far as where layers beside a steep wall might fold over: they are then drawn out to twice, not thrice. */
const FROM_FOLDING = 1.2

interface Parts {
  readonly feature: number
  readonly broad: SplineSurface
  readonly fineReach: number
}

/** Marks parted lately: every look at the bar asks again. */
const known = new WeakMap<SplineSurface, Parts>()

function partsOf(depths: SplineSurface, feature: number): Parts {
  const before = known.get(depths)
  if (before?.feature === feature) return before
  // What the squares of the mark do not show cannot be parted from it.
  const width = Math.max(BLUR * feature, 2 * Math.max(depths.cellX, depths.cellY))
  const broad = broadPart(depths, width)
  // (1 + q)·e^(−q) falls by 1/e at the steepest: over less, layers beside a wall could be dragged down past those below.
  const folding = deepestBelow(depths, broad) / Math.E
  const fineReach = Math.max(FINE_REACH * width, FROM_FOLDING * folding)
  const parts = { feature, broad, fineReach }
  known.set(depths, parts)
  return parts
}

/**
 * A mark pressed into the upper face: `depths` over the face as it lies there, m, their frame beginning `along` the bar.
 * Layers under it sink with it, whole down to its floor, and below that each wave of it dies out by its own length
 * (St Venant): the broad part as e^(−2π z / feature) (a one-sided die, from memory); walls and thin strokes by
 * (1 + kz)·e^(−kz), the way of a wave 2π/k in an incompressible half-space, elastic or viscous, whose face slides freely
 * or not at all (from memory; it is the one solution of the biharmonic equation that is whole and level at the face).
 * `face`: height of the upper face.
 */
export function pressedMark(
  depths: SplineSurface,
  given: { floor: number; feature: number; face: number; along: number },
): Warp {
  const { broad, fineReach } = partsOf(depths, given.feature)
  const placed = ({ values, x, ...grid }: SplineSurface) => ({
    ...{ ...grid, x: x + given.along },
    depths: new Float64Array(values),
  })
  return relief({
    ...placed(depths),
    ...{ face: given.face - given.floor, reach: given.feature / (2 * Math.PI) },
    broad: { ...placed(broad), fineReach },
  })
}
