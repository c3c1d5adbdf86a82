import type { Graph, Node } from '../graph.ts'
import type { Place, Settings, Warp, WarpKind } from '../warp.ts'

/**
 * Slices off the end of a bar, each laid on its side and welded edge to edge (loaf slices, tiles): the section comes to
 * the face. `thickness` p of a slice, `kerf` k, `height` H of the bar, `count` slices; after: length n·H, thickness p.
 * `grind` g off each face that meets another: then n·H − 2(n−1)g long.
 * `faces`: all laid on one cut face, on the other, or by turns (opened like a book: mirrored neighbours).
 * Branch: the slice, from the start of the new bar.
 */
export function slices(given: {
  thickness: number
  kerf?: number
  height: number
  count: number
  grind?: number
  faces?: 'one' | 'other' | 'alternate'
}): Warp {
  const { faces = 'one', kerf = 0, grind = 0, ...sizes } = given
  return { kind: 'slices', form: faces, numbers: { kerf, grind, ...sizes } }
}

/** A slice's x grows downward when it lies on its first face, upward on the other; both are turns about y. */
export function pullSlice(g: Graph, after: Place, at: Settings, other: (i: Node) => Node): Place {
  const [H, p, grind] = [at.number('height'), at.number('thickness'), at.number('grind')]
  const seat = g.sub(H, g.mul(2, grind))
  const seats = g.div(g.sub(after.x, grind), seat)
  const i = g.clamp(g.floor(seats), 0, g.sub(at.number('count'), 1))
  const side = other(i)
  const along = g.sub(g.sub(after.x, g.mul(i, seat)), g.mul(H, 0.5))
  const start = g.add(g.mul(i, g.add(p, at.number('kerf'))), g.mul(p, 0.5))
  return {
    x: g.sub(start, g.mul(after.z, side)),
    y: after.y,
    z: g.mul(along, side),
    branch: i,
  }
}

export function pushSlice(g: Graph, before: Place, at: Settings, other: (i: Node) => Node): Place {
  const [H, p, i] = [at.number('height'), at.number('thickness'), before.branch!]
  const side = other(i)
  const start = g.add(g.mul(i, g.add(p, at.number('kerf'))), g.mul(p, 0.5))
  const seat = g.sub(H, g.mul(2, at.number('grind')))
  return {
    x: g.add(g.mul(before.z, side), g.mul(i, seat), g.mul(H, 0.5)),
    y: before.y,
    z: g.mul(g.sub(start, before.x), side),
  }
}

/** +1 for even pieces, −1 for odd ones. */
export function alternate(g: Graph, i: Node): Node {
  return g.sub(1, g.mul(2, g.sub(i, g.mul(2, g.floor(g.mul(i, 0.5))))))
}

function sideOf(g: Graph, at: Settings) {
  return (i: Node) =>
    at.form === 'alternate' ? alternate(g, i) : g.constant(at.form === 'one' ? 1 : -1)
}

export const slicesKind: WarpKind = {
  name: 'slices',
  branches: true,
  pull: (g, after, at) => pullSlice(g, after, at, sideOf(g, at)),
  push: (g, before, at) => pushSlice(g, before, at, sideOf(g, at)),
  examples: (['one', 'other', 'alternate'] as const).flatMap((faces) =>
    [0, 0.0005].map((grind) => ({
      warp: slices({ thickness: 0.006, kerf: 0.0015, height: 0.025, count: 8, faces, grind }),
      domain: { x: [0, 0.2 - 14 * grind], y: [-0.0125, 0.0125], z: [-0.003, 0.003] } as const,
    })),
  ),
}
