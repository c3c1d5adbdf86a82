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
  // Flat layers run from side to side: each is one number a row or a column.
  const alongRow = new Float32Array(rows)
  const alongColumn = new Float32Array(columns)
  for (const { x, y, width, height, bright } of patches) {
    if (bright === 0) continue
    const [x0, x1, y0, y1] = [x * columns, (x + width) * columns, y * rows, (y + height) * rows]
    if (x === 0 && width === 1) coverRun(alongRow, y0, y1, bright)
    else if (y === 0 && height === 1) coverRun(alongColumn, x0, x1, bright)
    else {
      const lastRow = Math.min(rows - 1, Math.ceil(y1) - 1)
      const lastColumn = Math.min(columns - 1, Math.ceil(x1) - 1)
      for (let row = Math.max(0, Math.floor(y0)); row <= lastRow; row++) {
        const tall = (Math.min(y1, row + 1) - Math.max(y0, row)) * bright
        for (let column = Math.max(0, Math.floor(x0)); column <= lastColumn; column++)
          sum[row * columns + column] += tall * (Math.min(x1, column + 1) - Math.max(x0, column))
      }
    }
  }
  for (let row = 0, i = 0; row < rows; row++)
    for (let column = 0; column < columns; column++, i++)
      sum[i] += alongRow[row] + alongColumn[column]
  return sum
}

/** Adds what lies between two places to each unit it covers, by the length covered. */
function coverRun(run: Float32Array, from: number, to: number, bright: number): void {
  const last = Math.min(run.length - 1, Math.ceil(to) - 1)
  for (let i = Math.max(0, Math.floor(from)); i <= last; i++)
    run[i] += bright * (Math.min(to, i + 1) - Math.max(from, i))
}
