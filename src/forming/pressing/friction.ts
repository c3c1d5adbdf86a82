/**
 * Wanheim and Bay's relation between the friction factor m (shear = m k) and the Coulomb
 * coefficient at high pressure (PYR-FRI, read secondary): mu never passes 0.389, where m = 1.
 */
export function coulombOf(m: number): number {
  const factor = Math.min(1, Math.max(0, m))
  return factor / (1 + Math.PI / 2 + Math.acos(factor) + Math.sqrt(1 - factor * factor))
}

/** The greatest Coulomb coefficient the relation allows: sticking. */
export const stickingCoulomb = 1 / (1 + Math.PI / 2)

/** The friction factor m of a Coulomb coefficient, by halving; 1 (sticking) above 0.389. */
export function factorOf(mu: number): number {
  if (mu >= stickingCoulomb) return 1
  let [low, high] = [0, 1]
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high)
    if (coulombOf(middle) < mu) low = middle
    else high = middle
  }
  return 0.5 * (low + high)
}

/** Hot dry scaled steel on dies, friction factor m: from memory, medium confidence. */
export const hotDryFactor = { value: 0.85, low: 0.7, high: 1 } as const
