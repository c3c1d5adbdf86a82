import type { Filled } from './fill.ts'

/** Squares of side `cell`, rows upwards; the first has its lower left corner at `left`, `bottom`. */
export interface CoverGrid {
  readonly left: number
  readonly bottom: number
  readonly cell: number
  readonly columns: number
  readonly rows: number
}

/**
 * Exact share of each square that is filled, row by row. Every bit of edge fills all that lies to its right in the rows
 * it crosses, or takes it away again: its own squares in part, those to the right of them as a running sum.
 */
export function coverOf({ edge }: Filled, grid: CoverGrid): Float64Array {
  const { left, bottom, cell, columns, rows } = grid
  // One square more in each row takes what lies past the last.
  const steps = new Float64Array((columns + 2) * rows)
  const clampX = (x: number) => Math.min(Math.max(x, 0), columns)
  for (const { from, to, inward } of edge) {
    const [low, high] = from[1] < to[1] ? [from, to] : [to, from]
    const [x0, y0] = [(low[0] - left) / cell, (low[1] - bottom) / cell]
    const [x1, y1] = [(high[0] - left) / cell, (high[1] - bottom) / cell]
    if (y0 === y1) continue
    const lean = (x1 - x0) / (y1 - y0)
    const sign = inward[0] > 0 ? 1 : -1
    for (let row = Math.max(0, Math.floor(y0)); row < Math.min(rows, Math.ceil(y1)); row++) {
      const [ya, yb] = [Math.max(y0, row), Math.min(y1, row + 1)]
      const [xa, xb] = [clampX(x0 + lean * (ya - y0)), clampX(x0 + lean * (yb - y0))]
      addEdge(steps, row * (columns + 2), sign * (yb - ya), Math.min(xa, xb), Math.max(xa, xb))
    }
  }
  const cover = new Float64Array(columns * rows)
  for (let row = 0; row < rows; row++) {
    let sum = 0
    for (let column = 0; column < columns; column++) {
      sum += steps[row * (columns + 2) + column]!
      cover[row * columns + column] = Math.min(1, Math.max(0, sum))
    }
  }
  return cover
}

/** An edge rising by `rise` between xa and xb: by how much each square's share is more than its left neighbour's. */
function addEdge(steps: Float64Array, at: number, rise: number, xa: number, xb: number): void {
  const perSquare = xb > xa ? rise / (xb - xa) : 0
  let [already, before] = [0, 0]
  const last = Math.floor(xb)
  for (let i = Math.floor(xa); i <= last; i++) {
    const [a, b] = [Math.max(xa, i), Math.min(xb, i + 1)]
    const part = xb > xa ? perSquare * (b - a) : rise
    const share = already + part * (i + 1 - (a + b) / 2)
    steps[at + i] = steps[at + i]! + share - before
    already += part
    before = share
  }
  steps[at + last + 1] = steps[at + last + 1]! + already - before
}
