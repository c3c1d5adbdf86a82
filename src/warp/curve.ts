import type { Graph, Node, Term } from './graph.ts'
import type { Settings } from './warp.ts'

/**
 * A smooth curve kept as slopes at evenly spaced nodes (per cell) and their running integral: between nodes the slope
 * is linear, so the curve is once differentiable and rises wherever its slopes are positive. Beyond its ends it goes
 * on straight. A curve called `c` is two tables, `c` and `cSlope`.
 */
export interface CurveTables {
  readonly value: readonly number[]
  readonly slope: readonly number[]
}

export function integrateSlopes(start: number, slope: readonly number[]): CurveTables {
  const value = [start]
  for (let i = 1; i < slope.length; i++) value.push(value[i - 1]! + (slope[i - 1]! + slope[i]!) / 2)
  return { value, slope }
}

/** The curve through samples, its slopes taken as mean differences of neighbours. */
export function curveThrough(samples: readonly number[]): CurveTables {
  const last = samples.length - 1
  const slope = samples.map((_, i) => {
    const [a, b] = [Math.max(0, i - 1), Math.min(last, i + 1)]
    return (samples[b]! - samples[a]!) / (b - a)
  })
  return integrateSlopes(samples[0]!, slope)
}

/** Which cell of `cells` a coordinate in cells lies in, how far into it, and how far beyond the ends. */
export function cellOf(g: Graph, t: Node, cells: number) {
  const inside = g.clamp(t, 0, cells)
  const cell = g.min(g.floor(inside), cells - 1)
  return { cell, into: g.sub(inside, cell), beyond: g.sub(t, inside) }
}

export function curveAt(g: Graph, at: Settings, name: string, t: Node) {
  const values = at.table(name)
  const slopes = at.table(`${name}Slope`)
  const { cell, into, beyond } = cellOf(g, t, values.length - 1)
  const first = g.fetch(slopes.table, cell)
  const slope = g.add(first, g.mul(into, g.sub(g.fetch(slopes.table, cell, 1), first)))
  const rise = g.mul(into, g.mul(g.add(first, slope), 0.5))
  const value = g.add(g.fetch(values.table, cell), rise, g.mul(beyond, slope))
  return { value, slope }
}

/**
 * The coordinate in cells at which `start + slope·t + curve(t)` has the value, where that rises; slope is per cell.
 */
export function curveInverse(
  g: Graph,
  at: Settings,
  name: string,
  value: Node,
  line: { readonly start: Node; readonly slope: Node },
): Node {
  const values = at.table(name)
  const slopes = at.table(`${name}Slope`)
  const height = (i: Node) =>
    g.add(g.fetch(values.table, i), g.add(g.mul(i, line.slope), line.start))
  const cell = searchRising(g, height, values.length - 1, value)
  const left = g.sub(value, height(cell))
  const first = g.add(g.fetch(slopes.table, cell), line.slope)
  const last = g.add(g.fetch(slopes.table, cell, 1), line.slope)
  const whole = g.mul(g.add(first, last), 0.5)
  const inside = g.clamp(left, 0, whole)
  const root = g.sqrt(g.max(0, g.add(g.mul(first, first), g.mul(2, g.sub(last, first), inside))))
  const into = g.div(g.mul(2, inside), g.add(first, root))
  return g.add(cell, into, g.div(g.sub(left, inside), g.less(left, 0, first, last)))
}

/** The last of the first `count` entries of a rising table that is not above the value (0 if all are). */
export function searchTable(g: Graph, table: number, count: number, value: Term): Node {
  return searchRising(g, (i) => g.fetch(table, i), count, value)
}

function searchRising(g: Graph, entry: (i: Node) => Node, count: number, value: Term): Node {
  let found = g.constant(0)
  for (let step = 2 ** Math.ceil(Math.log2(Math.max(count, 2)) - 1); step >= 1; step /= 2) {
    const next = g.min(g.add(found, step), count - 1)
    found = g.less(value, entry(next), found, next)
  }
  return found
}
