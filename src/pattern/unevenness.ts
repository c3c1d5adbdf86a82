import { type Warp, field } from '#warp'
import { scatter, scatterNormal } from './random.ts'

/** How uneven a way of forging leaves a bar: error of height over thickness, and the length of a wave (m). */
export interface Unevenness {
  readonly amplitude: number
  readonly wavelength: number
}

/**
 * By hand 1–4 % of the thickness, under flat dies 0.5–1.5 %; waves as long as the bite or the hammer's face, 10–40 mm:
 * common practice, no source; the middle of each is taken.
 */
export const HAMMERED: Unevenness = { amplitude: 0.025, wavelength: 0.022 }
export const PRESSED: Unevenness = { amplitude: 0.01, wavelength: 0.03 }

/** Waves added up; the more, the less any of them is seen. */
const WAVES = 24
/** Cells to a wave of the grid the field is kept on. */
const CELLS_PER_WAVE = 14
const MOST_CELLS = 60_000

/**
 * The unevenness of one forging: both faces err by themselves, the columns between them are moved and made longer or
 * shorter by exactly what flows sideways. Volume is kept to the last bit, for the warp reads the height off the flow.
 * Sizes are the bar's after the step; the error of each face has the deviation `amplitude` × height.
 */
export function unevenness(
  size: { readonly length: number; readonly width: number; readonly height: number },
  { amplitude, wavelength }: Unevenness,
  seed: number,
): Warp {
  const rim = wavelength
  const [wide, tall] = [size.length + 2 * rim, size.width + 2 * rim]
  const cell = Math.max(wavelength / CELLS_PER_WAVE, Math.sqrt((wide * tall) / MOST_CELLS))
  const columns = Math.ceil(wide / cell) + 2
  const rows = Math.ceil(tall / cell) + 2
  const [x, y] = [-rim, -size.width / 2 - rim]
  const count = columns * rows
  const along = new Float64Array(count)
  const across = new Float64Array(count)
  const middle = new Float64Array(count)
  // Of n waves of one size each adds size²/2 to the square of the deviation.
  const each = amplitude * Math.sqrt(2 / WAVES)
  // A wave is read off its angles along the columns and along the rows: no cosine has to be found cell by cell.
  const [cosine, sine] = [new Float64Array(columns), new Float64Array(columns)]
  for (let k = 0; k < WAVES; k++) {
    const turn = 2 * Math.PI * scatter(seed, k, 0)
    // Wave numbers about the one asked for, spread by a quarter.
    const number =
      ((2 * Math.PI) / wavelength) * Math.max(0.4, 1 + 0.25 * scatterNormal(seed, k, 1))
    const [kx, ky] = [number * Math.cos(turn), number * Math.sin(turn)]
    const [upper, lower] = [2, 3].map((of) => 2 * Math.PI * scatter(seed, k, of)) as [
      number,
      number,
    ]
    // Two faces' waves are one midway between them: cos(p + a) + cos(p + b) = 2 cos((a − b)/2) cos(p + (a + b)/2).
    const lift = each * size.height * Math.cos((upper - lower) / 2)
    // What the column gains in height (before over after) it loses in area: −∇·(U, V).
    const flow = (-2 * each * Math.sin((upper - lower) / 2)) / number ** 2
    // A coefficient stands in the middle of its spline.
    for (let i = 0; i < columns; i++) {
      const phase = kx * (x + (i - 0.5) * cell)
      cosine[i] = Math.cos(phase)
      sine[i] = Math.sin(phase)
    }
    for (let j = 0; j < rows; j++) {
      const phase = ky * (y + (j - 0.5) * cell) + (upper + lower) / 2
      const [c, s] = [Math.cos(phase), Math.sin(phase)]
      for (let i = 0, at = j * columns; i < columns; i++, at++) {
        const wave = cosine[i]! * c - sine[i]! * s
        middle[at]! += lift * wave
        along[at]! += flow * kx * wave
        across[at]! += flow * ky * wave
      }
    }
  }
  return field({ x, y, cellX: cell, cellY: cell, columns, along, across, middle })
}
