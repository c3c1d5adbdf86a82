/** The blade from the side; s runs from shoulder to point, y from edge to spine, zero on the heel's middle line. */
export interface BladeProfile {
  readonly length: number
  readonly breaks: readonly number[]
  edge(s: number): number
  spine(s: number): number
  /** The spine as if it ran on straight: what fullers are set out from. */
  line(s: number): number
}

export type PointForm =
  | 'straight-back'
  | 'drop'
  | 'clip'
  | 'concave-clip'
  | 'spear'
  | 'sheepfoot'
  | 'wharncliffe'
  | 'trailing'

export interface ProfileSizes {
  readonly length: number
  readonly width: number
  readonly widthAtPoint: number
  readonly ricassoLength: number
  readonly ricassoWidth: number
  readonly point: PointForm
  readonly pointLength: number
  readonly clipLength: number
  readonly tipDrop: number
  /** Depth of the blade's curve: how far its middle stands below the chord, edge outwards. */
  readonly curve: number
}

/** How far the point lies below the line of the spine, as a share of the width there. Common practice, no source. */
const usualDrop: Readonly<Record<PointForm, number>> = {
  'straight-back': 0,
  drop: 0.35,
  clip: 0.5,
  'concave-clip': 0.5,
  spear: 0.5,
  sheepfoot: 1,
  wharncliffe: 1,
  trailing: 0.15,
}

export function usualTipDrop(point: PointForm, widthAtPoint: number): number {
  return usualDrop[point] * widthAtPoint
}

/** Share of its length to which a hollow clip bends below the straight one (a parabola). */
const HOLLOW_CLIP = 0.5

/**
 * A straight spine, an edge converging on it evenly to where the point begins, then the point:
 * edges rise on a quarter ellipse (spear: a parabola), spines fall on a parabola or line. The
 * curve shifts edge and spine alike along a parabola, so sections keep their area.
 */
export function profileOf(sizes: ProfileSizes): BladeProfile {
  const { length, width, widthAtPoint, pointLength, clipLength, point } = sizes
  const back = width / 2
  const [belly, leaves] = [length - pointLength, length - clipLength]
  const heel = sizes.ricassoLength
  const tip = back - (point === 'trailing' ? -sizes.tipDrop : sizes.tipDrop)
  const taper = belly > 0 ? (width - widthAtPoint) / belly : 0
  const bend = (s: number) => -4 * sizes.curve * (s / length) * (1 - s / length)
  const straightEdge = (s: number) => -back + taper * Math.min(s, belly)
  const edge = (s: number) => {
    if (s < heel && sizes.ricassoWidth < width) return back - sizes.ricassoWidth
    const start = straightEdge(s)
    if (s <= belly || point === 'sheepfoot' || point === 'wharncliffe') return start
    const t = Math.min(1, (s - belly) / pointLength)
    if (point === 'spear') return start + (tip - start) * t * t
    return tip - (tip - start) * Math.sqrt(Math.max(0, 1 - t * t))
  }
  const spine = (s: number) => {
    if (s <= leaves) return back
    const t = Math.min(1, (s - leaves) / clipLength)
    switch (point) {
      case 'straight-back':
        return back
      case 'clip':
      case 'wharncliffe':
        return back + (tip - back) * t
      case 'concave-clip':
        return back + (tip - back) * t * (1 + HOLLOW_CLIP * (1 - t))
      case 'sheepfoot':
        return tip + (back - tip) * Math.sqrt(Math.max(0, 1 - t * t))
      default:
        return back + (tip - back) * t * t
    }
  }
  return {
    length,
    breaks: [0, heel, belly, leaves, length],
    edge: (s) => edge(s) + bend(s),
    spine: (s) => spine(s) + bend(s),
    line: (s) => back + bend(s),
  }
}
