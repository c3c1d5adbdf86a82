import { compile, type Points } from './evaluate.ts'
import type { Warp } from './warp.ts'

/** ∂before/∂after of the whole list at each point, row by row: [∂x/∂x', ∂x/∂y', ∂x/∂z', ∂y/∂x', …]. */
export function jacobian(warps: readonly Warp[], points: Points): Float64Array[] {
  const count = points.x.length
  const unit = (on: boolean) => new Float64Array(count).fill(on ? 1 : 0)
  const rates = [0, 1, 2].map((d) => ({ x: unit(d === 0), y: unit(d === 1), z: unit(d === 2) }))
  const to = compile(warps, { directions: 3, engine: 'reference' }).evaluate({ ...points, rates })
  return Array.from({ length: count }, (_, i) =>
    Float64Array.from(
      (['x', 'y', 'z'] as const).flatMap((side) => to.rates.map((rate) => rate[side][i]!)),
    ),
  )
}

export function determinant(m: ArrayLike<number>): number {
  const [a, b, c, d, e, f, g, h, i] = Array.from(m) as [
    ...[number, number, number, number, number, number, number, number, number],
  ]
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
}
