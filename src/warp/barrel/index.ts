import type { Graph, Node } from '../graph.ts'
import type { Settings, Warp, WarpKind } from '../warp.ts'

/**
 * Pressed in z with faces that stick: the middle spreads more than the faces. f(z') = β[1 + b(1 − 3ζ²)/2], ζ = 2z'/H';
 * y = y'/f, z = λ∫f dz', x = x'/λ. `spread` β is the mean factor across, `bulge` b: 0 none, 0.1 mild, 0.3 strong
 * (below 1), `length` λ, `height` H' after. Standing layers become C's of bow depth 1.5·b·β·y.
 */
export function barrel(given: {
  height: number
  spread: number
  bulge: number
  length?: number
}): Warp {
  return { kind: 'barrel', numbers: { length: 1, ...given } }
}

/** f and its integral at z'; beyond the faces f stays as it is at the face. */
function profile(g: Graph, at: Settings, z: Node) {
  const n = at.number
  const half = g.mul(n('height'), 0.5)
  const inside = g.clamp(z, g.negate(half), half)
  const square = g.mul(inside, inside, g.div(1, g.mul(half, half)))
  const bow = g.mul(n('spread'), n('bulge'), 0.5)
  const level = g.add(n('spread'), bow)
  const f = g.sub(level, g.mul(square, g.mul(3, bow)))
  const whole = g.mul(inside, g.sub(level, g.mul(square, bow)))
  return { f, whole: g.add(whole, g.mul(g.sub(z, inside), f)) }
}

export const barrelKind: WarpKind = {
  name: 'barrel',
  branches: false,
  pull(g, { x, y, z }, at) {
    const { f, whole } = profile(g, at, z)
    return {
      x: g.div(x, at.number('length')),
      y: g.div(y, f),
      z: g.mul(whole, at.number('length')),
    }
  },
  push(g, { x, y, z }, at) {
    const want = g.div(z, at.number('length'))
    const n = at.number
    // Newton from the middle's slope: the integral is concave (b > 0) or convex, so the steps approach from one side.
    let root = g.div(want, g.mul(n('spread'), g.add(1, g.mul(n('bulge'), 0.5))))
    for (let i = 0; i < 12; i++) {
      const { f, whole } = profile(g, at, root)
      root = g.sub(root, g.div(g.sub(whole, want), f))
    }
    return { x: g.mul(x, n('length')), y: g.mul(y, profile(g, at, root).f), z: root }
  },
  examples: [0, 0.1, 0.3, 0.6].map((bulge) => ({
    warp: barrel({ height: 0.02, spread: 1.2, bulge, length: 1.1 }),
    domain: { x: [0, 0.2], y: [-0.015, 0.015], z: [-0.01, 0.01] },
  })),
}
