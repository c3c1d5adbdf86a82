import { lowestPoint } from '../estimate.ts'

export interface Ring {
  readonly outerRadius: number
  readonly innerRadius: number
  readonly height: number
}

/** Power of the no-bulge field with its neutral circle at radius n (squared: s; may be negative). */
function power(ring: Ring, m: number, s: number): number {
  const { outerRadius: outer, innerRadius: inner, height: h } = ring
  const spin = (r: number) => {
    // √3 ∫ √(1 + s²/3r⁴) 2 r dr, for either sign of s.
    const size = Math.abs(s)
    if (size < 1e-14 * outer * outer) return Math.sqrt(3) * r * r
    const v = Math.sqrt(3 * r ** 4 + size * size)
    return v - size * Math.log((size + v) / (r * r))
  }
  const bulk = (spin(outer) - spin(inner)) / Math.sqrt(3)
  const slip = (from: number, to: number) => Math.abs((to ** 3 - from ** 3) / 3 - s * (to - from))
  const n = s > 0 ? Math.sqrt(s) : 0
  const rubbed = n > inner && n < outer ? slip(inner, n) + slip(n, outer) : slip(inner, outer)
  return bulk + ((2 * m) / (Math.sqrt(3) * h)) * rubbed
}

/** One small step: the ring after its height has gone from h to h − dh. */
function step(ring: Ring, m: number, dh: number): Ring {
  const { outerRadius: outer, innerRadius: inner, height } = ring
  const s = lowestPoint((x) => power(ring, m, x), -2 * outer * outer, outer * outer, 60)
  const moved = (r: number) => r + (dh / (2 * height)) * (r - s / r)
  const innerAfter = Math.max(1e-6 * outer, moved(inner))
  // The outer radius from constant volume, so that nothing is lost over many steps.
  const volume = (outer * outer - inner * inner) * height
  const heightAfter = height - dh
  return {
    outerRadius: Math.sqrt(volume / heightAfter + innerAfter * innerAfter),
    innerRadius: innerAfter,
    height: heightAfter,
  }
}

/**
 * Decrease of the bore (share of its first diameter; negative when it opens) of a ring pressed by
 * `reduction` of its height with friction factor m: the way to measure m with a bit of tube.
 * Avitzur's parallel-sided field, least power at each step.
 */
export function ringTest(ring: Ring, m: number, reduction: number, steps = 200): number {
  const dh = (reduction * ring.height) / steps
  let now = ring
  for (let i = 0; i < steps; i++) now = step(now, m, dh)
  return 1 - now.innerRadius / ring.innerRadius
}
