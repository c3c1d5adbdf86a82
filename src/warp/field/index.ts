import { surfaceAt } from '../surface.ts'
import type { TableEntries, Warp, WarpKind } from '../warp.ts'

/**
 * Columns standing in z, moved in the plane by a sampled field and made longer or shorter by exactly what the plane
 * takes: x = x' + U(x',y'), y = y' + V(x',y'), z = M(x',y') + z'/J with J the area of the plane before for one after.
 * Volume is kept exactly whatever the field. Dimples flattened and the unevenness of hammer and hand are this.
 * `along`, `across`, `middle`: B-spline coefficients (m), rows of `columns` along x, rows counted along y; the grid's
 * first cell begins at `x`, `y`, cells are `cellX` × `cellY`.
 */
export function field(given: {
  x: number
  y: number
  cellX: number
  cellY: number
  columns: number
  along: TableEntries
  across: TableEntries
  middle: TableEntries
}): Warp {
  const { along, across, middle, ...numbers } = given
  const rows = middle.length / numbers.columns
  return { kind: 'field', numbers: { ...numbers, rows }, tables: { along, across, middle } }
}

export const fieldKind: WarpKind = {
  name: 'field',
  branches: false,
  pull(g, { x, y, z }, at) {
    const n = at.number
    const tx = g.div(g.sub(x, n('x')), n('cellX'))
    const ty = g.div(g.sub(y, n('y')), n('cellY'))
    const names = ['along', 'across', 'middle']
    const [u, v, m] = surfaceAt(g, at, names, false, tx, ty)
    const area = g.sub(
      g.mul(g.add(g.div(u!.dx, n('cellX')), 1), g.add(g.div(v!.dy, n('cellY')), 1)),
      g.mul(g.div(u!.dy, n('cellY')), g.div(v!.dx, n('cellX'))),
    )
    return { x: g.add(x, u!.value), y: g.add(y, v!.value), z: g.add(g.div(z, area), m!.value) }
  },
  examples: [0.1, 0.5].map((lean) => {
    const [columns, rows, cell] = [22, 12, 0.005]
    const sampled = (f: (i: number, j: number) => number) =>
      Array.from({ length: columns * rows }, (_, k) => f(k % columns, Math.floor(k / columns)) + 0)
    return {
      warp: field({
        x: 0,
        y: -0.025,
        cellX: cell,
        cellY: cell,
        columns,
        along: sampled((i, j) => lean * cell * Math.sin(0.9 * i + 0.3 * j)),
        across: sampled((i, j) => lean * cell * Math.cos(0.5 * i - 0.7 * j)),
        middle: sampled((i, j) => 0.0004 * Math.sin(0.8 * i) * Math.cos(0.6 * j)),
      }),
      domain: { x: [0, 0.1], y: [-0.025, 0.025], z: [-0.006, 0.006] },
    }
  }),
}
