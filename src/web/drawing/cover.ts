import type { Patch } from './lay-out-build.ts'

/**
 * Mean lightness of each pixel by exact area: a layer of a tenth of a pixel counts a tenth. Nothing
 * is sampled, so fine layers turn to an even tone and never to a moiré.
 */
export function coverPixels(
  patches: readonly Patch[],
  columns: number,
  rows: number,
): Float32Array<ArrayBuffer> {
  const sum = new Float32Array(columns * rows)
  for (const { x, y, width, height, bright } of patches) {
    if (bright === 0) continue
    const [x0, x1, y0, y1] = [x * columns, (x + width) * columns, y * rows, (y + height) * rows]
    const lastRow = Math.min(rows - 1, Math.ceil(y1) - 1)
    const lastColumn = Math.min(columns - 1, Math.ceil(x1) - 1)
    for (let row = Math.max(0, Math.floor(y0)); row <= lastRow; row++) {
      const tall = (Math.min(y1, row + 1) - Math.max(y0, row)) * bright
      for (let column = Math.max(0, Math.floor(x0)); column <= lastColumn; column++)
        sum[row * columns + column] += tall * (Math.min(x1, column + 1) - Math.max(x0, column))
    }
  }
  return sum
}
