import type { SplineSurface } from '#geometry'
import { type Warp, relief } from '#warp'

/**
 * A mark pressed into the upper face: `depths` over the face as it lies there, m. Layers under it sink with it, whole
 * down to its floor, and below that by depth · e^(−2π z / feature) (elastic half-space form, from memory). One `feature`
 * for the whole mark: its fine parts reach less deep than drawn, its broad ones deeper. `face`: height of the upper face.
 */
export function pressedMark(
  depths: SplineSurface,
  { floor, feature, face }: { floor: number; feature: number; face: number },
): Warp {
  const { values, ...grid } = depths
  return relief({
    ...grid,
    depths: Float64Array.from(values),
    face: face - floor,
    reach: feature / (2 * Math.PI),
  })
}
