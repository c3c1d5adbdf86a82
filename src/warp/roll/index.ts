import type { Warp, WarpKind } from '../warp.ts'

/**
 * A strip rolled up on a core (jelly roll). Before: x along the strip, y across it, z through its `thickness` T. After:
 * the strip's width lies along the bar, the spiral in the section. With Θ the angle wound so far and
 * ρₘ = r₀ + T/2 + TΘ/2π: x = (r₀ + T/2)Θ + TΘ²/4π, z = (ρ² − ρₘ² − T²/4)/2ρₘ. Area is kept exactly and every wrap is
 * exactly T thick; z = ρ − ρₘ in the limit of thin strip. Branch: the wrap, −1 inside the core.
 */
export function roll(given: { core: number; thickness: number; width: number }): Warp {
  return { kind: 'roll', numbers: { ...given } }
}

/** Length of strip that fills a roll of this outer radius: π(R² − r₀²)/T. */
export function rollLength(given: { core: number; thickness: number; outer: number }): number {
  return (Math.PI * (given.outer ** 2 - given.core ** 2)) / given.thickness
}

const TAU = 2 * Math.PI

export const rollKind: WarpKind = {
  name: 'roll',
  branches: true,
  pull(g, after, at) {
    const [core, T] = [at.number('core'), at.number('thickness')]
    const rho2 = g.add(g.mul(after.y, after.y), g.mul(after.z, after.z))
    const part = g.turn(after.z, after.y)
    const turns = g.less(part, 0, g.add(part, 1), part)
    const wrap = g.max(g.floor(g.sub(g.div(g.sub(g.sqrt(rho2), core), T), turns)), -1)
    const wound = g.add(turns, g.max(wrap, 0))
    const first = g.add(core, g.mul(T, 0.5))
    const middle = g.add(g.mul(wound, T), first)
    const square = g.add(g.mul(middle, middle), g.mul(T, T, 0.25))
    return {
      x: g.mul(wound, g.add(g.mul(wound, g.mul(T, 0.5)), first), TAU),
      y: g.sub(after.x, g.mul(at.number('width'), 0.5)),
      z: g.div(g.sub(rho2, square), g.mul(2, middle)),
      branch: wrap,
    }
  },
  push(g, before, at) {
    const [core, T] = [at.number('core'), at.number('thickness')]
    const first = g.add(core, g.mul(T, 0.5))
    const length = g.div(before.x, TAU)
    const root = g.sqrt(g.add(g.mul(length, g.mul(2, T)), g.mul(first, first)))
    const wound = g.div(g.mul(2, length), g.add(root, first))
    const middle = g.add(g.mul(wound, T), first)
    const rho2 = g.add(g.mul(2, middle, before.z), g.add(g.mul(middle, middle), g.mul(T, T, 0.25)))
    const rho = g.sqrt(g.max(rho2, 0))
    return {
      x: g.add(before.y, g.mul(at.number('width'), 0.5)),
      y: g.mul(rho, g.cos(wound)),
      z: g.mul(rho, g.sin(wound)),
    }
  },
  examples: [
    {
      warp: roll({ core: 0.002, thickness: 0.0013, width: 0.1 }),
      domain: { x: [0, 0.1], y: [0.004, 0.012], z: [-0.012, 0.012] },
    },
    {
      warp: roll({ core: 0.003, thickness: 0.003, width: 0.1 }),
      domain: { x: [0, 0.1], y: [-0.03, -0.007], z: [-0.02, 0.02] },
    },
  ],
}
