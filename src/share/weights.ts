import type { Layer } from '#billet'
import { type Cut, type Weighing, weigh } from './weighing.ts'

/**
 * A property of each steel, by name: how light it etches, how high it stands. Or of each sheet of each of several piles,
 * in their order, sheets from the bottom up: what sheets of one steel do not share, as their carbon.
 */
export type Weights = Readonly<Record<string, number>> | SheetWeights
export type SheetWeights = readonly (readonly number[])[]

/** A pile, the `number`th of its kind, by each of the weights, all in the same cells. */
export function weighPile(
  { layers, soft }: { readonly layers: readonly Layer[]; readonly soft?: number },
  weights: readonly Weights[],
  number: number,
  cut?: Cut,
): Weighing[] {
  return weights.map((w) => {
    const ofSheet = isBySheet(w)
      ? (_: unknown, place: number) => w[number]?.[place] ?? 0
      : ({ steel }: Layer) => w[steel] ?? 0
    return weigh(layers, ofSheet, soft, cut)
  })
}

function isBySheet(weights: Weights): weights is SheetWeights {
  return Array.isArray(weights)
}
