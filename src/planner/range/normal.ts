/** Share of a standard normal distribution below z; to 1.2e-7 (Numerical Recipes' rational erfc, from memory). */
export function normalShare(z: number): number {
  const x = Math.abs(z) / Math.SQRT2
  const t = 1 / (1 + x / 2)
  const series = [
    -1.26551223, 1.00002368, 0.37409196, 0.09678418, -0.18628806, 0.27886807, -1.13520398,
    1.48851587, -0.82215223, 0.17087277,
  ].reduceRight((sum, c) => sum * t + c, 0)
  const beyond = (t * Math.exp(-x * x + series)) / 2
  return z >= 0 ? 1 - beyond : beyond
}
