import { describe, expect, it } from 'vitest'
import { compile, jacobian } from '#warp'
import { pressedMark } from './pressed-mark.ts'

const WIDE = 6.5e-3
const FLOOR = 1.15e-3
const RUN = 7e-4

/** A stroke across the bar with its middle at x = 0: `wide` at half depth, its walls rising over `run`. */
function strokeOf(wide: number, floor: number, run: number) {
  const cell = run / 5
  const columns = 2 * Math.ceil((wide + 4 * run) / 2 / cell)
  const start = (-columns / 2) * cell
  const share = (x: number) => Math.max(0, Math.min(1, 0.5 + (wide / 2 - Math.abs(x)) / run))
  const row = Array.from({ length: columns }, (_, i) => floor * share(start + (i + 0.5) * cell))
  // Twice as long as wide: in its middle it is as one without ends.
  const rows = 2 * columns
  const values = Array.from({ length: rows }, () => row).flat()
  const grid = { x: start + cell, y: 2 * start + cell, cellX: cell, cellY: cell }
  return { ...grid, columns, values }
}

/** The stroke pressed in, and how the heights of places before change at depths below its floor: along the bar and up. */
function sunk(wide: number, floor: number, run: number, depths: readonly number[]) {
  const given = { floor, feature: 2 * wide, face: floor, along: 0 }
  const mark = pressedMark(strokeOf(wide, floor, run), given)
  const across = Array.from({ length: 80 }, (_, i) => (i / 50) * (wide / 2))
  const slopes = jacobian([mark], {
    x: depths.flatMap(() => across),
    y: depths.flatMap(() => across.map(() => 0)),
    z: depths.flatMap((depth) => across.map(() => -depth)),
  }).map((m) => ({ along: m[6]!, up: m[8]! }))
  return depths.map((_, i) => slopes.slice(i * across.length, (i + 1) * across.length))
}

describe('layers under a mark', () => {
  it('lean under its wall, ever less below it, as those of a half-space under a step do', () => {
    const depths = [1e-4, 2e-3, 3e-3, 4e-3, 5e-3, 6e-3]
    const [first, ...deeper] = sunk(WIDE, FLOOR, RUN, depths).map((places) =>
      Math.max(...places.map(({ along, up }) => Math.abs(along) / up)),
    )
    expect(first).toBeGreaterThan(1)
    // Sums over all waves of a stroke with upright walls, in closed form, of which each dies out as e^(−kz), or, in an
    // incompressible half-space, as (1 + kz)·e^(−kz). A plate lying on an anvil holds them up, so that deep down they
    // are less; by one reach for walls and all they came to 0.60 at 2 mm, where the greater one has 0.36.
    deeper.forEach((steepest, i) => {
      const z = depths[i + 1]!
      const r2 = z ** 2 + WIDE ** 2
      const waves = (FLOOR / Math.PI) * (1 / z - z / r2)
      const halfSpace = ((2 * FLOOR) / Math.PI) * (1 / z - z ** 3 / r2 ** 2)
      expect(steepest, `${z}`).toBeGreaterThan(waves / 2)
      expect(steepest, `${z}`).toBeLessThan(halfSpace)
    })
  })

  it.each([
    ['broad', WIDE, FLOOR, RUN],
    ['fine', 1e-3, 3e-4, 2e-4],
    ['as deep as wide', 1e-3, 1e-3, 2e-4],
  ])('lie one over the other at every depth: a mark that is %s', (_, wide, floor, run) => {
    const depths = Array.from({ length: 40 }, (_, i) => i * 5e-5)
    const thinnest = Math.min(...sunk(wide, floor, run, depths).flatMap((p) => p.map((s) => s.up)))
    // Nowhere drawn out to more than three times their thickness (FROM_FOLDING), on the whole way down.
    expect(thinnest).toBeGreaterThan(1 / 3)
    expect(thinnest).toBeLessThan(1)
  })

  it('come to the floor and the walls from the face', () => {
    const depths = strokeOf(1e-3, 1e-3, 2e-4)
    const given = { floor: 1e-3, feature: 2e-3, face: 0.004, along: 0.02 }
    const machine = compile([pressedMark(depths, given)])
    for (const [x, share] of [
      [0, 1],
      [5e-4, 0.5],
      [8e-4, 0],
    ] as const) {
      const points = { x: [0.02 + x], y: [0], z: [0.004 - share * 1e-3] }
      expect(machine.evaluate(points).z[0]).toBeCloseTo(0.004, 9)
    }
  })
})
