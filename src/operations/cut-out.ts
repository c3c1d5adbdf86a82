import { type Billet, type Build, type Densities, UNWEIGHED, volumesOf, worked } from '#billet'
import { contentMeter } from './content.ts'
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
  const left = volumesLeft(bar, cuts, densities === UNWEIGHED)
  const after = withVolumes({ ...bar, shape: 'cut' }, left, by)
  return { after, loss: lossBetween(bar, after, cause, densities) }
}

/** Volume of each steel left; of a bar that is not weighed the cut takes its steels alike. */
function volumesLeft(
  bar: Billet,
  cuts: readonly Cut[],
  alike: boolean,
): Readonly<Record<string, number>> {
  const were = volumesOf(bar)
  if (alike) {
    const left = 1 - cuts.reduce((sum, cut) => sum + cut.volume, 0) / bar.volume
    return Object.fromEntries(Object.entries(were).map(([steel, v]) => [steel, v * left]))
  }
  const { steels, meter } = contentMeter(bar.build)
  const gone = new Float64Array(steels.length)
  const box = new Float64Array(6).fill(NaN)
  for (const cut of cuts) {
    const widths = Array.from({ length: SLICES }, (_, i) =>
      cut.widthAt(((i + 0.5) / SLICES) * cut.depth),
    )
    const whole = widths.reduce((sum, w) => sum + w, 0)
    widths.forEach((width, i) => {
      const [a, b] = [i, i + 1].map((k) => ((k / SLICES) * cut.depth) / bar.size.height)
      box[4] = cut.face === 'bottom' ? a : 1 - b
      box[5] = cut.face === 'bottom' ? b : 1 - a
      meter(box, cut.volume * (width / whole), gone)
    })
  }
  return Object.fromEntries(steels.map((steel, s) => [steel, (were[steel] ?? 0) - gone[s]]))
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
