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
  it('lean under its wall, ever less below it, as if each wave of it died out by its own length', () => {
    const depths = [1e-4, 1e-3, 2e-3, 3e-3, 4e-3, 5e-3, 6e-3]
    const [first, ...deeper] = sunk(WIDE, FLOOR, RUN, depths).map((places) =>
      Math.max(...places.map(({ along, up }) => Math.abs(along) / up)),
    )
    expect(first).toBeGreaterThan(1)
    // A stroke with upright walls, every wave of which dies out as e^(−kz): the sum over all of them, in closed form.
    // Deep down less is asked: long waves reach further than the strokes by which a mark's reach is told. By one reach
    // for walls and all it was 0.94 at 1 mm and 0.23 at 4 mm, where the sum is 0.36 and 0.07.
    deeper.forEach((steepest, i) => {
      const z = depths[i + 1]!
      const waves = (FLOOR / Math.PI) * (1 / z - z / (z ** 2 + WIDE ** 2))
      expect(steepest / waves, `${z}`).toBeGreaterThan(z > 4e-3 ? 0.7 : 0.9)
      expect(steepest / waves, `${z}`).toBeLessThan(1.1)
    })
  })

  it.each([
    ['broad', WIDE, FLOOR, RUN],
    ['fine', 1e-3, 3e-4, 2e-4],
    ['as deep as wide', 1e-3, 1e-3, 2e-4],
  ])('lie one over the other at every depth: a mark that is %s', (_, wide, floor, run) => {
    const depths = Array.from({ length: 40 }, (_, i) => i * 5e-5)
    const thinnest = Math.min(...sunk(wide, floor, run, depths).flatMap((p) => p.map((s) => s.up)))
    // Beside the wall, where they are drawn out most: to no more than three times their thickness, on the whole way down.
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
