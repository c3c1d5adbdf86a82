import type { Size } from '#geometry'
import { type Warp, relief, turn } from '#warp'
import { waveOfMean } from './groove-row.ts'

/** Cells to a ridge. */
const CELLS = 24

/**
 * Ridges of a die across the bar pressed into its top, or top and bottom: the layers under them sink
 * with them, by e^(−2π z / pitch) below the deepest place (elastic half-space form, from memory).
 */
export function pressedRidges(
  { width, height }: Size,
  given: {
    readonly depth: number
    readonly share: number
    readonly pitch: number
    readonly dies: string
  },
): readonly Warp[] {
  const { depth, pitch } = given
  const wave = waveOfMean(given.share)
  const columns = CELLS + 2
  const rows = 4
  const depths = Array.from(
    { length: columns * rows },
    (_, k) => depth * wave(((k % columns) - 0.5) / CELLS - 0.5),
  )
  const sunk = relief({
    ...{ x: 0, y: -width / 2, cellX: pitch / CELLS, cellY: width / 2, columns, depths },
    ...{ face: height / 2 - depth, reach: pitch / (2 * Math.PI), repeats: true },
  })
  return given.dies === 'both' ? [sunk, turn('over'), sunk, turn('over')] : [sunk]
}
