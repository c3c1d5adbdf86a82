import { type Warp, relief } from '#warp'

/** A box pressed into the upper face to an even depth: its middle, sides and depth, m. */
export interface PressedBox {
  readonly at: { readonly x: number; readonly y: number }
  readonly length: number
  readonly width: number
  readonly depth: number
}

/** Cells over the shorter side. */
const CELLS = 24

/**
 * Layers under a stamp sink with it, by depth · e^(−2π z / feature) below its floor; the feature is the
 * shorter side of the box (elastic half-space form, from memory). `face`: height of the upper face.
 */
export function pressedBox({ at, length, width, depth }: PressedBox, face: number): Warp {
  const feature = Math.min(length, width)
  const cell = feature / CELLS
  const columns = Math.ceil(length / cell) + 6
  const rows = Math.ceil(width / cell) + 6
  const [x, y] = [at.x - ((columns - 2) * cell) / 2, at.y - ((rows - 2) * cell) / 2]
  const depths = Array.from({ length: columns * rows }, (_, k) => {
    const px = x + ((k % columns) - 0.5) * cell - at.x
    const py = y + (Math.floor(k / columns) - 0.5) * cell - at.y
    return Math.abs(px) <= length / 2 && Math.abs(py) <= width / 2 ? depth : 0
  })
  return relief({
    ...{ x, y, cellX: cell, cellY: cell, columns, depths },
    // Down to the floor the whole depth, from there less and less.
    face: face - depth,
    reach: feature / (2 * Math.PI),
  })
}
