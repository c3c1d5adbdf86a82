import type { Build } from '#billet'
import { timesOf } from './layer-records.ts'
import { type Metal, type Pile, meanCarbon } from '../metal/metal.ts'
import type { Treat } from './steel-records.ts'

/** A pile of sheets as it was laid, and what has become of each: all that came of a sheet, wherever it lies now. */
export interface PileRecord extends Pile {
  /** The bar in whose stack it was laid. */
  readonly bar: string
  /** wt% of each sheet, low to high; left out where nothing of it is followed. */
  readonly carbon: readonly (number | undefined)[]
  /** wt% between the leanest and the richest piece of the sheet of which they lie furthest apart. */
  readonly apart: number
  /** HRC of each after the last temper, at edges and near the faces: of the finished piece alone. */
  readonly hardness?: readonly (number | undefined)[]
}

/** A bar after one of its steps. */
export interface PileMoment {
  readonly bar: string
  /** Step of that bar, 0 first. */
  readonly index: number
  readonly piles: readonly PileRecord[]
}

interface Bar {
  readonly bar: string
}

interface Sum {
  carbon: number
  metal: number
  lowest: number
  highest: number
}

/** Every pile of which there is metal. */
export function pileRecords(metal: Metal, build: Build): PileRecord[] {
  const times = timesOf(build)
  const found = new Map<string, { readonly of: Pile & Bar; readonly sums: (Sum | undefined)[] }>()
  for (const [i, pack] of metal.entries())
    for (const ply of pack) {
      if (!ply.sheet) continue
      const { pile, place } = ply.sheet
      const key = [ply.bar, pile.step, ...pile.steels].join('\n')
      const known = found.get(key) ?? { of: { ...pile, bar: ply.bar }, sums: [] }
      found.set(key, known)
      const carbon = meanCarbon(ply)
      const weight = ply.thickness * (times[i] ?? 1)
      const sum = (known.sums[place] ??= { carbon: 0, metal: 0, lowest: carbon, highest: carbon })
      sum.carbon += carbon * weight
      sum.metal += weight
      sum.lowest = Math.min(sum.lowest, carbon)
      sum.highest = Math.max(sum.highest, carbon)
    }
  return [...found.values()].map(({ of, sums }) => ({
    ...of,
    carbon: of.steels.map((_, place) => {
      const sum = sums[place]
      return sum && sum.metal > 0 ? sum.carbon / sum.metal : undefined
    }),
    apart: Math.max(0, ...sums.filter((s) => s !== undefined).map((s) => s.highest - s.lowest)),
  }))
}

/** How hard each sheet comes out at the carbon it has. */
export function hardenPiles(piles: readonly PileRecord[], treat: Treat): PileRecord[] {
  return piles.map((pile) => ({
    ...pile,
    hardness: pile.carbon.map(
      (carbon, i) =>
        (carbon === undefined ? undefined : treat(pile.steels[i]!, carbon, 'thin'))?.tempered.value,
    ),
  }))
}
