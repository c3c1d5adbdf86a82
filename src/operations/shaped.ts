import type { Problem } from '#problem'
import { boxVolume } from '#geometry'
import { printQuantity } from '#units'
import type { PieceSolid } from '#piece'
import type { Billet } from '#billet'
import { type Taken, lossBetween } from './fire.ts'
import type { LossCause, Smithy } from './operation.ts'
import { buildWithout } from './skin-steels.ts'
import { stockVolume } from './stock-volume.ts'

export { stockVolume }

/** Whether the bar has been ground to the piece, with some stock left on its faces. */
export function isShaped(bar: Billet): boolean {
  return bar.made?.includes('shape') ?? false
}

/** Whether the bar already has the piece's outline: forged to it, or bent to its curve. */
export function isOutlined(bar: Billet): boolean {
  const { build, made } = bar
  return (
    (made?.includes('outline') ?? false) || (build.form === 'worked' && build.by.startsWith('bent'))
  )
}

/** Whether its sizes are the piece's, so that a longer stack would not make it longer. */
export function isFixed(bar: Billet): boolean {
  return bar.made?.some((what) => what === 'shape' || what === 'outline') ?? false
}

/** The bar with one more thing made in it. */
export function withMade(bar: Billet, ...what: readonly string[]): Billet {
  return { ...bar, made: [...(bar.made ?? []), ...what.filter((w) => !bar.made?.includes(w))] }
}

/** Volume of the features not yet made, m³. */
export function featuresToCome(bar: Billet, piece: PieceSolid): number {
  return piece.features
    .filter((feature) => !bar.made?.includes(feature.kind))
    .reduce((sum, feature) => sum + feature.volume, 0)
}

/** Thickness left on each face of a shaped bar over the finished piece, m; negative where it is short. */
export function stockLeft(bar: Billet, piece: PieceSolid): number {
  return Math.min(
    ...(['length', 'width', 'height'] as const).map(
      (side) => (bar.size[side] - piece.size[side]) / 2,
    ),
  )
}

/** Takes the same thickness off the whole skin of a shaped bar, the steels that lie in it. */
export function skin(
  bar: Billet,
  depth: number,
  cause: LossCause,
  { densities, piece }: Smithy,
): Taken | undefined {
  if (depth === 0) return { after: bar, loss: { cause, masses: {} }, lost: 0 }
  const left = piece ? stockLeft(bar, piece) : 0
  const off = piece
    ? stockVolume(piece, left) - stockVolume(piece, left - depth)
    : boxSurface(bar) * depth
  const { length, width, height } = bar.size
  const size = { length: length - 2 * depth, width: width - 2 * depth, height: height - 2 * depth }
  if (!(size.length > 0 && size.width > 0 && size.height > 0)) return undefined
  const volume = Math.min(bar.volume - off, boxVolume(size))
  if (!(volume > 0)) return undefined
  const build = buildWithout(bar, piece, { from: left, to: left - depth }, volume, densities)
  const after: Billet = { ...bar, size, volume, build }
  return { after, loss: lossBetween(bar, after, cause, densities), lost: 0 }
}

export function boxSurface({ size: { length, width, height } }: Billet): number {
  return 2 * (length * width + width * height + height * length)
}

/** More has been burnt off a shaped bar than was left to come off. */
export function stockBurnt(bar: Billet, piece: PieceSolid | undefined): Problem[] {
  if (!piece || !isShaped(bar)) return []
  const left = stockLeft(bar, piece)
  if (left >= -1e-12) return []
  return [
    {
      at: '',
      what: `the fire takes ${printQuantity(-left, 'length')} more off each face than was left on it`,
      why: 'the piece comes out of the fire smaller than it is drawn',
      try: [
        'leave more on each face when grinding to shape',
        'coat the blade or run the fire richer, and enter less scale',
      ],
    },
  ]
}

/** A step that is done to the finished piece, and there is none. */
export function noPiece(doing: string): Problem {
  return {
    at: '',
    what: `there is no piece ${doing}`,
    why: 'its shape comes from the finished piece the job describes',
    try: ['describe the piece in the job', 'leave this step out'],
  }
}
