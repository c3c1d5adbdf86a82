import type { Warp, WarpKind } from '../warp.ts'

/**
 * The frame moved: a crop at the start of the bar, metal lost unequally from two faces, a piece picked out of a wider
 * one. The offset (m) is where the new origin lies in the old frame: before = after + offset.
 */
export function shift(offset: { x?: number; y?: number; z?: number }): Warp {
  return { kind: 'shift', numbers: { x: 0, y: 0, z: 0, ...offset } }
}

export const shiftKind: WarpKind = {
  name: 'shift',
  branches: false,
  pull: (g, { x, y, z }, at) => ({
    x: g.add(x, at.number('x')),
    y: g.add(y, at.number('y')),
    z: g.add(z, at.number('z')),
  }),
  push: (g, { x, y, z }, at) => ({
    x: g.sub(x, at.number('x')),
    y: g.sub(y, at.number('y')),
    z: g.sub(z, at.number('z')),
  }),
  examples: [
    {
      warp: shift({ x: 0.012, z: -0.0004 }),
      domain: { x: [0, 0.2], y: [-0.02, 0.02], z: [-0.01, 0.01] },
    },
  ],
}
