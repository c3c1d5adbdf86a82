import { curveAt, integrateSlopes } from '../curve.ts'
import type { Graph, Node } from '../graph.ts'
import { rotate } from '../turn/index.ts'
import type { Settings, Warp, WarpKind } from '../warp.ts'

/** Right-hand: φ grows along x; stripes on the upper face then fall to the right. */
export type Hand = 'right' | 'left'

/**
 * The section at x turned by φ(x): y = y'·cos φ + z'·sin φ, z = −y'·sin φ + z'·cos φ. `pitch` (m) is the length of one
 * full turn; `phase` is φ at the start, in turns. Length is taken as unchanged (real bars change by 1–2 %; measure).
 */
export function twist(given: { pitch: number; hand?: Hand; phase?: number }): Warp {
  const turnsPerMetre = (given.hand === 'left' ? -1 : 1) / given.pitch
  return { kind: 'twist', form: 'even', numbers: { turnsPerMetre, phase: given.phase ?? 0 } }
}

export interface TwistZone {
  readonly from: number
  readonly to: number
  /** Turns made within the zone, right-hand positive. */
  readonly turns: number
}

/**
 * Interrupted or uneven twist: each zone makes its own turns, between zones the bar is not turned. Zones may touch.
 * The rate is kept at `cells` + 1 places along the length, so a zone begins and ends within length/cells.
 */
export function twistZones(given: {
  length: number
  zones: readonly TwistZone[]
  phase?: number
  cells?: number
}): Warp {
  const { length, zones, phase = 0, cells = 512 } = given
  const step = length / cells
  // Mean rate over the cell's width about each node, so that the turns of every zone add up exactly.
  const slope = Array.from({ length: cells + 1 }, (_, i) => {
    const [a, b] = [Math.max(0, (i - 0.5) * step), Math.min(length, (i + 0.5) * step)]
    return zones.reduce((sum, zone) => {
      const share = Math.max(0, Math.min(b, zone.to) - Math.max(a, zone.from))
      return sum + ((zone.turns / (zone.to - zone.from)) * share * step) / (b - a)
    }, 0)
  })
  const turns = integrateSlopes(phase, slope)
  return {
    kind: 'twist',
    form: 'zones',
    numbers: { cellsPerMetre: cells / length },
    tables: { turns: turns.value, turnsSlope: turns.slope },
  }
}

function angle(g: Graph, x: Node, at: Settings): Node {
  return at.form === 'zones'
    ? curveAt(g, at, 'turns', g.mul(x, at.number('cellsPerMetre'))).value
    : g.add(g.mul(x, at.number('turnsPerMetre')), at.number('phase'))
}

export const twistKind: WarpKind = {
  name: 'twist',
  branches: false,
  pull: (g, after, at) => rotate(g, after, angle(g, after.x, at)),
  push: (g, before, at) => rotate(g, before, g.negate(angle(g, before.x, at))),
  examples: [
    {
      warp: twist({ pitch: 0.0254, phase: 0.1 }),
      domain: { x: [0, 0.4], y: [-0.006, 0.006], z: [-0.006, 0.006] },
    },
    {
      warp: twist({ pitch: 0.008, hand: 'left' }),
      domain: { x: [0, 1], y: [-0.006, 0.006], z: [-0.006, 0.006] },
    },
    {
      warp: twistZones({
        length: 0.3,
        zones: [
          { from: 0.02, to: 0.1, turns: 3 },
          { from: 0.13, to: 0.21, turns: -3 },
          { from: 0.21, to: 0.28, turns: 2.2 },
        ],
      }),
      domain: { x: [-0.01, 0.31], y: [-0.006, 0.006], z: [-0.006, 0.006] },
    },
  ],
}
