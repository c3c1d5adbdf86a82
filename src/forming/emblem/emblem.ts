import { type Result, failed, ok } from '#problem'
import { type FillRule, type Filled, fillOutline } from './fill.ts'
import { type CoverGrid, coverOf } from './cover.ts'
import { type Point, type Ring, readOutline } from './path.ts'

/** What a stamp's raised face is, for forces and survival; m, m², rad. */
export interface Emblem {
  readonly area: number
  readonly perimeter: number
  /** Twice area over perimeter: the width of a long stroke of the same area and edge. */
  readonly stroke: number
  /** Width that all but the thinnest twentieth of the edge is backed by. */
  readonly thinnest: number
  /** The same for the gaps between strokes; Infinity when nothing faces anything. */
  readonly gap: number
  /** A stroke and its gap, or twice a lone stroke: by it layers sink under the mark. */
  readonly wavelength: number
  /** Smallest angle between two sides at a corner of the drawing; π when it has none. */
  readonly sharpestAngle: number
  /** Smallest radius of curvature of the drawing; 0 at a corner. */
  readonly sharpestRadius: number
  /** Across and up. */
  readonly size: readonly [number, number]
}

/** An emblem told by its measures instead of its outline. */
export interface EmblemMeasures {
  readonly area: number
  readonly perimeter: number
  readonly stroke?: number
}

export function emblemFromMeasures({ area, perimeter, stroke }: EmblemMeasures): Emblem {
  const mean = perimeter > 0 ? (2 * area) / perimeter : 0
  const side = Math.sqrt(Math.max(0, area))
  return {
    area,
    perimeter,
    stroke: mean,
    thinnest: stroke ?? mean,
    gap: Infinity,
    wavelength: 2 * mean,
    sharpestAngle: Math.PI / 2,
    sharpestRadius: 0,
    size: [side, side],
  }
}

/** Distance from a bit of edge straight in (or out) to the next edge it meets. */
function clearances({ edge }: Filled, sign: 1 | -1): { distance: number; weight: number }[] {
  // Every bit of edge is held against every other: numbers in rows, nothing made in the inner loop.
  const row = (of: (bit: Filled['edge'][number]) => number) => Float64Array.from(edge, of)
  const [fromX, fromY] = [row((e) => e.from[0]), row((e) => e.from[1])]
  const [alongX, alongY] = [row((e) => e.to[0] - e.from[0]), row((e) => e.to[1] - e.from[1])]
  const [inX, inY] = [row((e) => e.inward[0]), row((e) => e.inward[1])]
  return edge.map((_, i) => {
    const [ox, oy] = [fromX[i] + alongX[i] / 2, fromY[i] + alongY[i] / 2]
    const [dx, dy] = [sign * inX[i], sign * inY[i]]
    let distance = Infinity
    for (let e = 0; e < edge.length; e++) {
      // Only edges that face back at this one bound the stroke.
      if ((inX[e] * dx + inY[e] * dy) * sign >= 0) continue
      const det = dy * alongX[e] - dx * alongY[e]
      if (Math.abs(det) < 1e-30) continue
      const [px, py] = [fromX[e] - ox, fromY[e] - oy]
      const t = (py * alongX[e] - px * alongY[e]) / det
      const s = (dx * py - dy * px) / det
      if (s >= 0 && s <= 1 && t > 1e-12 && t < distance) distance = t
    }
    return { distance, weight: Math.hypot(alongX[i], alongY[i]) }
  })
}

function lowTwentieth(all: readonly { distance: number; weight: number }[]): number {
  const faced = all
    .filter((c) => Number.isFinite(c.distance))
    .toSorted((a, b) => a.distance - b.distance)
  const total = all.reduce((sum, c) => sum + c.weight, 0)
  let sum = 0
  for (const { distance, weight } of faced) {
    sum += weight
    if (sum >= 0.05 * total) return distance
  }
  return Infinity
}

/** Turns of less than this at a joint are smooth, rad. */
const smooth = (12 * Math.PI) / 180

function sharpest(rings: readonly Ring[]) {
  let [angle, radius] = [Math.PI, Infinity]
  for (const { points, joints } of rings)
    points.forEach((p, i) => {
      const a = points[(i + points.length - 1) % points.length]!
      const b = points[(i + 1) % points.length]!
      const [u, v] = [
        [p[0] - a[0], p[1] - a[1]],
        [b[0] - p[0], b[1] - p[1]],
      ] as const
      const turn = Math.abs(Math.atan2(u[0] * v[1] - u[1] * v[0], u[0] * v[0] + u[1] * v[1]))
      if (joints[i] && turn > smooth) {
        angle = Math.min(angle, Math.PI - turn)
        radius = 0
      } else if (turn > 1e-9) {
        radius = Math.min(radius, (Math.hypot(...u) + Math.hypot(...v)) / 2 / turn)
      }
    })
  return { angle, radius }
}

/** Edge cut into short bits, so that clearances are sampled along straight sides too. */
function sampled(filled: Filled): Filled {
  const step = filled.perimeter / 400
  const edge = filled.edge.flatMap(({ from, to, inward }) => {
    const parts = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / step))
    const at = (k: number): Point => [
      from[0] + ((to[0] - from[0]) * k) / parts,
      from[1] + ((to[1] - from[1]) * k) / parts,
    ]
    return Array.from({ length: parts }, (_, k) => ({ from: at(k), to: at(k + 1), inward }))
  })
  return { ...filled, edge }
}

/** An emblem's outline drawn `across` wide (m) from its upper left corner, and what it fills; y down, as drawn. */
interface Drawn {
  readonly rings: readonly Ring[]
  readonly filled: Filled
  readonly scale: number
  readonly size: readonly [number, number]
}

function drawn(path: string, across: number, rule: FillRule): Result<Drawn> {
  const read = readOutline(path)
  if (!read.ok) return failed(...(read.problems ?? []))
  const all = read.ok.flatMap((ring) => ring.points)
  const [xs, ys] = [all.map((p) => p[0]), all.map((p) => p[1])]
  const bound = (list: number[], pick: 'min' | 'max') =>
    list.reduce((a, b) => Math[pick](a, b), list[0] ?? 0)
  const [left, right, top, bottom] = [
    bound(xs, 'min'),
    bound(xs, 'max'),
    bound(ys, 'min'),
    bound(ys, 'max'),
  ]
  const scale = right > left ? across / (right - left) : 0
  const filled = fillOutline(
    read.ok.map((ring) => ({
      ...ring,
      points: ring.points.map(([x, y]) => [(x - left) * scale, (y - top) * scale] as const),
    })),
    rule,
  )
  if (!(filled.area > 0))
    return failed({
      at: 'path',
      what: 'The emblem’s outline encloses nothing.',
      why: 'Its filled area is zero: a line has no face to press with.',
      try: ['Draw the strokes as outlines, not as lines.', 'Try the other fill rule.'],
    })
  const size = [(right - left) * scale, (bottom - top) * scale] as const
  return ok({ rings: read.ok, filled, scale, size })
}

/**
 * Measures an emblem drawn as SVG path data, scaled so that it is `across` wide (m). Area and
 * perimeter are exact for the flattened outline, by the fill rule SVG uses.
 */
export function measureEmblem(
  path: string,
  across: number,
  rule: FillRule = 'nonzero',
): Result<Emblem> {
  const found = drawn(path, across, rule)
  if (found.problems) return found
  const { rings, filled, scale, size } = found.ok
  const bits = sampled(filled)
  const { angle, radius } = sharpest(rings)
  const mean = (2 * filled.area) / filled.perimeter
  const gap = lowTwentieth(clearances(bits, -1))
  return ok({
    area: filled.area,
    perimeter: filled.perimeter,
    stroke: mean,
    thinnest: Math.min(lowTwentieth(clearances(bits, 1)), Math.sqrt(filled.area)),
    gap,
    wavelength: Number.isFinite(gap) ? mean + gap : 2 * mean,
    sharpestAngle: angle,
    sharpestRadius: Number.isFinite(radius) ? radius * scale : 0,
    size,
  })
}

/**
 * Share of each square of a grid that the emblem fills, `across` wide (m) with its middle at 0, 0
 * and upright: rows go up, where a drawing's go down.
 */
export function coverEmblem(path: string, across: number, grid: CoverGrid): Result<Float64Array> {
  const found = drawn(path, across, 'nonzero')
  if (found.problems) return found
  const { filled, size } = found.ok
  const upright = ([x, y]: Point): Point => [x - size[0] / 2, size[1] / 2 - y]
  const edge = filled.edge.map(({ from, to, inward }) => ({
    from: upright(from),
    to: upright(to),
    inward: [inward[0], -inward[1]] as const,
  }))
  return ok(coverOf({ ...filled, edge }, grid))
}
