import type { Basis } from '../estimate.ts'

/** Pressure over flow stress for dies that shut the metal in, least to most. */
export interface ClosedDieFactor {
  readonly low: number
  readonly value: number
  readonly high: number
  readonly basis: Basis
}

const groover: Basis = {
  law: 'Groover table 18.1, shape factor of impression dies',
  sources: ['GRO'],
  standing: 'read',
}

/** Shape factors Kf; the ranges without flash and with flash by Kalpakjian are from memory. */
export const closedDieFactors = {
  'simple, no flash': {
    low: 3,
    value: 4,
    high: 5,
    basis: { law: 'closed die, simple, no flash', sources: ['memory'], standing: 'from memory' },
  },
  'simple, with flash': { low: 5, value: 6, high: 8, basis: groover },
  'complex, with flash': { low: 8, value: 8, high: 12, basis: groover },
  'very complex, with flash': { low: 8, value: 10, high: 12, basis: groover },
  coining: { low: 5, value: 6, high: 8, basis: groover },
  'complex, flashless': { low: 6, value: 8, high: 10, basis: groover },
} as const satisfies Record<string, ClosedDieFactor>

export type ClosedDie = keyof typeof closedDieFactors

/** Force (N) to fill a closed die: factor × flow stress (Pa) × plan area (m²). */
export function closedDieForce(die: ClosedDie, flowStress: number, area: number) {
  const { low, value, high, basis } = closedDieFactors[die]
  const ideal = flowStress * area
  return { low: low * ideal, value: value * ideal, high: high * ideal, basis }
}
