import type { Size } from '#geometry'
import type { Joined } from '#billet'
import { type Branch, type Movement, type Seat, laid, layoutOf } from '#movement'

/** Solids across the section and up; along the can they are about as long as they are wide. */
const ACROSS = 3

/**
 * Solids standing in powder: boxes in rows, each kind in turn along the can, as large as their share
 * of the metal. Their true shapes (balls, chain, cable) are not told; how they lie is not either.
 * The last part is the powder.
 */
export function solidsInPowder({ parts }: Joined, size: Size): Movement {
  const powder = parts[parts.length - 1]
  const solids = parts.slice(0, -1)
  const matrix = layoutOf(powder.build, size)
  const share = solids.reduce((sum, part) => sum + part.share, 0)
  if (!(share > 0)) return { warps: [], branches: [matrix] }
  // A box fills the same part of its cell each way.
  const fills = Math.cbrt(share)
  const cell = size.width / ACROSS
  const times = Math.max(1, Math.round(size.length / (cell * solids.length)))
  const between = (side: number, each: readonly { part: number; from: Branch }[]): Seat[] => {
    const gap = { side: ((1 - fills) * side) / (each.length + 1), from: matrix }
    return [gap, ...each.flatMap(({ part, from }) => [{ side: part * fills * side, from }, gap])]
  }
  const inRow = Array.from({ length: times }, () =>
    solids.map(({ build, share: own }) => ({
      part: own / share / times,
      from: layoutOf(build, size),
    })),
  ).flat()
  const row = laid('x', between(size.length, inRow))
  const rows = Array.from({ length: ACROSS }, () => ({ part: 1 / ACROSS, from: row }))
  const wall = laid('z', between(size.height, rows))
  const walls = rows.map(({ part }) => ({ part, from: wall }))
  return laid('y', between(size.width, walls))
}
