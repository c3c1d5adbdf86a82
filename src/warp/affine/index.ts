import type { Warp, WarpKind } from '../warp.ts'

type Row = readonly [number, number, number]

/**
 * Any straight map, given as it pulls back: before = rows · after + offset. For what the simpler kinds do not cover.
 * Its determinant is the rows' (1 for a turned or sheared piece).
 */
export function affine(given: { rows: readonly [Row, Row, Row]; offset?: Row }): Warp {
  const numbers: Record<string, number> = {}
  given.rows.forEach((row, i) => row.forEach((value, j) => (numbers[`m${i}${j}`] = value)))
  given.rows.forEach((_, i) => (numbers[`o${i}`] = given.offset?.[i] ?? 0))
  return { kind: 'affine', numbers }
}

export const affineKind: WarpKind = {
  name: 'affine',
  branches: false,
  pull(g, { x, y, z }, at) {
    const n = at.number
    const row = (i: number) =>
      g.add(g.mul(x, n(`m${i}0`)), g.mul(y, n(`m${i}1`)), g.mul(z, n(`m${i}2`)), n(`o${i}`))
    return { x: row(0), y: row(1), z: row(2) }
  },
  push(g, before, at) {
    const n = (i: number, j: number) => at.number(`m${i % 3}${j % 3}`)
    const minor = (i: number, j: number) =>
      g.sub(g.mul(n(i + 1, j + 1), n(i + 2, j + 2)), g.mul(n(i + 1, j + 2), n(i + 2, j + 1)))
    const det = g.add(
      g.mul(n(0, 0), minor(0, 0)),
      g.mul(n(0, 1), minor(0, 1)),
      g.mul(n(0, 2), minor(0, 2)),
    )
    const [x, y, z] = [before.x, before.y, before.z].map((c, i) => g.sub(c, at.number(`o${i}`)))
    const row = (j: number) =>
      g.div(g.add(g.mul(x!, minor(0, j)), g.mul(y!, minor(1, j)), g.mul(z!, minor(2, j))), det)
    return { x: row(0), y: row(1), z: row(2) }
  },
  det(g, _after, at) {
    const n = (i: number, j: number) => at.number(`m${i}${j}`)
    const two = (a: number, b: number) => g.sub(g.mul(n(1, a), n(2, b)), g.mul(n(1, b), n(2, a)))
    return g.add(
      g.sub(g.mul(n(0, 0), two(1, 2)), g.mul(n(0, 1), two(0, 2))),
      g.mul(n(0, 2), two(0, 1)),
    )
  },
  examples: [
    {
      warp: affine({
        rows: [
          [1, 0.3, 0],
          [0, 1, 0],
          [0, -0.2, 1],
        ],
        offset: [0.01, 0, 0.002],
      }),
      domain: { x: [0, 0.3], y: [-0.02, 0.02], z: [-0.01, 0.01] },
    },
    {
      warp: affine({
        rows: [
          [0.5, 0.1, -0.4],
          [0.2, 1.7, 0],
          [0.1, 0, 0.8],
        ],
      }),
      domain: { x: [0, 0.3], y: [-0.02, 0.02], z: [-0.01, 0.01] },
    },
  ],
}
