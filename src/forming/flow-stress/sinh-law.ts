import { type Composition, percent } from '#steel'
import type { State } from './state.ts'

const gasConstant = 8.3144598
/** 1/MPa; from memory, medium confidence. */
const alpha = 0.01187
/** From memory, medium confidence; n = 5 would lower a 0.8 % C steel by about 4 %. */
const exponent = 4.458

/** Apparent activation energy of hot working, J/mol (Medina and Hernandez 1996; MEDCODE, read). */
export function hotWorkingEnergy(composition: Composition): number {
  const of = (element: Parameters<typeof percent>[1]) => percent(composition, element)
  return (
    267000 -
    2535.52 * of('C') +
    1010 * of('Mn') +
    33620.76 * of('Si') +
    35651.28 * of('Mo') +
    93680.52 * of('Ti') ** 0.5919 +
    70729 * of('Nb') ** 0.5649 +
    31673.46 * of('V')
  )
}

/** Rate compensated by temperature, 1/s: Zener and Hollomon's Z. */
export function zenerHollomon(composition: Composition, { temperature, rate }: State): number {
  return rate * Math.exp(hotWorkingEnergy(composition) / (gasConstant * temperature))
}

export function hotWorkingConstant(composition: Composition): number {
  const { C = 0, Nb = 0 } = composition
  return (12.197 + 65.59 * C - 49.052 * Nb) * Math.exp(7.076e-5 * hotWorkingEnergy(composition))
}

/** The PEAK flow stress of the sinh law, Pa. */
export function sinhPeak(composition: Composition, state: State): number {
  const z = zenerHollomon(composition, state) / hotWorkingConstant(composition)
  return (1e6 * Math.asinh(z ** (1 / exponent))) / alpha
}

/** From memory, medium confidence: low and medium carbon, microalloyed. */
export const sinhRange = { carbon: [0.11, 0.42], temperature: [1123.15, 1423.15] } as const
