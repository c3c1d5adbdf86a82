import type { HeightField, Outline, Point } from '#geometry'
import { joinBreaks, orderBreaks } from './breaks.ts'

/** A cut in a height field: its own breaks, and what it leaves of the metal. */
export interface Cut {
  readonly xBreaks: readonly number[]
  /** Always the same number; those not met at this x lie together. */
  yBreaks(x: number): readonly number[]
  /** Taken off the upper face, m; `Infinity` for a cut right through. */
  fromTop(x: number, y: number): number
  fromBottom(x: number, y: number): number
  /** Side of the facets that show it, m, where it is finer than the piece. */
  readonly finest?: number
}

/** The field with cuts made in it one after another; depths add where cuts cross. */
export function cutAway(field: HeightField, cuts: readonly Cut[]): HeightField {
  if (cuts.length === 0) return field
  const length = field.xBreaks[field.xBreaks.length - 1]
  const places = cuts.map((cut) => {
    const [from, to] = [Math.min(...cut.xBreaks), Math.max(...cut.xBreaks)]
    return { cut, from, to, none: cut.yBreaks((from + to) / 2).map(() => -Infinity) }
  })
  return {
    xBreaks: joinBreaks(length, [...field.xBreaks, ...cuts.flatMap((cut) => cut.xBreaks)]),
    yBreaks: (x) => {
      const own = field.yBreaks(x)
      return orderBreaks(own[0], own[own.length - 1], [
        ...own.slice(1, -1),
        ...places.flatMap(({ cut, from, to, none }) =>
          x > from && x < to ? cut.yBreaks(x) : none,
        ),
      ])
    },
    top: (x, y) => cuts.reduce((z, cut) => z - cut.fromTop(x, y), field.top(x, y)),
    bottom: (x, y) => cuts.reduce((z, cut) => z + cut.fromBottom(x, y), field.bottom(x, y)),
    finest: (x, y) =>
      places.reduce(
        (finest, { cut, from, to }) => {
          if (cut.finest === undefined || x < from || x > to) return finest
          const ys = cut.yBreaks(x)
          return y < ys[0] || y > ys[ys.length - 1] ? finest : Math.min(finest, cut.finest)
        },
        field.finest?.(x, y) ?? Infinity,
      ),
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

/** The mouth of a round hole as a loop for drawing: clockwise, its corners on the circle. */
export function holeOutline(centre: Point, diameter: number): Outline {
  const n = 72
  return Array.from({ length: n }, (_, i) => ({
    x: centre.x + (diameter / 2) * Math.cos((2 * Math.PI * i) / n),
    y: centre.y - (diameter / 2) * Math.sin((2 * Math.PI * i) / n),
  }))
}
