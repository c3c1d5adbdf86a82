/**
 * Opposed smooth flat dies narrower than the height (h/L > 1) on a bar that reaches beyond them.
 * The slip-line net between two equal fans is known in Bessel functions: on the axis of symmetry
 * the height reached at fan angle θ is h/L = I0(2θ) + ∫I0, and Hencky's rule with no pull on the
 * bar gives p/2k = 1 + (4/h)∫θ dy. Past h/L 8.72 the dies only indent: p/2k = 1 + π/2.
 */

function besselI0(x: number): number {
  let [term, sum] = [1, 1]
  for (let k = 1; k < 25; k++) {
    term *= ((x / 2) * (x / 2)) / (k * k)
    sum += term
  }
  return sum
}

function besselI1(x: number): number {
  let term = x / 2
  let sum = term
  for (let k = 1; k < 25; k++) {
    term *= ((x / 2) * (x / 2)) / (k * (k + 1))
    sum += term
  }
  return sum
}

/** Fan angles the field is worked out at; 1.4 rad is past the indentation limit. */
const steps = 700
const last = 1.4

/** h/L and p/2k at each fan angle, by Simpson's rule from the angle before. */
const field = workOutField()

function workOutField(): {
  readonly height: readonly number[]
  readonly pressure: readonly number[]
} {
  const along = (t: number) => besselI0(2 * t) + besselI1(2 * t)
  const [height, pressure] = [[1], [1]]
  let [plain, weighted] = [0, 0]
  for (let i = 1; i <= steps; i++) {
    const [a, b] = [((i - 1) * last) / steps, (i * last) / steps]
    const m = 0.5 * (a + b)
    const [fa, fm, fb] = [along(a), along(m), along(b)]
    plain += ((fa + 4 * fm + fb) * (b - a)) / 6
    weighted += ((a * fa + 4 * m * fm + b * fb) * (b - a)) / 6
    height.push(1 + 2 * plain)
    pressure.push(1 + (4 * weighted) / (1 + 2 * plain))
  }
  return { height, pressure }
}

/** Hill's flat punch on a deep body, p/2k (from memory, high confidence). */
export const flatPunch = 1 + Math.PI / 2

/** Mean pressure over 2k. `slenderness` is h/L; at or below 1 the metal yields at 2k. */
export function narrowDies(slenderness: number): number {
  if (!(slenderness > 1)) return 1
  const { height, pressure } = field
  if (slenderness >= height[steps]!) return flatPunch
  let [low, high] = [0, steps]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (height[middle]! < slenderness) low = middle
    else high = middle
  }
  const share = (slenderness - height[low]!) / (height[high]! - height[low]!)
  return Math.min(flatPunch, pressure[low]! + share * (pressure[high]! - pressure[low]!))
}
