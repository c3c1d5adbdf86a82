import { compile, type Places, type Points } from './evaluate.ts'
import { determinant, jacobian } from './jacobian.ts'
import { warpKind } from './kinds.ts'
import type { Warp } from './warp.ts'

/**
 * Where metal goes: points before one step, and the branch each belongs to (as a pull gives it), carried forward. Kinds
 * without a closed form are solved by Newton's method on their pull; a point that finds no place comes back as it was
 * nearest.
 */
export function pushPoints(warp: Warp, before: Points, branch?: ArrayLike<number>): Places {
  if (!warpKind(warp.kind).push) return solve(warp, before)
  const machine = compile([warp], { forward: true, engine: 'reference' })
  const total = before.x.length
  const result = {
    x: new Float64Array(total),
    y: new Float64Array(total),
    z: new Float64Array(total),
  }
  for (let start = 0; start < total; start += machine.tile) {
    const count = Math.min(machine.tile, total - start)
    ;[before.x, before.y, before.z, branch].forEach((row, i) => {
      const channel = machine.channel(i)
      for (let k = 0; k < count; k++) channel[k] = row?.[start + k] ?? 0
    })
    machine.run(count)
    ;[result.x, result.y, result.z].forEach((row, i) =>
      row.set(machine.channel(i).subarray(0, count), start),
    )
  }
  return { ...result, rates: [], branches: [], outputs: {} }
}

const MOST_STEPS = 40

function solve(warp: Warp, before: Points): Places {
  const at = {
    x: Float64Array.from(before.x),
    y: Float64Array.from(before.y),
    z: Float64Array.from(before.z),
  }
  const pull = compile([warp], { engine: 'reference' })
  for (let step = 0; step < MOST_STEPS; step++) {
    const here = pull.evaluate(at)
    const slopes = jacobian([warp], at)
    let worst = 0
    for (let i = 0; i < at.x.length; i++) {
      const off = [before.x[i]! - here.x[i]!, before.y[i]! - here.y[i]!, before.z[i]! - here.z[i]!]
      const move = solveThree(slopes[i]!, off)
      at.x[i]! += move[0]!
      at.y[i]! += move[1]!
      at.z[i]! += move[2]!
      worst = Math.max(worst, ...move.map(Math.abs))
    }
    if (worst < 1e-14) break
  }
  return { ...at, rates: [], branches: [], outputs: {} }
}

/** Cramer's rule; no move where the map is flat. */
function solveThree(m: Float64Array, right: readonly number[]): number[] {
  const whole = determinant(m)
  if (whole === 0) return [0, 0, 0]
  return [0, 1, 2].map((column) => {
    const replaced = m.map((value, k) => (k % 3 === column ? right[Math.floor(k / 3)]! : value))
    return determinant(replaced) / whole
  })
}
