import type { Place, Warp, WarpKind } from '../warp.ts'

/**
 * Bent to a radius ρ about a line on the side of negative y (edgewise: a sabre's curve) or negative z (`flat`: a ring
 * from strip), area kept exactly: with (r, θ) about the bend's centre, x = ρθ, y = (r² − ρ²)/2ρ. `middle`: the x that
 * stays where it is. Negative radius: the other way.
 */
export function bend(given: { radius: number; middle?: number; way?: 'edge' | 'flat' }): Warp {
  const { radius, middle = 0, way = 'edge' } = given
  return { kind: 'bend', form: way, numbers: { curvature: 1 / radius, middle } }
}

export const bendKind: WarpKind = {
  name: 'bend',
  branches: false,
  pull(g, p, at) {
    const [k, middle] = [at.number('curvature'), at.number('middle')]
    const along = g.sub(p.x, middle)
    const out = at.form === 'edge' ? p.y : p.z
    const turns = g.turn(g.mul(along, k), g.add(g.mul(out, k), 1))
    const before = g.add(out, g.mul(g.add(g.mul(along, along), g.mul(out, out)), g.mul(k, 0.5)))
    const x = g.add(g.mul(turns, g.div(2 * Math.PI, k)), middle)
    return pick(at.form, p, x, before)
  },
  push(g, p, at) {
    const [k, middle] = [at.number('curvature'), at.number('middle')]
    const turns = g.mul(g.sub(p.x, middle), g.mul(k, 1 / (2 * Math.PI)))
    const out = at.form === 'edge' ? p.y : p.z
    const radius = g.sqrt(g.add(1, g.mul(out, g.mul(k, 2))))
    const x = g.add(g.div(g.mul(radius, g.sin(turns)), k), middle)
    return pick(at.form, p, x, g.div(g.sub(g.mul(radius, g.cos(turns)), 1), k))
  },
  examples: [
    {
      warp: bend({ radius: 0.6, middle: 0.2 }),
      domain: { x: [0, 0.4], y: [-0.02, 0.02], z: [-0.005, 0.005] },
    },
    {
      warp: bend({ radius: -40, middle: 0.35 }),
      domain: { x: [0, 0.7], y: [-0.02, 0.02], z: [-0.005, 0.005] },
    },
    {
      warp: bend({ radius: 0.03, way: 'flat' }),
      domain: { x: [-0.02, 0.02], y: [-0.01, 0.01], z: [-0.006, 0.003] },
    },
  ],
}

function pick(form: string, p: Place, x: Place['x'], out: Place['x']): Place {
  return form === 'edge' ? { x, y: out, z: p.z } : { x, y: p.y, z: out }
}
