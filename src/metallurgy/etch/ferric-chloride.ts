import { hold } from '../estimate.ts'

/** Stock: 40 % by mass (NUMET, read), density between 1.42 and 1.46: 1.43 kg/L taken. */
const stockGramsPerLitre = 0.4 * 1430
const ferricChloride = 162.204
const iron = 55.845
const bicarbonate = 84.007

export interface Bath {
  /** Parts of water to one part of stock, by volume. */
  readonly water: number
  /** g of FeCl3 in a litre of bath. */
  readonly gramsPerLitre: number
  readonly molesPerLitre: number
  /** g of iron a litre takes up before it is spent: 2 FeCl3 + Fe → 3 FeCl2. */
  readonly ironPerLitre: number
}

/** A bath of one part stock to `water` parts of water. */
export function diluteChloride(water: number): Bath {
  const w = hold(water, [0, 1000])
  const gramsPerLitre = stockGramsPerLitre / (1 + w)
  const molesPerLitre = gramsPerLitre / ferricChloride
  return { water: w, gramsPerLitre, molesPerLitre, ironPerLitre: (molesPerLitre / 2) * iron }
}

/** Stock and water, m³, for a bath of this volume (m³). Acid into water, never water into acid. */
export function mixBath(
  volume: number,
  water: number,
): { readonly stock: number; readonly water: number } {
  const v = hold(volume, [0, 1e3])
  const w = hold(water, [0, 1000])
  return { stock: v / (1 + w), water: (v * w) / (1 + w) }
}

/** How far a bath is spent, 0 fresh to 1 dead, by the iron it has taken up (kg in m³). */
export function spentShare(bath: Bath, ironTaken: number, volume: number): number {
  // g/L and kg/m³ are the same number
  return volume > 0 ? hold(ironTaken / volume / bath.ironPerLitre, [0, 1]) : 1
}

/**
 * Bicarbonate of soda, kg, that takes up all the chloride's acid in a bath of this volume (m³):
 * three of NaHCO3 to one of FeCl3, the most it can want. For spent baths the same: the iron stays
 * in the sludge, which is metal-bearing waste and never goes down a drain (MG415, read).
 */
export function sodaFor(bath: Bath, volume: number): number {
  return bath.molesPerLitre * 1000 * hold(volume, [0, 1e3]) * 3 * (bicarbonate / 1000)
}

/** After the etch, in order (ETCH4, read; common practice). */
export const afterEtch = [
  'Rinse under running water.',
  'Neutralise the piece: bicarbonate of soda, ammonia window cleaner or trisodium phosphate.',
  'Rinse again till no chloride is left: what stays rusts later.',
  'Dry warm and oil at once.',
] as const
