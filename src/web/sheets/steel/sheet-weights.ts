import type { LaidSteel } from '#desk'
import type { PileRecord, Treated } from '#job'
import { type SheetWeights, type Stack, stacksOf } from '#pattern'

/** Full scale of what the card averages as shares of one. */
export const MOST_CARBON = 2
export const MOST_HARDNESS = 70

/** What the heats leave in each sheet of the metal that is drawn, by stack and sheet as the card has them. */
export interface SheetValues {
  /** Shares of MOST_CARBON, and of MOST_HARDNESS; empty where nothing is known. */
  readonly carbon: SheetWeights
  readonly hardness: SheetWeights
  /** wt% of the leanest and the richest sheet here, and between pieces of one sheet at most. */
  readonly leanest: number
  readonly richest: number
  readonly apart: number
  /** Some of it does not harden: it counts as nought. */
  readonly someSoft: boolean
  /** wt% of every sheet at any time of the route: a scale that holds still while the route is gone through. */
  readonly everCarbon: readonly number[]
  readonly everHardness: readonly number[]
}

export function sheetValues(
  { origin, place: { bar, index } }: Pick<LaidSteel, 'origin' | 'place'>,
  { piles, steels }: Pick<Treated, 'piles' | 'steels'>,
): SheetValues {
  const last = piles.at(-1)?.piles ?? []
  const now = piles.find((m) => m.bar === bar && m.index === index)?.piles ?? []
  const stacks = stacksOf(origin)
  // What was lost sight of has the mean of its steel.
  const mean = (name: string) => {
    const own = steels.filter((s) => s.steel === name)
    const share = own.reduce((sum, s) => sum + s.share, 0)
    return share > 0 ? own.reduce((sum, s) => sum + s.carbon.value * s.share, 0) / share : 0
  }
  const hard = (name: string) => steels.find((s) => s.steel === name)?.tempered?.value
  const perSheet = <T>(
    among: readonly PileRecord[],
    of: (pile: PileRecord) => readonly T[] | undefined,
    lost: (steel: string) => T,
  ) =>
    stacks.map((stack) => {
      const pile = among.find((p) => isPileOf(p, stack))
      const values = pile && of(pile)
      return stack.layers.map((layer, i) => values?.[i] ?? lost(layer.steel))
    })
  const carbon = perSheet(now, (p) => p.carbon, mean)
  const hardness = perSheet(last, (p) => p.hardness, hard)
  const known = hardness.flat().filter((h) => h !== undefined)
  const there = now.filter((p) => stacks.some((stack) => isPileOf(p, stack)))
  const ever = piles.flatMap((m) => m.piles)
  return {
    carbon: carbon.map((of) => of.map((c) => (c ?? 0) / MOST_CARBON)),
    hardness: known.length > 0 ? hardness.map((of) => of.map((h) => (h ?? 0) / MOST_HARDNESS)) : [],
    leanest: Math.min(...carbon.flat().map((c) => c ?? 0)),
    richest: Math.max(...carbon.flat().map((c) => c ?? 0)),
    apart: Math.max(0, ...there.map((p) => p.apart)),
    someSoft: known.length < hardness.flat().length,
    everCarbon: ever.flatMap((p) => p.carbon.filter((c) => c !== undefined)),
    everHardness: known,
  }
}

function isPileOf(pile: PileRecord, { bar, step, layers }: Stack): boolean {
  return (
    pile.bar === bar &&
    pile.step === step &&
    pile.steels.length === layers.length &&
    layers.every((layer, i) => layer.steel === pile.steels[i])
  )
}
