import type { Graph, Node } from '../graph.ts'
import type { Settings, Warp, WarpKind } from '../warp.ts'

/**
 * Metal dragged along by a wedge cutting towards −x in the plane y = 0 (feather): x = x' + A(|y'|), volume kept exactly.
 * `exponential`: A = drag·e^(−|y'|/reach); `parabolic`: A = drag·(1 − |y'|/reach)² out to the reach. The barbs meet the
 * quill at tan = drag/reach (twice that for the parabola).
 */
export function shear(given: {
  drag: number
  reach: number
  profile?: 'exponential' | 'parabolic'
}): Warp {
  const { drag, reach, profile = 'exponential' } = given
  return { kind: 'shear', form: profile, numbers: { drag, reach } }
}

function dragAt(g: Graph, y: Node, at: Settings): Node {
  const away = g.div(g.abs(y), at.number('reach'))
  if (at.form === 'exponential') return g.mul(g.exp(g.negate(away)), at.number('drag'))
  const left = g.max(g.sub(1, away), 0)
  return g.mul(g.mul(left, left), at.number('drag'))
}

export const shearKind: WarpKind = {
  name: 'shear',
  branches: false,
  pull: (g, { x, y, z }, at) => ({ x: g.add(x, dragAt(g, y, at)), y, z }),
  push: (g, { x, y, z }, at) => ({ x: g.sub(x, dragAt(g, y, at)), y, z }),
  examples: (['exponential', 'parabolic'] as const).flatMap((profile) =>
    [0.01, 0.03].map((drag) => ({
      warp: shear({ drag, reach: drag / 2.5, profile }),
      domain: { x: [0, 0.1], y: [-0.02, 0.02], z: [-0.01, 0.01] },
    })),
  ),
}
