import { splineAt } from '#geometry'
import type { Cut } from './cut.ts'
import type { Imprint } from './piece-kind.ts'

const NONE = [0, 0, 0] as const

/** How far the floor of an imprint lies below the face at a place, and how fast that grows along x and y. */
export function imprintAt(
  { depths, lost }: Imprint,
  x: number,
  y: number,
): readonly [depth: number, slopeX: number, slopeY: number] {
  const { cellX, cellY, columns, values } = depths
  // Most places asked for lie beside it.
  const [i, j] = [(x - depths.x) / cellX, (y - depths.y) / cellY]
  if (i < 0 || j < 0 || i > columns - 2 || j > values.length / columns - 2) return NONE
  const [pressed, slopeX, slopeY] = splineAt(depths, x, y)
  return pressed > lost ? [pressed - lost, slopeX, slopeY] : NONE
}

/** An imprint as a cut in the front face. */
export function imprintCut(imprint: Imprint): Cut {
  const { x, y, cellX, cellY, columns, values } = imprint.depths
  const ends = (from: number, cell: number, cells: number) => [from, from + cell * (cells - 2)]
  const ys = ends(y, cellY, values.length / columns)
  return {
    xBreaks: ends(x, cellX, columns),
    yBreaks: () => ys,
    fromTop: (px, py) => imprintAt(imprint, px, py)[0],
    fromBottom: () => 0,
    finest: Math.min(cellX, cellY),
  }
}
