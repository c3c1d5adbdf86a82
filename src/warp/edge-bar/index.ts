import type { Graph, Node } from '../graph.ts'
import type { Place, Settings, Warp, WarpKind } from '../warp.ts'

/**
 * An edge bar round a core. `butted`: separate bars along both edges, the core |y| < half + slope·x. `wrapped`: one bar up
 * one edge, round a nose of radius `half` whose centre lies at x = `straight`, and back down the other; round the nose
 * the area is kept exactly, z of the bend: (r² − ρ²)/2ρ, so the bar is thinned outside and thickened inside. `width` is
 * the edge bar's. Branch: 0 the core; butted 1 (+y), 2 (−y); wrapped 1. The edge bar's y runs outward from its middle.
 */
export function edgeBar(
  given:
    | { form: 'butted'; half: number; width: number; slope?: number }
    | { form: 'wrapped'; half: number; width: number; straight: number },
): Warp {
  const { form, ...sizes } = given
  return { kind: 'edge-bar', form, numbers: { slope: 0, straight: 0, ...sizes } }
}

/** Length of edge bar a wrapped core takes up: both sides and round the nose, at the join. */
export function edgeBarLength(given: { half: number; straight: number }): number {
  return 2 * given.straight + Math.PI * given.half
}

function pullWrapped(g: Graph, { x, y, z }: Place, at: Settings): Place {
  const [half, straight] = [at.number('half'), at.number('straight')]
  const past = g.sub(x, straight)
  const square = g.add(g.mul(past, past), g.mul(y, y))
  const outNose = g.div(g.sub(square, g.mul(half, half)), g.mul(half, 2))
  const side = g.less(y, 0, g.constant(-1), g.constant(1))
  const nose = (a: Node, b: Node) => g.less(0, past, a, b)
  // From the +y axis round to −y: quarter less the angle from the x axis.
  const round = g.mul(g.sub(0.25, g.turn(y, past)), g.mul(half, 2 * Math.PI))
  const whole = g.add(g.mul(straight, 2), g.mul(half, Math.PI))
  const along = nose(g.add(straight, round), g.less(y, 0, g.sub(whole, x), x))
  const out = nose(outNose, g.sub(g.mul(y, side), half))
  const core = (a: Node, b: Node) => g.less(out, 0, a, b)
  return {
    x: core(x, along),
    y: core(y, g.sub(out, g.mul(at.number('width'), 0.5))),
    z,
    branch: core(g.constant(0), g.constant(1)),
  }
}

export const edgeBarKind: WarpKind = {
  name: 'edge-bar',
  branches: true,
  pull(g, after, at) {
    if (at.form === 'wrapped') return pullWrapped(g, after, at)
    const { x, y, z } = after
    const seam = g.add(at.number('half'), g.mul(x, at.number('slope')))
    const out = g.sub(g.sub(g.abs(y), seam), g.mul(at.number('width'), 0.5))
    const core = (a: Node, b: Node) => g.less(g.abs(y), seam, a, b)
    const lower = (a: Node, b: Node) => g.less(y, 0, a, b)
    // The bar on −y is the same bar turned over: its y and z are both reversed, so that it is not mirrored.
    return {
      x,
      y: core(y, out),
      z: core(z, lower(g.negate(z), z)),
      branch: core(g.constant(0), lower(g.constant(2), g.constant(1))),
    }
  },
  push(g, before, at) {
    const { x, y, z } = before
    const branch = before.branch!
    const n = at.number
    const core = (a: Node, b: Node) => g.less(branch, 0.5, a, b)
    if (at.form === 'butted') {
      const away = g.add(y, g.mul(n('width'), 0.5), g.add(n('half'), g.mul(x, n('slope'))))
      const lower = (a: Node, b: Node) => g.less(1.5, branch, a, b)
      return {
        x,
        y: core(y, lower(g.negate(away), away)),
        z: core(z, lower(g.negate(z), z)),
      }
    }
    const [half, straight] = [n('half'), n('straight')]
    const out = g.add(y, g.mul(n('width'), 0.5))
    const round = g.sub(x, straight)
    const nose = g.mul(half, Math.PI)
    const on = (up: Node, point: Node, down: Node) =>
      g.less(round, 0, up, g.less(nose, round, down, point))
    const r = g.sqrt(g.max(g.add(g.mul(half, half), g.mul(out, g.mul(half, 2))), 0))
    const turns = g.sub(0.25, g.div(round, g.mul(half, 2 * Math.PI)))
    const away = g.add(out, half)
    const back = g.sub(g.add(g.mul(straight, 2), nose), x)
    return {
      x: core(x, on(x, g.add(straight, g.mul(r, g.cos(turns))), back)),
      y: core(y, on(away, g.mul(r, g.sin(turns)), g.negate(away))),
      z,
    }
  },
  examples: [
    {
      warp: edgeBar({ form: 'butted', half: 0.012, width: 0.006, slope: -0.01 }),
      domain: { x: [0, 0.4], y: [-0.018, 0.018], z: [-0.003, 0.003] },
    },
    {
      warp: edgeBar({ form: 'wrapped', half: 0.012, width: 0.005, straight: 0.3 }),
      domain: { x: [0.2, 0.315], y: [-0.016, 0.016], z: [-0.003, 0.003] },
    },
  ],
}
