import type { Warp, WarpKind } from '../warp.ts'

/**
 * A hole slit and drifted in the plane of the face: about the slit, ρ² = ρ'² − a². No metal is lost; lines flow round
 * the hole. `radius` a, centre `x`, `y`. `closed`: the other way, a hole of that radius squeezed shut, ρ² = ρ'² + a². Branch:
 * 0 metal, −1 the hole (its points come from the slit's middle).
 */
export function drift(given: {
  x: number
  y?: number
  radius: number
  form?: 'opened' | 'closed'
}): Warp {
  const { form = 'opened', ...numbers } = given
  return { kind: 'drift', form, numbers: { y: 0, ...numbers } }
}

export const driftKind: WarpKind = {
  name: 'drift',
  branches: true,
  pull(g, p, at) {
    const [cx, cy, a] = [at.number('x'), at.number('y'), at.number('radius')]
    const [dx, dy] = [g.sub(p.x, cx), g.sub(p.y, cy)]
    const square = g.add(g.mul(dx, dx), g.mul(dy, dy))
    const area = g.mul(a, a)
    const closed = at.form === 'closed'
    const ratio = g.div(area, g.max(square, g.mul(area, closed ? 1e-12 : 0.25)))
    const scale = closed ? g.sqrt(g.add(1, ratio)) : g.sqrt(g.max(g.sub(1, ratio), 0))
    if (closed)
      return {
        x: g.add(g.mul(dx, scale), cx),
        y: g.add(g.mul(dy, scale), cy),
        z: p.z,
        branch: g.constant(0),
      }
    return {
      x: g.add(g.mul(dx, scale), cx),
      y: g.add(g.mul(dy, scale), cy),
      z: p.z,
      branch: g.less(square, area, -1, 0),
    }
  },
  push(g, p, at) {
    const [cx, cy, a] = [at.number('x'), at.number('y'), at.number('radius')]
    const [dx, dy] = [g.sub(p.x, cx), g.sub(p.y, cy)]
    const square = g.max(g.add(g.mul(dx, dx), g.mul(dy, dy)), 1e-20)
    const ratio = g.div(g.mul(a, a), square)
    const scale = at.form === 'closed' ? g.sqrt(g.max(g.sub(1, ratio), 0)) : g.sqrt(g.add(1, ratio))
    return { x: g.add(g.mul(dx, scale), cx), y: g.add(g.mul(dy, scale), cy), z: p.z }
  },
  examples: [
    {
      warp: drift({ x: 0.1, radius: 0.011 }),
      domain: { x: [0.1125, 0.16], y: [-0.03, 0.03], z: [-0.005, 0.005] },
    },
    {
      warp: drift({ x: 0.1, radius: 0.008, form: 'closed' }),
      domain: { x: [0.103, 0.16], y: [-0.03, 0.03], z: [-0.005, 0.005] },
    },
  ],
}
