/**
 * A tridiagonal system, factored once and solved many times (Thomas 1949). `cyclic` adds the two
 * corner entries of a repeating row of cells by the Sherman-Morrison formula.
 */
export interface Tridiagonal {
  readonly n: number
  /** Sub-diagonal: `lower[i]` multiplies unknown i-1. Diagonal. Super-diagonal. */
  readonly lower: Float64Array
  readonly diagonal: Float64Array
  readonly upper: Float64Array
  readonly cyclic: boolean
  readonly inverse: Float64Array
  readonly carry: Float64Array
  readonly corner: Float64Array
  /** gamma and last-corner ratio of the cyclic correction. */
  readonly fix: Float64Array
}

export function makeTridiagonal(n: number, cyclic: boolean): Tridiagonal {
  const row = () => new Float64Array(n)
  return {
    n,
    lower: row(),
    diagonal: row(),
    upper: row(),
    cyclic: cyclic && n > 2,
    inverse: row(),
    carry: row(),
    corner: row(),
    fix: new Float64Array(3),
  }
}

export function factor(m: Tridiagonal): void {
  const { n, lower, diagonal, upper, inverse, carry, corner, fix } = m
  let first = diagonal[0]!
  let last = diagonal[n - 1]!
  if (m.cyclic) {
    // lower[0] is the top-right corner, upper[n-1] the bottom-left one.
    const gamma = -diagonal[0]!
    first -= gamma
    last -= (upper[n - 1]! * lower[0]!) / gamma
    fix[0] = gamma
    fix[1] = lower[0]! / gamma
  }
  let inv = 1 / first
  inverse[0] = inv
  for (let i = 1; i < n; i++) {
    const c = upper[i - 1]! * inv
    carry[i - 1] = c
    inv = 1 / ((i === n - 1 ? last : diagonal[i]!) - lower[i]! * c)
    inverse[i] = inv
  }
  if (m.cyclic) {
    corner.fill(0)
    corner[0] = fix[0]!
    corner[n - 1] = upper[n - 1]!
    sweep(m, corner)
    fix[2] = 1 / (1 + corner[0]! + fix[1]! * corner[n - 1]!)
  }
}

function sweep(m: Tridiagonal, b: Float64Array): void {
  const { n, lower, inverse, carry } = m
  let x = b[0]! * inverse[0]!
  b[0] = x
  for (let i = 1; i < n; i++) {
    x = (b[i]! - lower[i]! * x) * inverse[i]!
    b[i] = x
  }
  for (let i = n - 2; i >= 0; i--) {
    x = b[i]! - carry[i]! * x
    b[i] = x
  }
}

/** Solves in place: `b` comes in as the right side and goes out as the answer. */
export function solve(m: Tridiagonal, b: Float64Array): void {
  sweep(m, b)
  if (!m.cyclic) return
  const { n, corner, fix } = m
  const f = (b[0]! + fix[1]! * b[n - 1]!) * fix[2]!
  for (let i = 0; i < n; i++) b[i] = b[i]! - f * corner[i]!
}
