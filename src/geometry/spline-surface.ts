/**
 * A smooth height over a grid: quadratic B-splines, once differentiable. `values`: coefficients, rows of `columns` along x;
 * the first cell begins at `x`, `y`, and cells span (columns − 2) × (rows − 2). Beyond them it goes on level.
 */
export interface SplineSurface {
  readonly x: number
  readonly y: number
  readonly cellX: number
  readonly cellY: number
  readonly columns: number
  readonly values: readonly number[]
}

/** Height and its slopes along x and y. */
export function splineAt(
  { x, y, cellX, cellY, columns, values }: SplineSurface,
  px: number,
  py: number,
): readonly [height: number, slopeX: number, slopeY: number] {
  const [i, u, du] = weigh((px - x) / cellX, columns - 2)
  const [j, v, dv] = weigh((py - y) / cellY, values.length / columns - 2)
  let [height, alongX, alongY] = [0, 0, 0]
  for (let b = 0; b < 3; b++)
    for (let a = 0; a < 3; a++) {
      const value = values[(j + b) * columns + i + a]
      height += value * u[a] * v[b]
      alongX += value * du[a] * v[b]
      alongY += value * u[a] * dv[b]
    }
  return [height, alongX / cellX, alongY / cellY]
}

type Three = readonly [number, number, number]

/** The cell met, the shares of its three coefficients, and how these change per cell. */
function weigh(t: number, cells: number): readonly [cell: number, shares: Three, slopes: Three] {
  const inside = Math.min(Math.max(t, 0), cells)
  const cell = Math.min(Math.floor(inside), cells - 1)
  const f = inside - cell
  const rest = 1 - f
  const level = inside === t ? 1 : 0
  return [
    cell,
    [(rest * rest) / 2, f * rest + 0.5, (f * f) / 2],
    [-rest * level, (rest - f) * level, f * level],
  ]
}
