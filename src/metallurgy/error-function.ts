/** Complementary error function, 1e-14 relative: series below 2, continued fraction above. */
export function erfc(x: number): number {
  if (x < 0) return 2 - erfc(-x)
  if (x < 2) return 1 - erf(x)
  if (x > 27) return 0
  // Lentz-free backward evaluation of Abramowitz & Stegun 7.1.14
  let f = 0
  for (let k = 120; k >= 1; k--) f = k / 2 / (x + f)
  return Math.exp(-x * x) / (Math.sqrt(Math.PI) * (x + f))
}

/** Error function (Abramowitz & Stegun 7.1.6, all terms positive). */
export function erf(x: number): number {
  if (x < 0) return -erf(-x)
  if (x >= 2) return 1 - erfc(x)
  let term = x
  let sum = x
  for (let n = 1; n < 80 && term > 1e-17 * sum; n++) {
    term *= (2 * x * x) / (2 * n + 1)
    sum += term
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum
}

/** The x with erfc(x) = f, for 0 < f <= 1, by Newton on the logarithm. */
export function inverseErfc(f: number): number {
  if (!(f < 1)) return 0
  if (!(f > 1e-300)) return 26
  let x = Math.sqrt(Math.max(0, -Math.log(f * 1.2))) * 0.8
  for (let i = 0; i < 60; i++) {
    const e = erfc(x)
    const step = ((e - f) * Math.sqrt(Math.PI) * Math.exp(x * x)) / 2
    // Newton undershoots from the left and can overshoot from the right: hold each step to one half.
    x += Math.max(-0.5, Math.min(0.5, step))
    if (Math.abs(step) < 1e-15 * (1 + x)) break
  }
  return x
}
