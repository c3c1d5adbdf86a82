import { type Composition, percent } from '#steel'
import type { State } from './state.ts'

/**
 * Misaka and Yoshimoto 1967: the mean resistance to deformation over the strain 0 to `strain`,
 * Pa, from drop-hammer tests on plain carbon steel (PYR-MIS, ROLLJS; read secondary).
 */
export function misakaMean(carbon: number, { temperature, strain, rate }: State): number {
  const c = carbon
  const exponent = 0.126 - 1.75 * c + 0.594 * c * c + (2851 + 2968 * c - 1120 * c * c) / temperature
  return 9.80665e6 * Math.exp(exponent) * strain ** 0.21 * rate ** 0.13
}

/**
 * The stress at the end of the strain that the mean law implies: d(strain × mean)/d strain, which
 * for a mean going as strain^0.21 is 1.21 times the mean.
 */
export function misakaAtStrain(carbon: number, state: State): number {
  return 1.21 * misakaMean(carbon, state)
}

export const misakaRange = {
  carbon: [0, 1.2],
  temperature: [1023.15, 1473.15],
  strain: [0, 0.5],
  rate: [30, 200],
} as const

/** Later multiplier of the Misaka law for alloy (from memory, medium confidence). Chromium is not in it. */
export function alloyFactor(composition: Composition): number {
  const of = (element: 'Mn' | 'V' | 'Mo' | 'Ni') => percent(composition, element)
  return 0.916 + 0.18 * of('Mn') + 0.389 * of('V') + 0.191 * of('Mo') + 0.004 * of('Ni')
}
