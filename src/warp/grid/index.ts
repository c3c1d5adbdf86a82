import { cellOf } from '../curve.ts'
import type { Warp, WarpKind } from '../warp.ts'

/**
 * A displacement field sampled elsewhere (a flow solver's, say): before = after + D, linear between the samples, which run
 * x fastest, then y, then z, from `origin` in steps of `cell`. `counts` are the samples each way (two or more). Volume is
 * kept as far as the data keep it.
 */
export function grid(given: {
  origin: readonly [number, number, number]
  cell: readonly [number, number, number]
  counts: readonly [number, number, number]
  x: readonly number[]
  y: readonly number[]
  z: readonly number[]
}): Warp {
  const { origin, cell, counts, x, y, z } = given
  const [x0, y0, z0] = origin
  const [cellX, cellY, cellZ] = cell
  return {
    kind: 'grid',
    form: counts.join(' '),
    numbers: { x0, y0, z0, cellX, cellY, cellZ },
    tables: { x, y, z },
  }
}

export const gridKind: WarpKind = {
  name: 'grid',
  branches: false,
  det: 'sampled',
  pull(g, { x, y, z }, at) {
    const n = at.number
    const [nx, ny, nz] = at.form.split(' ').map(Number) as [number, number, number]
    const u = cellOf(g, g.div(g.sub(x, n('x0')), n('cellX')), nx - 1)
    const v = cellOf(g, g.div(g.sub(y, n('y0')), n('cellY')), ny - 1)
    const w = cellOf(g, g.div(g.sub(z, n('z0')), n('cellZ')), nz - 1)
    const corner = g.add(g.mul(g.add(g.mul(w.cell, ny), v.cell), nx), u.cell)
    const displaced = (name: string) => {
      const { table } = at.table(name)
      const line = (k: number) => {
        const first = g.fetch(table, corner, k)
        return g.add(first, g.mul(u.into, g.sub(g.fetch(table, corner, k + 1), first)))
      }
      const plane = (k: number) => g.add(line(k), g.mul(v.into, g.sub(line(k + nx), line(k))))
      return g.add(plane(0), g.mul(w.into, g.sub(plane(nx * ny), plane(0))))
    }
    return {
      x: g.add(x, displaced('x')),
      y: g.add(y, displaced('y')),
      z: g.add(z, displaced('z')),
    }
  },
  examples: [0.02, 0.08].map((size) => {
    const counts = [9, 5, 4] as const
    const field = (f: (i: number, j: number, k: number) => number) =>
      Array.from({ length: 9 * 5 * 4 }, (_, q) =>
        f(q % 9, Math.floor(q / 9) % 5, Math.floor(q / 45)),
      )
    return {
      warp: grid({
        origin: [0, -0.02, -0.015],
        cell: [0.01, 0.01, 0.01],
        counts,
        x: field((i, j) => 0.01 * size * Math.sin(i + 0.5 * j)),
        y: field((i, j, k) => 0.01 * size * Math.cos(j - i + k)),
        z: field((i, _j, k) => 0.01 * size * Math.sin(0.7 * k + i)),
      }),
      domain: { x: [0, 0.08], y: [-0.02, 0.02], z: [-0.015, 0.015] },
    }
  }),
}
