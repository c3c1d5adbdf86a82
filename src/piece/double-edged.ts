import type { ValuesOf } from '#parameters'
import type { Part } from './blade-parts.ts'
import { arc } from './grind.ts'
import type { daggerParameters } from './dagger/parameters.ts'

export type DaggerValues = ValuesOf<typeof daggerParameters>

/** Half the width of a double-edged blade at s. */
export function halfWidthOf(v: DaggerValues): (s: number) => number {
  const straight = v.bladeLength - v.pointLength
  const [base, end] = [v.width / 2, (v.widthAtPoint ?? v.width) / 2]
  return (s) => {
    if (s <= straight) return straight > 0 ? base + ((end - base) * s) / straight : end
    const t = Math.min(1, (s - straight) / v.pointLength)
    return end * (v.point === 'acute' ? 1 - t : 1 - t * t)
  }
}

/** Thickness along the middle line at s. */
export function ridgeOf(v: DaggerValues): (s: number) => number {
  const half = v.bladeLength / 2
  const middle = v.ridgeThicknessMiddle ?? (v.ridgeThickness + v.ridgeThicknessPoint) / 2
  return (s) =>
    s < half
      ? v.ridgeThickness + ((middle - v.ridgeThickness) * s) / half
      : middle + ((v.ridgeThicknessPoint - middle) * (s - half)) / half
}

/** Half the thickness at a distance from the middle line; `a` half the width, `thick` at the ridge. */
export function daggerHalf(v: DaggerValues, fromMiddle: number, a: number, thick: number): number {
  const [ridge, edge] = [thick / 2, v.edgeThickness / 2]
  if (!(a > 0)) return ridge
  const q = Math.min(1, fromMiddle / a)
  switch (v.section) {
    case 'lenticular':
      return edge + (ridge - edge) * (1 - q * q)
    case 'hexagonal':
      return q <= v.flatShare
        ? ridge
        : ridge - ((ridge - edge) * (q - v.flatShare)) / (1 - v.flatShare)
    case 'hollow-diamond':
      return arc(a, edge, ridge, v.wheelDiameter / 2, true)(a - Math.min(a, fromMiddle))
    default:
      return ridge - (ridge - edge) * q
  }
}

/** A double-edged blade from shoulder (s = 0) to point, its middle line at y = 0. */
export function daggerPart(v: DaggerValues): Part {
  const [half, ridge] = [halfWidthOf(v), ridgeOf(v)]
  const plunge = Math.min(v.plunge, v.bladeLength - v.ricassoLength)
  const ground = (s: number) => {
    if (s < v.ricassoLength) return 0
    if (s >= v.ricassoLength + plunge) return 1
    const t = (s - v.ricassoLength) / plunge
    return t * t * (3 - 2 * t)
  }
  const top = (s: number, y: number) => {
    const [thick, share] = [ridge(s), ground(s)]
    if (share === 0) return thick / 2
    return thick / 2 + share * (daggerHalf(v, Math.abs(y), half(s), thick) - thick / 2)
  }
  return {
    length: v.bladeLength,
    breaks: [
      v.ricassoLength,
      v.ricassoLength + plunge,
      v.bladeLength / 2,
      v.bladeLength - v.pointLength,
      v.bladeLength - v.pointLength / 8,
      v.bladeLength - v.pointLength / 64,
    ],
    low: (s) => -half(s),
    high: half,
    kinks: (s) => {
      const flat = v.section === 'hexagonal' ? v.flatShare * half(s) : 0
      return [-flat, 0, flat]
    },
    top,
    bottom: (s, y) => -top(s, y),
  }
}
