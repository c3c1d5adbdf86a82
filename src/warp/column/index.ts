import { curveAt, curveInverse, curveThrough, integrateSlopes } from '../curve.ts'
import type { Graph } from '../graph.ts'
import type { Place, Settings, Warp, WarpKind } from '../warp.ts'

/** Which way the columns spread: along the bar (grooves across it) or across it (a section between dies). */
export type ColumnAxis = 'x' | 'y'

/**
 * Columns of metal standing in z, pressed shorter and made wider by the same factor r(u): u' = ∫ r du, z' = (z − m)/r,
 * with m the height of the column's middle. `columns`: for evenly spaced places u before, r and m. Result: the warp and
 * the new range of u' (starting from `from`). Volume is kept exactly, for the table's slope itself is what r is read
 * from.
 */
export function column(given: {
  axis: ColumnAxis
  /** First and last place before (m). */
  before: readonly [number, number]
  /** Where the first place comes to lie (m). */
  from: number
  columns: readonly { readonly shortening: number; readonly middle: number }[]
  cells?: number
}): { warp: Warp; after: readonly [number, number] } {
  const { axis, before, from, columns, cells = 512 } = given
  const step = (before[1] - before[0]) / (columns.length - 1)
  const reach = integrateSlopes(
    from,
    columns.map((c) => c.shortening * step),
  ).value
  const to = reach[reach.length - 1]!
  // Read the columns off at even places after the pressing.
  const after = Array.from({ length: cells + 1 }, (_, i) => {
    const target = from + ((to - from) * i) / cells
    let k = 0
    let top = columns.length - 1
    while (top - k > 1) {
      const middle = (k + top) >> 1
      if (reach[middle]! <= target) k = middle
      else top = middle
    }
    const [a, b] = [columns[k]!, columns[k + 1]!]
    const f = within(a.shortening, b.shortening, (target - reach[k]!) / step)
    return {
      place: before[0] + (k + f) * step,
      thin: 1 / (a.shortening + f * (b.shortening - a.shortening)),
      middle: a.middle + f * (b.middle - a.middle),
    }
  })
  const cell = (to - from) / cells
  const thin = after.map((p) => p.thin * cell)
  const start = before[0]
  const end = integrateSlopes(start, thin).value[cells]!
  const mean = (end - start) / (to - from)
  // Only what the place differs from a straight line is tabled, so that single precision keeps its digits.
  const place = integrateSlopes(
    0,
    thin.map((t) => t - mean * cell),
  )
  const middle = curveThrough(after.map((p) => p.middle))
  return {
    warp: {
      kind: 'column',
      form: axis,
      numbers: { from, cell, start, mean },
      tables: {
        place: place.value,
        placeSlope: place.slope,
        middle: middle.value,
        middleSlope: middle.slope,
      },
    },
    after: [from, to],
  }
}

/** At each node of a column warp: the place before, and the height after of a column one high before. */
export function columnNodes(warp: Warp): { place: number[]; thin: number[] } {
  const { cell, start, mean } = warp.numbers as Record<'cell' | 'start' | 'mean', number>
  const { place, placeSlope } = warp.tables as Record<'place' | 'placeSlope', readonly number[]>
  return {
    place: place.map((p, i) => start + mean * cell * i + p),
    thin: placeSlope.map((s) => mean + s / cell),
  }
}

/** f with a·f + (b − a)f²/2 = want: how far into a cell whose slope runs from a to b. */
function within(a: number, b: number, want: number): number {
  return Math.min(1, (2 * want) / (a + Math.sqrt(Math.max(0, a * a + 2 * (b - a) * want))))
}

function spread(at: Settings, p: Place) {
  return at.form === 'x' ? p.x : p.y
}
function placed(at: Settings, p: Place, u: Place['x'], z: Place['x']): Place {
  return at.form === 'x' ? { x: u, y: p.y, z } : { x: p.x, y: u, z }
}

export const columnKind: WarpKind = {
  name: 'column',
  branches: false,
  pull(g: Graph, after, at) {
    const n = at.number
    const along = g.sub(spread(at, after), n('from'))
    const t = g.div(along, n('cell'))
    const place = curveAt(g, at, 'place', t)
    const middle = curveAt(g, at, 'middle', t)
    const u = g.add(g.mul(along, n('mean')), place.value, n('start'))
    const thin = g.add(g.div(place.slope, n('cell')), n('mean'))
    return placed(at, after, u, g.add(g.div(after.z, thin), middle.value))
  },
  push(g: Graph, before, at) {
    const n = at.number
    const line = { start: n('start'), slope: g.mul(n('mean'), n('cell')) }
    const t = curveInverse(g, at, 'place', spread(at, before), line)
    const thin = g.add(g.div(curveAt(g, at, 'place', t).slope, n('cell')), n('mean'))
    const z = g.mul(g.sub(before.z, curveAt(g, at, 'middle', t).value), thin)
    return placed(at, before, g.add(g.mul(t, n('cell')), n('from')), z)
  },
  examples: (['x', 'y'] as const).flatMap((axis) =>
    [0.15, 0.7].map((depth) => {
      const columns = Array.from({ length: 401 }, (_, i) => {
        const groove = depth * Math.max(0, Math.cos((i / 400) * 6 * Math.PI))
        return { shortening: (1.5 - groove) / 0.8, middle: -0.003 * groove }
      })
      const { warp, after } = column({ axis, before: [-0.03, 0.03], from: -0.03, columns })
      const [u, v] = [after, [-0.01, 0.01] as const]
      return {
        warp,
        domain: { x: axis === 'x' ? u : v, y: axis === 'y' ? u : v, z: [-0.005, 0.005] },
      }
    }),
  ),
}
