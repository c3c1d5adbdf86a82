/**
 * Mean pressure over 2k for a block pressed in plane strain. `ratio` is L/h: die contact length in
 * the direction the metal flows, over height. 2k = 2Y/√3 (von Mises).
 */

/** Coulomb friction sliding everywhere (SLAB, read). Holds while mu p ≤ k. */
export function slabCoulomb(mu: number, ratio: number): number {
  const z = mu * ratio
  return z < 1e-9 ? 1 + z / 2 : Math.expm1(z) / z
}

/** Friction shear m k everywhere (HC, read for m = 1; the extract prints H/L for L/h). */
export function slabSticking(m: number, ratio: number): number {
  return 1 + (m * ratio) / 4
}

/** Coulomb near the edges, sticking where mu p would pass k (worked out from the slab equations). */
export function slabMixed(mu: number, ratio: number): number {
  if (mu <= 0) return 1
  if (mu >= 0.5) return slabSticking(1, ratio)
  const half = ratio / 2
  const sliding = Math.log(1 / (2 * mu)) / (2 * mu)
  if (sliding >= half) return slabCoulomb(mu, ratio)
  const stuck = half - sliding
  const edge = Math.expm1(2 * mu * sliding) / (2 * mu)
  return (edge + stuck / (2 * mu) + (stuck * stuck) / 2) / half
}

/**
 * Mean over the height of √(1 − (m ζ)²): how much of the yield is left for pushing once the metal
 * also carries the friction shear. It is what the slab method leaves out (Prandtl's cycloids).
 */
export function shearShare(m: number): number {
  if (m < 1e-4) return 1 - (m * m) / 6
  return 0.5 * (Math.sqrt(Math.max(0, 1 - m * m)) + Math.asin(Math.min(1, m)) / m)
}

/** Two rigid wedges stuck to the dies, sliding on two crossed planes: an upper bound for any friction. */
export function crossedPlanes(ratio: number): number {
  return 0.5 * (ratio + 1 / ratio)
}

/**
 * Best estimate for a block whose whole face is under the dies: Prandtl's field for the friction
 * that the metal would choose up to m, never below homogeneous pressing, never above crossed planes
 * (which at L/h 1 is the exact slip-line value 2k). A finite-element program gives the same within
 * 10 % (check/); the plain slab method is up to a quarter high.
 */
export function pressedBlock(m: number, ratio: number): number {
  const factor = Math.min(1, Math.max(0, m))
  let best = 1
  for (let i = 0; i <= 40; i++) {
    const less = (factor * i) / 40
    best = Math.max(best, shearShare(less) + (less * ratio) / 4)
  }
  return ratio >= 1 ? Math.min(best, crossedPlanes(ratio)) : Math.min(best, 1)
}
