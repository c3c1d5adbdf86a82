import { solveRising } from '../estimate.ts'

export interface WedgeField {
  /** Fan angle ψ, rad. */
  readonly fan: number
  /** Mean pressure on the faces over 2k. */
  readonly pressure: number
  /** Contact length of one face over depth. */
  readonly contactOverDepth: number
  /** Force per length of wedge over (2k × depth): 2 (p/2k)(l/c) sin α. */
  readonly force: number
}

/**
 * Smooth wedge driven into soft metal, Hill, Lee and Tupper (from memory, high confidence):
 * cos(2α − ψ) = cos ψ / (1 + sin ψ), p = 2k(1 + ψ), depth/l = cos α − sin(α − ψ).
 * `semiAngle` in rad, 0.5° to a right angle. A right angle is the flat punch, whose contact does not
 * grow with depth; it is read at 89.9° so that the ratio stays a number.
 */
export function indentWithWedge(semiAngle: number): WedgeField {
  const a = Math.min((89.9 * Math.PI) / 180, Math.max((0.5 * Math.PI) / 180, semiAngle))
  const left = (psi: number) => Math.cos(2 * a - psi) - Math.cos(psi) / (1 + Math.sin(psi))
  const fan = solveRising(left, 0, a)
  const contactOverDepth = 1 / (Math.cos(a) - Math.sin(a - fan))
  const pressure = 1 + fan
  return { fan, pressure, contactOverDepth, force: 2 * pressure * contactOverDepth * Math.sin(a) }
}

/** Pressure of a flat punch over Y, von Mises; Tresca gives 2.5708 (from memory, high confidence). */
export const flatPunchOverYield = (2 / Math.sqrt(3)) * (1 + Math.PI / 2)
