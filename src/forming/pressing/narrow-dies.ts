/**
 * Opposed smooth flat dies narrower than the height (h/L > 1) on a bar that reaches beyond them.
 * The slip-line net between two equal fans is known in Bessel functions: on the axis of symmetry
 * the height reached at fan angle θ is h/L = I0(2θ) + ∫I0, and Hencky's rule with no pull on the
 * bar gives p/2k = 1 + (4/h)∫θ dy. Past h/L 8.72 the dies only indent: p/2k = 1 + π/2.
 */

function besselI0(x: number): number {
  let [term, sum] = [1, 1]
  for (let k = 1; k < 40; k++) {
    term *= ((x / 2) * (x / 2)) / (k * k)
    sum += term
  }
  return sum
}

function besselI1(x: number): number {
  let term = x / 2
  let sum = term
  for (let k = 1; k < 40; k++) {
    term *= ((x / 2) * (x / 2)) / (k * (k + 1))
    sum += term
  }
  return sum
}

/** ∫₀^θ w(t)(I0(2t) + I1(2t)) dt by Simpson's rule. */
function along(theta: number, weight: (t: number) => number): number {
  const parts = 40
  const f = (t: number) => weight(t) * (besselI0(2 * t) + besselI1(2 * t))
  let sum = f(0) + f(theta)
  for (let i = 1; i < parts; i++) sum += (i % 2 === 1 ? 4 : 2) * f((theta * i) / parts)
  return (sum * theta) / parts / 3
}

/** h/L whose field reaches the axis at fan angle θ. */
export function heightAtFan(theta: number): number {
  return 1 + 2 * along(theta, () => 1)
}

function pressureAtFan(theta: number): number {
  return 1 + (4 * along(theta, (t) => t)) / heightAtFan(theta)
}

/** Hill's flat punch on a deep body, p/2k (from memory, high confidence). */
export const flatPunch = 1 + Math.PI / 2

/** Mean pressure over 2k. `slenderness` is h/L; at or below 1 the metal yields at 2k. */
export function narrowDies(slenderness: number): number {
  if (slenderness <= 1) return 1
  if (slenderness >= 9) return flatPunch
  let [low, high] = [0, 1.5]
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high)
    if (heightAtFan(middle) < slenderness) low = middle
    else high = middle
  }
  return Math.min(flatPunch, pressureAtFan(0.5 * (low + high)))
}
