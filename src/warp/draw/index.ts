import type { Warp, WarpKind } from '../warp.ts'

/**
 * Drawing, spreading, upsetting, welding down, scale of size: after = factor × before along each side, about the start
 * of the bar and its axis (x' = λx, y' = βy, z' = γz). Forging keeps λβγ = 1; the determinant is 1/(λβγ) as given.
 */
export function draw(factors: { length: number; width: number; height: number }): Warp {
  return { kind: 'draw', numbers: { ...factors } }
}

export const drawKind: WarpKind = {
  name: 'draw',
  branches: false,
  pull: (g, { x, y, z }, at) => ({
    x: g.div(x, at.number('length')),
    y: g.div(y, at.number('width')),
    z: g.div(z, at.number('height')),
  }),
  push: (g, { x, y, z }, at) => ({
    x: g.mul(x, at.number('length')),
    y: g.mul(y, at.number('width')),
    z: g.mul(z, at.number('height')),
  }),
  det: (g, _after, at) =>
    g.div(1, g.mul(at.number('length'), at.number('width'), at.number('height'))),
  examples: [
    {
      warp: draw({ length: 2, width: 0.8, height: 0.625 }),
      domain: { x: [0, 0.6], y: [-0.02, 0.02], z: [-0.01, 0.01] },
    },
    {
      warp: draw({ length: 40, width: 0.5, height: 0.05 }),
      domain: { x: [0, 4], y: [-0.02, 0.02], z: [-0.001, 0.001] },
    },
  ],
}
