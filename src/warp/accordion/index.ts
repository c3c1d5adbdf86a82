import { alternate, pullSlice, pushSlice } from '../slices/index.ts'
import type { Warp, WarpKind } from '../warp.ts'

/**
 * Zig-zag cut and unfold: cuts across the bar alternately from above and below, opened till flat. Segment i of length
 * `thickness` p turns a quarter about y, up and down by turns: after, length n·H, thickness p, the section over and over,
 * mirrored at each hinge, with no weld across. Hinges themselves are not bent here: metal within about the hinge's own
 * depth of a fold is stretched outside and squeezed inside. Branch: the segment.
 */
export function accordion(given: {
  thickness: number
  kerf?: number
  height: number
  count: number
}): Warp {
  const { kerf = 0, ...sizes } = given
  return { kind: 'accordion', numbers: { kerf, ...sizes } }
}

export const accordionKind: WarpKind = {
  name: 'accordion',
  branches: true,
  pull: (g, after, at) => pullSlice(g, after, at, (i) => alternate(g, i)),
  push: (g, before, at) => pushSlice(g, before, at, (i) => alternate(g, i)),
  examples: [
    {
      warp: accordion({ thickness: 0.0095, kerf: 0.0016, height: 0.025, count: 27 }),
      domain: { x: [0, 0.675], y: [-0.0125, 0.0125], z: [-0.00475, 0.00475] },
    },
  ],
}
