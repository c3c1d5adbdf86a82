import { type HeightField, findZero } from '#geometry'
import type { Cut } from './cut.ts'
import { arcRadius } from './grind.ts'

/** A fuller in blade coordinates: x along the piece, y across. */
export interface FullerSizes {
  readonly width: number
  readonly depth: number
  readonly start: number
  readonly length: number
  readonly runOut: number
  readonly faces: 'both' | 'front' | 'back'
  /** Its middle line, y at x. */
  readonly middle: (x: number) => number
}

/** Depth at x: full, falling off on a parabola over each run-out, as a wheel lifts away. */
export function fullerDepth(f: FullerSizes, x: number): number {
  const into = Math.min(x - f.start, f.start + f.length - x)
  if (into < 0) return 0
  if (into >= f.runOut) return f.depth
  const t = 1 - into / f.runOut
  return f.depth * (1 - t * t)
}

/** The cut with stations added where a border of the trough crosses a ridge or grind line. */
export function crossingFuller(cut: Cut, field: HeightField): Cut {
  const [start, end] = [Math.min(...cut.xBreaks), Math.max(...cut.xBreaks)]
  const xs = [start, ...[...field.xBreaks, ...cut.xBreaks].filter((x) => x > start && x < end), end]
  xs.sort((a, b) => a - b)
  const found = xs.slice(1).flatMap((b, i) => crossings(cut, field, xs[i] + 1e-12, b - 1e-12))
  return { ...cut, xBreaks: [...cut.xBreaks, ...found] }
}

const LOOKS = 6

function crossings(cut: Cut, field: HeightField, a: number, b: number): number[] {
  if (!(b > a)) return []
  const kinks = field.yBreaks((a + b) / 2).length
  const pairs = cut
    .yBreaks(a)
    .flatMap((_, border) =>
      Array.from({ length: Math.max(0, kinks - 2) }, (_, k) => [border, k + 1] as const),
    )
  const at = (k: number) => a + ((b - a) * k) / LOOKS
  return pairs.flatMap(([border, kink]) => {
    const apart = (x: number) => cut.yBreaks(x)[border] - field.yBreaks(x)[kink]
    return Array.from({ length: LOOKS }, (_, k) => [at(k), at(k + 1)] as const)
      .filter(([p, q]) => apart(p) > 0 !== apart(q) > 0)
      .map(([p, q]) => findZero(apart, p, q, 1e-12))
  })
}

/** A trough of one radius, R = w²/8d + d/2, so it narrows to a point as it shallows. */
export function fullerCut(f: FullerSizes): Cut {
  const radius = arcRadius(f.width, f.depth)
  const half = (x: number) => {
    const depth = fullerDepth(f, x)
    return Math.sqrt(Math.max(0, depth * (2 * radius - depth)))
  }
  const depth = (x: number, y: number) => {
    const off = y - f.middle(x)
    if (Math.abs(off) >= half(x)) return 0
    return Math.max(0, Math.sqrt(radius * radius - off * off) - (radius - fullerDepth(f, x)))
  }
  const none = () => 0
  const end = f.start + f.length
  return {
    xBreaks: [f.start, f.start + f.runOut, end - f.runOut, end],
    yBreaks: (x) => {
      const middle = f.middle(x)
      return [middle - half(x), middle, middle + half(x)]
    },
    fromTop: f.faces === 'back' ? none : depth,
    fromBottom: f.faces === 'front' ? none : depth,
  }
}
