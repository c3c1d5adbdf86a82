import { type SplineSurface, splineAt } from '#geometry'

/** Of a Gaussian this many widths to either side are taken. */
const CUT = 3
/** Cells of the broad part to a width of its Gaussian. */
const CELLS_PER_WIDTH = 2

interface Row {
  readonly start: number
  readonly cell: number
  readonly count: number
}

/** Depths seen through a Gaussian of this width (m): only what is broad is left. Nothing is left at its rim. */
export function broadPart(depths: SplineSurface, width: number): SplineSurface {
  const { x, y, cellX, cellY, columns, values } = depths
  const cell = width / CELLS_PER_WIDTH
  // The spline it is read as blurs too: a quarter of a cell squared.
  const own = Math.sqrt(width ** 2 - cell ** 2 / 4)
  // A coefficient stands for the square its spline is the middle of: the first lies outside the cells.
  const fine = (from: number, size: number, count: number): Row => ({
    start: from - size / 2,
    ...{ cell: size, count },
  })
  const coarse = ({ start, cell: size, count }: Row): Row => {
    const rim = CUT * own + 2 * cell
    return { start: start - rim, cell, count: 1 + Math.ceil(((count - 1) * size + 2 * rim) / cell) }
  }
  const [alongX, alongY] = [fine(x, cellX, columns), fine(y, cellY, values.length / columns)]
  const [toX, toY] = [coarse(alongX), coarse(alongY)]
  const half = seenThrough(values, alongX, toX, own)
  const whole = seenThrough(half, alongY, toY, own)
  return {
    ...{ x: toX.start + cell / 2, y: toY.start + cell / 2, cellX: cell, cellY: cell },
    ...{ columns: toX.count, values: Array.from(whole) },
  }
}

/** Each row taken by a Gaussian at other places of it; rows come out as columns. */
function seenThrough(values: ArrayLike<number>, from: Row, to: Row, width: number): Float64Array {
  const rows = values.length / from.count
  const out = new Float64Array(rows * to.count)
  for (let i = 0; i < to.count; i++) {
    const middle = (to.start + i * to.cell - from.start) / from.cell
    const wide = width / from.cell
    const [first, last] = [Math.ceil(middle - CUT * wide), Math.floor(middle + CUT * wide)]
    const shares = Array.from({ length: last - first + 1 }, (_, k) =>
      Math.exp(-(((first + k - middle) / wide) ** 2) / 2),
    )
    const all = shares.reduce((a, b) => a + b, 0)
    for (let j = 0; j < rows; j++) {
      let sum = 0
      for (let k = Math.max(first, 0); k <= Math.min(last, from.count - 1); k++)
        sum += shares[k - first]! * values[j * from.count + k]!
      out[i * rows + j] = sum / all
    }
  }
  return out
}

/** How far the broad part lies deeper than the depths themselves, at most. */
export function deepestBelow(depths: SplineSurface, broad: SplineSurface): number {
  const { x, y, cellX, cellY, columns, values } = depths
  let most = 0
  for (let k = 0; k < values.length; k++) {
    const [i, j] = [k % columns, Math.floor(k / columns)]
    const [smooth] = splineAt(broad, x + (i - 0.5) * cellX, y + (j - 0.5) * cellY)
    most = Math.max(most, smooth - values[k]!)
  }
  return most
}
