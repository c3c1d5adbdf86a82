import { type Billet, type Build, type Densities, volumesOf, worked } from '#billet'
import { contentReader } from './content.ts'
import { lossBetween } from './fire.ts'
import type { Loss, LossCause } from './operation.ts'

/** Metal cut out of a bar from one of its two flat faces. */
export interface Cut {
  readonly face: 'top' | 'bottom'
  readonly depth: number
  /** Volume in all, m³. */
  readonly volume: number
  /** Width of the cut at a depth below the face, in any unit: how the volume lies over the depth. */
  widthAt(depth: number): number
}

/** Slices over the depth of a cut; the volume is exact, only its sharing among layers is sliced. */
const SLICES = 240

/** The bar with metal cut out: box unchanged, layers it went through counted one by one. */
export function cutOut(
  bar: Billet,
  cuts: readonly Cut[],
  by: string,
  cause: LossCause,
  densities: Densities,
): { readonly after: Billet; readonly loss: Loss } {
  const left: Record<string, number> = { ...volumesOf(bar) }
  const read = contentReader(bar.build)
  for (const cut of cuts) {
    const widths = Array.from({ length: SLICES }, (_, i) =>
      cut.widthAt(((i + 0.5) / SLICES) * cut.depth),
    )
    const whole = widths.reduce((sum, w) => sum + w, 0)
    widths.forEach((width, i) => {
      const [a, b] = [i, i + 1].map((k) => ((k / SLICES) * cut.depth) / bar.size.height)
      const z: readonly [number, number] = cut.face === 'bottom' ? [a, b] : [1 - b, 1 - a]
      for (const [steel, share] of Object.entries(read({ z })))
        left[steel] -= share * cut.volume * (width / whole)
    })
  }
  const after = withVolumes({ ...bar, shape: 'cut' }, left, by)
  return { after, loss: lossBetween(bar, after, cause, densities) }
}

/** The bar holding these volumes of its steels, its layers no longer whole. */
export function withVolumes(
  bar: Billet,
  volumes: Readonly<Record<string, number>>,
  by: string,
  of: Build = bar.build,
): Billet {
  const kept = Object.entries(volumes).map(([steel, v]) => [steel, Math.max(0, v)] as const)
  const volume = kept.reduce((sum, [, v]) => sum + v, 0)
  const shares = Object.fromEntries(kept.map(([steel, v]) => [steel, v / volume]))
  return { ...bar, volume, build: { ...worked(by, of), shares } }
}
