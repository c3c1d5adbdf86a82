import type { Point } from './outline.ts'

/**
 * A solid with one run of metal, `bottom` to `top`, at every (x, y): blades, bars, plates, rings.
 * Between neighbouring `xBreaks`, and there between neighbouring `yBreaks(x)`, everything is
 * smooth (square-root ends allowed), so that quadrature is exact and facets follow the edges.
 */
export interface HeightField {
  /** Where the form changes along x; ascending, first and last are the ends of the solid. */
  readonly xBreaks: readonly number[]
  /**
   * Where it changes across at x: ascending, first and last the sides; between two neighbouring
   * xBreaks always the same number of them, those not there at this x lying together in one point.
   */
  yBreaks(x: number): readonly number[]
  /** Height of the upper face inside the outline; not above `bottom` where there is no metal. */
  top(x: number, y: number): number
  bottom(x: number, y: number): number
}

/** Puts numbers in order and inside the first and last, for `yBreaks`. */
export function orderBreaks(low: number, high: number, between: readonly number[]): number[] {
  const inside = between.map((y) => Math.min(Math.max(y, low), high)).sort((a, b) => a - b)
  return [low, ...inside, high]
}

/** Ascending breaks inside the ends, those closer than a nanometre taken as one. */
export function joinBreaks(length: number, between: readonly number[]): number[] {
  const all = [...between.filter((x) => x > 1e-9 && x < length - 1e-9)].sort((a, b) => a - b)
  return [0, ...all.filter((x, i) => i === 0 || x - all[i - 1] > 1e-9), length]
}

/** A cut in a height field: its own breaks, and what it leaves of the metal. */
export interface Cut {
  readonly xBreaks: readonly number[]
  /** Always the same number; those not met at this x lie together. */
  yBreaks(x: number): readonly number[]
  /** Taken off the upper face, m; `Infinity` for a cut right through. */
  fromTop(x: number, y: number): number
  fromBottom(x: number, y: number): number
}

/** The field with cuts made in it one after another; depths add where cuts cross. */
export function cutAway(field: HeightField, cuts: readonly Cut[]): HeightField {
  if (cuts.length === 0) return field
  const length = field.xBreaks[field.xBreaks.length - 1]
  return {
    xBreaks: joinBreaks(length, [...field.xBreaks, ...cuts.flatMap((cut) => cut.xBreaks)]),
    yBreaks: (x) => {
      const own = field.yBreaks(x)
      return orderBreaks(own[0], own[own.length - 1], [
        ...own.slice(1, -1),
        ...cuts.flatMap((cut) => cut.yBreaks(x)),
      ])
    },
    top: (x, y) => cuts.reduce((z, cut) => z - cut.fromTop(x, y), field.top(x, y)),
    bottom: (x, y) => cuts.reduce((z, cut) => z + cut.fromBottom(x, y), field.bottom(x, y)),
  }
}

/** A round hole right through. */
export function roundHole(centre: Point, diameter: number): Cut {
  const r = diameter / 2
  const through = (x: number, y: number) =>
    (x - centre.x) ** 2 + (y - centre.y) ** 2 < r * r ? Infinity : 0
  return {
    xBreaks: [centre.x - r, centre.x, centre.x + r],
    yBreaks: (x) => {
      const half = Math.sqrt(Math.max(0, r * r - (x - centre.x) ** 2))
      return [centre.y - half, centre.y + half]
    },
    fromTop: through,
    fromBottom: () => 0,
  }
}

/** The field moved by dy across. */
export function moveAcross(field: HeightField, dy: number): HeightField {
  return {
    xBreaks: field.xBreaks,
    yBreaks: (x) => field.yBreaks(x).map((y) => y + dy),
    top: (x, y) => field.top(x, y - dy),
    bottom: (x, y) => field.bottom(x, y - dy),
  }
}

/** How far the sides reach: least and greatest y, to about a nanometre. */
export function sideLimits(field: HeightField): readonly [number, number] {
  const sides = (x: number) => {
    const ys = field.yBreaks(x)
    return [-ys[0], ys[ys.length - 1]] as const
  }
  const reach = (side: 0 | 1) => {
    let most = -Infinity
    for (let i = 1; i < field.xBreaks.length; i++) {
      const [a, b] = [field.xBreaks[i - 1] + 1e-13, field.xBreaks[i] - 1e-13]
      const n = 16
      const at = (k: number) => a + ((b - a) * k) / n
      let best = 0
      for (let k = 1; k <= n; k++) if (sides(at(k))[side] > sides(at(best))[side]) best = k
      let [low, high] = [at(Math.max(0, best - 1)), at(Math.min(n, best + 1))]
      for (let turn = 0; turn < 60 && high - low > 1e-12; turn++) {
        const [p, q] = [low + (high - low) / 3, high - (high - low) / 3]
        if (sides(p)[side] < sides(q)[side]) low = p
        else high = q
      }
      most = Math.max(most, sides(at(best))[side], sides((low + high) / 2)[side])
    }
    return most
  }
  return [-reach(0), reach(1)]
}
