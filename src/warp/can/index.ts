import type { Warp, WarpKind } from '../warp.ts'

/**
 * A can of powder and solids pressed tight. Not volume-true, and says so: `fill` is the mean solid fraction of the
 * cavity before (1: solid), the volume before for one after is 1/fill. `both-ways`: width and height shrink alike, by
 * √fill; `one-way`: the height alone.
 */
export function can(given: { fill: number; squeeze?: 'both-ways' | 'one-way' }): Warp {
  return { kind: 'can', form: given.squeeze ?? 'both-ways', numbers: { fill: given.fill } }
}

export const canKind: WarpKind = {
  name: 'can',
  branches: false,
  pull(g, { x, y, z }, at) {
    const fill = at.number('fill')
    if (at.form === 'one-way') return { x, y, z: g.div(z, fill) }
    return { x, y: g.div(y, g.sqrt(fill)), z: g.div(z, g.sqrt(fill)) }
  },
  push(g, { x, y, z }, at) {
    const fill = at.number('fill')
    if (at.form === 'one-way') return { x, y, z: g.mul(z, fill) }
    return { x, y: g.mul(y, g.sqrt(fill)), z: g.mul(z, g.sqrt(fill)) }
  },
  det: (g, _after, at) => g.div(1, at.number('fill')),
  examples: (['both-ways', 'one-way'] as const).map((squeeze) => ({
    warp: can({ fill: 0.62, squeeze }),
    domain: { x: [0, 0.14], y: [-0.02, 0.02], z: [-0.02, 0.02] },
  })),
}
