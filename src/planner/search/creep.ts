import type { Heat } from '#operations'
import { diffuseCarbon } from '#metallurgy'

/** Time a bar is near its heat in one warming besides the soak, s (common practice: some three minutes). */
const NEAR_HEAT = 180
/** Below this carbon hardly moves in the time of a forging, K. */
const STIRS = 1073
/** Carbon at which it is taken to move, wt%: between a blade steel and its nickel partner. */
const BETWEEN = 0.85

const known = new Map<number, number>()

function mobility(temperature: number): number {
  let d = known.get(temperature)
  if (d === undefined) known.set(temperature, (d = diffuseCarbon(BETWEEN, temperature).value))
  return d
}

/** Σ D·t of carbon over some heats, m². */
export function carbonCreep(heats: readonly Heat[]): number {
  return heats.reduce(
    (sum, { count, temperature, soak }) =>
      temperature < STIRS ? sum : sum + count * (soak + NEAR_HEAT) * mobility(temperature),
    0,
  )
}

/**
 * Share of the first difference in carbon that layers of this thickness keep: of a row of like
 * layers the first harmonic is left, exp(−π² D·t ÷ thickness²) (Crank's plane-sheet series; exact
 * for D constant, the longest-lived part of it otherwise).
 */
export function carbonKept(creepOverThicknessSquared: number): number {
  return Math.exp(-(Math.PI ** 2) * creepOverThicknessSquared)
}
