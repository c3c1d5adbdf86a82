import { lowestPoint } from '../estimate.ts'

/** Mean pressure over Y for a round disc, radius over height `ratio` = R/h. */

/** Coulomb friction, exact mean of the slab solution (from memory, high confidence). */
export function discCoulomb(mu: number, ratio: number): number {
  const z = 2 * mu * ratio
  if (z < 1e-3) return 1 + z / 3 + (z * z) / 12
  return (2 * (Math.expm1(z) - z)) / (z * z)
}

/** The textbook's straight-line form of it (KALP, read). */
export function discCoulombStraight(mu: number, ratio: number): number {
  return 1 + (2 * mu * ratio) / 3
}

/** Friction shear m k (from memory, high confidence). */
export function discSticking(m: number, ratio: number): number {
  return 1 + (2 * m * ratio) / (3 * Math.sqrt(3))
}

/**
 * Avitzur's upper bound with barrelling, from the field u_r ~ r exp(−b z/T): the least over b, and
 * the b that gives it (worked out here; agrees with the book as remembered).
 */
export function discBarrelled(
  m: number,
  ratio: number,
): { readonly pressure: number; readonly b: number } {
  const power = (b: number) => {
    const x = (b * b * ratio * ratio) / 12
    const bulk = x < 1e-6 ? 1 + x / 4 : (2 * ((1 + x) ** 1.5 - 1)) / (3 * x)
    const rub = b < 1e-9 ? 2 : b / Math.expm1(b / 2)
    return bulk + ((m * ratio) / (3 * Math.sqrt(3))) * rub
  }
  const b = lowestPoint(power, 0, 8)
  return power(b) < power(0) ? { pressure: power(b), b } : { pressure: power(0), b: 0 }
}

/** Shape factor of open-die forging, over Y: 1 + 0.4 mu D/h (GRO, read). */
export function openDieFactor(mu: number, diameter: number, height: number): number {
  return 1 + (0.4 * mu * diameter) / height
}
