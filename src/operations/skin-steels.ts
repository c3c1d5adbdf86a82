import type { PieceSolid } from '#piece'
import { type Billet, type Build, type Densities, UNWEIGHED, volumesOf, worked } from '#billet'
import { groundShares } from './ground-shares.ts'
import { stockVolume } from './stock-volume.ts'

/** How thick a skin comes off a shaped bar: what is left on every face before and after, m. */
export interface SkinOff {
  readonly from: number
  readonly to: number
}

/**
 * The build of a shaped bar whose skin has come off, `volume` left: in the skin of a bevel the outer
 * layers are more than their share, so the two shapes are counted in the bar they were ground from
 * and the difference taken. Where that bar is not known all steels go alike.
 */
export function buildWithout(
  bar: Billet,
  piece: PieceSolid | undefined,
  off: SkinOff,
  volume: number,
  densities: Densities,
): Build {
  const build = bar.build.form === 'worked' ? bar.build : worked('ground to shape', bar.build)
  if (!piece || !bar.groundFrom || densities === UNWEIGHED || off.to < -1e-3) return build
  const { groundFrom } = bar
  const plain = piece.volume + piece.features.reduce((sum, f) => sum + f.volume, 0)
  const at = (leave: number) => {
    const whole = plain + stockVolume(piece, leave)
    return { whole, shares: groundShares(groundFrom.build, groundFrom.size, piece, leave) }
  }
  const [before, after] = [at(off.from), at(off.to)]
  const taken = before.whole - after.whole
  if (!(taken > 0)) return build
  const left = Object.entries(volumesOf(bar)).map(([steel, had]) => {
    const gone =
      (before.shares[steel] ?? 0) * before.whole - (after.shares[steel] ?? 0) * after.whole
    // Features made since have taken some of the skin with them: what really goes is shared out alike.
    return [
      steel,
      Math.min(had, Math.max(0, had - (gone * (bar.volume - volume)) / taken)),
    ] as const
  })
  const sum = left.reduce((total, [, v]) => total + v, 0)
  return { ...build, shares: Object.fromEntries(left.map(([steel, v]) => [steel, v / sum])) }
}
