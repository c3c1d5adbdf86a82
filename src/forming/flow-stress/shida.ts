import { type Composition, percent } from '#steel'
import type { State } from './state.ts'

/** The temperature (K) where Shida's law passes from austenite to the two-phase branch. */
export function shidaBranch(carbon: number): number {
  return (950 * (carbon + 0.41)) / (carbon + 0.32)
}

function hot(c: number, t: number) {
  return {
    deformed: 0.28 * Math.exp(5 / t - 0.01 / (c + 0.05)),
    m: (-0.019 * c + 0.126) * t + (0.075 * c - 0.05),
  }
}

function cool(c: number, t: number) {
  const g = 30 * (c + 0.9) * (t - (0.95 * (c + 0.49)) / (c + 0.42)) ** 2 + (c + 0.06) / (c + 0.09)
  return {
    deformed: 0.28 * g * Math.exp((c + 0.32) / (0.19 * (c + 0.41)) - 0.01 / (c + 0.05)),
    m: (0.081 * c - 0.154) * t + (-0.019 * c + 0.207) + 0.027 / (c + 0.32),
  }
}

/** Stress at strain 0.2 and 10 /s (kgf/mm²) and the rate exponent m. */
function branch(carbon: number, temperature: number) {
  return (temperature >= shidaBranch(carbon) ? hot : cool)(carbon, temperature / 1000)
}

function hardening(carbon: number, strain: number): number {
  const n = 0.41 - 0.07 * carbon
  return 1.3 * (strain / 0.2) ** n - 0.3 * (strain / 0.2)
}

function meanHardening(carbon: number, strain: number): number {
  const n = 0.41 - 0.07 * carbon
  return (1.3 / (n + 1)) * (strain / 0.2) ** n - 0.15 * (strain / 0.2)
}

/**
 * Shida 1968/69: uniaxial compression stress at `strain`, Pa (PYR-LEE and ROLLJS, two copies that
 * agree; read secondary). No factor 2/√3 for plane strain is in it.
 */
export function shida(carbon: number, { temperature, strain, rate }: State): number {
  const { deformed, m } = branch(carbon, temperature)
  return 9.80665e6 * deformed * hardening(carbon, strain) * (rate / 10) ** m
}

/** The mean of Shida's stress over the strain 0 to `strain`, integrated exactly. */
export function shidaMean(carbon: number, { temperature, strain, rate }: State): number {
  const { deformed, m } = branch(carbon, temperature)
  return 9.80665e6 * deformed * meanHardening(carbon, strain) * (rate / 10) ** m
}

/** Lee 2002: Shida's law carried to high rates, up to about 3000 /s (PYR-LEE, read secondary). */
export function leeHighRate(carbon: number, state: State): number {
  const { m } = branch(carbon, state.temperature)
  const { rate } = state
  const tail = (rate / 100) ** (m / 2.4) * (rate / 1000) ** (m / 15)
  return shida(carbon, state) * tail
}

/** Carbon equivalent one implementation puts in place of carbon for low-alloy steel (PYR-LEE). */
export function carbonEquivalent(composition: Composition): number {
  const of = (element: Parameters<typeof percent>[1]) => percent(composition, element)
  return of('C') + of('Mn') / 6 + (of('Cr') + of('Mo') + of('V')) / 5 + (of('Cu') + of('Ni')) / 15
}

export const shidaRange = {
  carbon: [0.07, 1.2],
  temperature: [973.15, 1473.15],
  strain: [0, 0.7],
  rate: [0.1, 100],
} as const
