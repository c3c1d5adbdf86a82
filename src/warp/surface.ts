import type { Graph, Node } from './graph.ts'
import type { Settings } from './warp.ts'

/**
 * A smooth height over a grid: quadratic B-splines over rows of `columns` coefficients, once differentiable. `columns`
 * × rows coefficients span (columns − 2) × (rows − 2) cells; beyond them the surface goes on level, or repeats. Both
 * are numbers of the warp's: a bar a little longer is the same arithmetic.
 */
export function surfaceAt(
  g: Graph,
  at: Settings,
  names: readonly string[],
  repeats: boolean,
  tx: Node,
  ty: Node,
) {
  const columns = at.number('columns')
  const u = splineCell(g, tx, g.sub(columns, 2), repeats)
  const v = splineCell(g, ty, g.sub(at.number('rows'), 2), repeats)
  const corner = g.add(g.mul(v.cell, columns), u.cell)
  const corners = [corner, g.add(corner, columns), g.add(corner, g.mul(columns, 2))]
  return names.map((name) => {
    const { table } = at.table(name)
    const row = (weights: readonly Node[], j: number) =>
      mix(
        g,
        weights,
        [0, 1, 2].map((i) => g.fetch(table, corners[j]!, i)),
      )
    const across = [0, 1, 2].map((j) => row(u.weights, j))
    const leaning = [0, 1, 2].map((j) => row(u.slopes, j))
    return {
      value: mix(g, v.weights, across),
      /** Per cell. */
      dx: mix(g, v.weights, leaning),
      dy: mix(g, v.slopes, across),
    }
  })
}

function mix(g: Graph, weights: readonly Node[], values: readonly Node[]): Node {
  const [a, b, c] = weights.map((w, i) => g.mul(w, values[i]!)) as [Node, Node, Node]
  return g.add(a, b, c)
}

function splineCell(g: Graph, t: Node, cells: Node, repeats: boolean) {
  const inside = repeats ? g.sub(t, g.mul(g.floor(g.div(t, cells)), cells)) : g.clamp(t, 0, cells)
  const cell = g.clamp(g.floor(inside), 0, g.sub(cells, 1))
  const f = g.sub(inside, cell)
  const rest = g.sub(1, f)
  const half = g.mul(f, f, 0.5)
  const weights = [g.mul(rest, rest, 0.5), g.add(g.mul(f, rest), 0.5), half]
  const flat = (slope: Node) =>
    repeats ? slope : g.less(inside, t, 0, g.less(t, inside, 0, slope))
  const slopes = [g.negate(rest), g.sub(rest, f), f].map(flat)
  return { cell, weights, slopes }
}
