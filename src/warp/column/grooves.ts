import { closeColumns } from './dies.ts'
import type { Warp } from '../warp.ts'

export type GrooveShape = 'v' | 'round' | 'square'

/** Depth of a groove at a distance from its middle: `width` at the face, `depth` at the middle. */
export function grooveDepth(
  shape: GrooveShape,
  depth: number,
  width: number,
  away: number,
): number {
  const s = Math.abs(away)
  if (s >= width / 2 || depth <= 0) return 0
  if (shape === 'v') return depth * (1 - (2 * s) / width)
  if (shape === 'square') return depth
  // Deeper than half its width: straight walls above a round bottom.
  if (depth >= width / 2) return depth - width / 2 + Math.sqrt((width * width) / 4 - s * s)
  const radius = (width * width) / (8 * depth) + depth / 2
  const cut = Math.sqrt(Math.max(0, radius * radius - s * s)) - (radius - depth)
  return Math.max(0, cut)
}

export interface Grooves {
  readonly pitch: number
  readonly depth: number
  readonly width: number
  readonly shape: GrooveShape
  /** Where the first groove's middle lies. */
  readonly first: number
}

/**
 * Grooves ground across a bar and forged flat (ladder). `top`, `bottom`: the grooves of each face, or none; `height`
 * of the bar before, `flat` after (not above the thinnest web, or that part stays untouched). The rungs are the contour
 * lines of the cut. Spacing after is pitch·(H − ΣA/pitch)/flat; spread across is a drawing of its own, done after.
 */
export function flattenGrooves(given: {
  length: number
  height: number
  flat: number
  top?: Grooves
  bottom?: Grooves
  cells?: number
}): { warp: Warp; length: number } {
  const { length, height, flat, top, bottom } = given
  const finest = Math.min(top?.width ?? length, bottom?.width ?? length)
  const count = Math.min(20_000, Math.max(401, Math.ceil((length / finest) * 160)))
  const at = (i: number) => (length * i) / (count - 1)
  const depth = (g: Grooves | undefined, x: number) =>
    g ? grooveDepth(g.shape, g.depth, g.width, x - nearest(g, x)) : 0
  const { warp, after } = closeColumns({
    axis: 'x',
    before: [0, length],
    from: 0,
    top: Array.from({ length: count }, (_, i) => height / 2 - depth(top, at(i))),
    bottom: Array.from({ length: count }, (_, i) => -height / 2 + depth(bottom, at(i))),
    gap: flat,
    cells: given.cells ?? Math.min(4096, Math.max(256, count >> 1)),
  })
  return { warp, length: after[1] - after[0] }
}

function nearest(g: Grooves, x: number): number {
  return g.first + Math.max(0, Math.round((x - g.first) / g.pitch)) * g.pitch
}
