/** The one tolerance: two lengths (m) closer than this are the same length. Set below any shop's reach, above rounding. */
export const SAME_LENGTH = 1e-9

/** Relative tolerance for quantities that are conserved (mass, volume). */
export const CONSERVED = 1e-9

export function sameLength(a: number, b: number): boolean {
  return Math.abs(a - b) <= SAME_LENGTH
}
