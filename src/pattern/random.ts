/** A number 0 … 1 for whole numbers and a seed: the same on every machine. Integer mixing by multiplication and shifts. */
export function scatter(seed: number, i: number, j: number): number {
  let h =
    Math.imul(seed | 0, 0x9e3779b1) ^ Math.imul(i | 0, 0x85ebca6b) ^ Math.imul(j | 0, 0xc2b2ae35)
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d)
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39)
  return ((h ^ (h >>> 15)) >>> 0) / 4294967296
}

/** About normal, mean 0, deviation 1: the sum of four even ones. */
export function scatterNormal(seed: number, i: number, j: number): number {
  let sum = 0
  for (let k = 0; k < 4; k++) sum += scatter(seed + 7919 * k, i, j)
  return (sum - 2) * Math.sqrt(3)
}
