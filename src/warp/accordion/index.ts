import type { Graph, Node } from '../graph.ts'
import { alternate } from '../slices/index.ts'
import type { Settings, Warp, WarpKind } from '../warp.ts'

/**
 * Zig-zag cut and unfold: cuts across the bar alternately from below and above, opened till flat. Segment i of length
 * `thickness` p turns a quarter about y, up and down by turns: the section over and over, mirrored at each hinge, with no
 * weld across. What stood at the root of each cut, `kerf` × `hinge`, lies between two segments as a strip of the same
 * area, p thick; how it is bent there is not in it. After: thickness p, length n·H + (n−1)·kerf·hinge/p. Branch: the
 * segment, n + i for the hinge after segment i.
 */
export function accordion(given: {
  thickness: number
  kerf?: number
  height: number
  count: number
  hinge?: number
}): Warp {
  const { kerf = 0, hinge = 0, ...sizes } = given
  return { kind: 'accordion', numbers: { kerf, hinge, ...sizes } }
}

/** Length of the strip a hinge becomes; the sizes of segment and hinge. */
function lay(g: Graph, at: Settings) {
  const n = at.number
  const [H, p, kerf, hinge] = [n('height'), n('thickness'), n('kerf'), n('hinge')]
  const strip = g.div(g.mul(kerf, hinge), p)
  return { H, p, kerf, hinge, strip, seat: g.add(H, strip), last: g.sub(n('count'), 1) }
}

export const accordionKind: WarpKind = {
  name: 'accordion',
  branches: true,
  pull(g, after, at) {
    const { H, p, kerf, hinge, strip, seat, last } = lay(g, at)
    const i = g.clamp(g.floor(g.div(after.x, seat)), 0, last)
    const side = alternate(g, i)
    const along = g.sub(after.x, g.mul(i, seat))
    const start = g.mul(i, g.add(p, kerf))
    const inHinge = (a: Node, b: Node) => g.less(H, along, g.less(i, last, a, b), b)
    // Even hinges stand at the top, odd ones at the bottom; the cut's side of the strip is the root's.
    const into = g.div(g.sub(along, H), g.max(strip, 1e-30))
    const across = g.add(g.div(after.z, p), g.mul(side, 0.5))
    const root = g.mul(side, g.sub(g.mul(H, 0.5), hinge))
    const hingeZ = g.add(root, g.mul(across, hinge))
    return {
      x: inHinge(
        g.add(start, p, g.mul(into, kerf)),
        g.sub(g.add(start, g.mul(p, 0.5)), g.mul(after.z, side)),
      ),
      y: after.y,
      z: inHinge(hingeZ, g.mul(g.sub(along, g.mul(H, 0.5)), side)),
      branch: inHinge(g.add(i, last, 1), i),
    }
  },
  push(g, before, at) {
    const { H, p, kerf, hinge, strip, seat, last } = lay(g, at)
    const branch = before.branch!
    const inHinge = (a: Node, b: Node) => g.less(last, branch, a, b)
    const i = inHinge(g.sub(branch, g.add(last, 1)), branch)
    const side = alternate(g, i)
    const start = g.mul(i, g.add(p, kerf))
    const into = g.div(g.sub(before.x, g.add(start, p)), g.max(kerf, 1e-30))
    const root = g.mul(side, g.sub(g.mul(H, 0.5), hinge))
    const across = g.div(g.sub(before.z, root), g.max(hinge, 1e-30))
    return {
      x: g.add(
        g.mul(i, seat),
        inHinge(g.add(H, g.mul(into, strip)), g.add(g.mul(before.z, side), g.mul(H, 0.5))),
      ),
      y: before.y,
      z: inHinge(
        g.mul(g.sub(across, g.mul(side, 0.5)), p),
        g.mul(g.sub(g.add(start, g.mul(p, 0.5)), before.x), side),
      ),
    }
  },
  examples: [
    {
      warp: accordion({ thickness: 0.0095, kerf: 0.0016, height: 0.025, count: 27 }),
      domain: { x: [0, 0.675], y: [-0.0125, 0.0125], z: [-0.00475, 0.00475] },
    },
    {
      warp: accordion({ thickness: 0.01, kerf: 0.002, height: 0.025, count: 6, hinge: 0.005 }),
      domain: { x: [0, 0.155], y: [-0.0125, 0.0125], z: [-0.005, 0.005] },
    },
  ],
}
