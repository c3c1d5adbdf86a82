import {
  type HeightField,
  type Outline,
  type Point,
  type Size,
  findZero,
  integrateAdaptively,
  integratePieces,
  meshArea,
  meshOf,
  nodesOf,
} from '#geometry'
import { type Cut, cutAway } from './cut.ts'
import { imprintCut } from './imprint.ts'
import type { Blank, Edges, Feature, Imprint, PieceSolid, Station } from './piece-kind.ts'

/** What a kind gives; the rest of the solid follows from the field. */
export interface Making {
  readonly kind: string
  /** The left end, if left out. */
  readonly origin?: PieceSolid['origin']
  readonly size: Size
  /** The shape as ground, before holes, grooves and stamps. */
  readonly field: HeightField
  readonly features?: readonly { readonly kind: Feature['kind']; readonly cuts: readonly Cut[] }[]
  readonly edges: Omit<Edges, 'outline'> & { readonly openings?: readonly Outline[] }
  /** Said of the bar it is ground from; its size where it is not the bounding box. */
  readonly blank: { readonly note: string; readonly size?: Size; readonly bent?: boolean }
}

/** Derives volume, centre of mass, sections, normals, mesh and outline from a height field. */
export function solidOf(making: Making): PieceSolid {
  const { size, kind, origin = 'the left end' } = making
  const { field, features, volume, centreOfMass } = withFeatures(making)
  const { xBreaks } = field
  const length = xBreaks[xBreaks.length - 1]
  const thickness = (x: number, y: number) => Math.max(0, field.top(x, y) - field.bottom(x, y))
  const area = (x: number) =>
    x >= 0 && x <= length ? integratePieces((y) => thickness(x, y), field.yBreaks(x)) : 0
  let skin: number | undefined
  // A plan asks for the same stations in every round.
  const sections = new Map<number, readonly Station[]>()
  const below = belowHeight(field, volume, size.height)
  const blank = blankOf(making)
  const edges = {
    outline: [outside(field), ...(making.edges.openings ?? [])],
    lines: making.edges.lines,
    holes: making.edges.holes,
    grooves: making.edges.grooves,
    ...(making.edges.stamp ? { stamp: making.edges.stamp } : {}),
  }
  const withFaces = (shown: HeightField, imprint?: Imprint): PieceSolid => ({
    kind,
    origin,
    size,
    volume,
    centreOfMass,
    get surface() {
      return (skin ??= skinOf(field, Math.min(size.width, length)))
    },
    features,
    stations: xBreaks,
    edges,
    blank,
    area,
    sections: (n) => {
      const known = sections.get(n)
      if (known) return known
      const made = Array.from({ length: n + 1 }, (_, i) =>
        station(field, area, thickness, (length * i) / n),
      )
      sections.set(n, made)
      return made
    },
    volumeBetween: (z0, z1) => (z1 > z0 ? below(z1) - below(z0) : 0),
    ...facesOf(shown, size),
    ...(imprint && { imprint }),
    stamped: (by) => withFaces(imprinted(making, by), by),
  })
  return withFaces(field)
}

/** What is seen of a solid. */
function facesOf(field: HeightField, size: Size) {
  const length = field.xBreaks[field.xBreaks.length - 1]
  // Points come in columns: the span across is the same down a column.
  let [spanAt, low, high] = [NaN, 0, 0]
  const inside = (x: number, y: number) => {
    if (!(x >= 0 && x <= length)) return false
    if (x !== spanAt) {
      const ys = field.yBreaks(x)
      ;[spanAt, low, high] = [x, ys[0], ys[ys.length - 1]]
    }
    return y >= low && y <= high && field.top(x, y) > field.bottom(x, y)
  }
  const top = (x: number, y: number) => (inside(x, y) ? field.top(x, y) : 0)
  const bottom = (x: number, y: number) => (inside(x, y) ? field.bottom(x, y) : 0)
  return {
    inside,
    top,
    bottom,
    normalTop: (x: number, y: number) => normal(top, inside, size, x, y, 1),
    normalBottom: (x: number, y: number) => normal(bottom, inside, size, x, y, -1),
    mesh: (facet: number) => meshOf(field, facet),
  }
}

/** The field with all its features but the stamp's box, and the imprint in its place. */
function imprinted({ field, features = [] }: Making, imprint?: Imprint): HeightField {
  const others = features.filter(({ kind }) => kind !== 'stamp').flatMap(({ cuts }) => cuts)
  return cutAway(field, imprint ? [...others, imprintCut(imprint)] : others)
}

/** Two meshes, the finer of half the facet: their second-order errors cancel (Richardson). */
function skinOf(field: HeightField, across: number): number {
  const [coarse, fine] = [16, 32].map((n) => meshArea(meshOf(field, across / n)))
  return fine + (fine - coarse) / 3
}

function blankOf({ blank, size }: Making): Blank {
  const bar = blank.size ?? size
  return { ...blank, size: bar, volume: bar.length * bar.width * bar.height }
}

/** Volume and its first moments: x·V, y·V, z·V. */
type Moments = readonly [volume: number, x: number, y: number, z: number]

/** The field with every feature cut, and what each takes of the metal the ones before it left. */
function withFeatures(making: Making) {
  let { field } = making
  let total = momentsOf(field.xBreaks, field.yBreaks, (x, y) => run(field, x, y))
  const features = (making.features ?? []).flatMap(({ kind, cuts }) =>
    cuts.map((cut) => {
      const before = field
      field = cutAway(field, [cut])
      const taken = momentsTaken(before, field, cut)
      total = total.map((m, k) => m - taken[k]) as unknown as Moments
      return { kind, volume: taken[0] }
    }),
  )
  const [volume, x, y, z] = total
  const per = volume > 0 ? 1 / volume : 0
  return { field, features, volume, centreOfMass: { x: x * per, y: y * per, z: z * per } }
}

/** Thickness at a place, and thickness times the height of its middle. */
function run(field: HeightField, x: number, y: number): readonly [number, number] {
  const [top, bottom] = [field.top(x, y), field.bottom(x, y)]
  return top > bottom ? [top - bottom, ((top - bottom) * (top + bottom)) / 2] : [0, 0]
}

/** A cut is looked at only where it is, with all the breaks there are in that place. */
function momentsTaken(before: HeightField, after: HeightField, cut: Cut): Moments {
  const between = (breaks: readonly number[], own: readonly number[]) => {
    const [low, high] = [Math.min(...own), Math.max(...own)]
    return [low, ...breaks.filter((b) => b > low && b < high), high]
  }
  return momentsOf(
    between(after.xBreaks, cut.xBreaks),
    (x) => between(after.yBreaks(x), cut.yBreaks(x)),
    (x, y) => {
      const [had, has] = [run(before, x, y), run(after, x, y)]
      return [had[0] - has[0], had[1] - has[1]]
    },
  )
}

function momentsOf(
  xBreaks: readonly number[],
  yBreaks: (x: number) => readonly number[],
  at: (x: number, y: number) => readonly [thickness: number, lift: number],
): Moments {
  let [volume, mx, my, mz] = [0, 0, 0, 0]
  for (const { at: x, weight: dx } of nodesOf(xBreaks)) {
    for (const { at: y, weight: dy } of nodesOf(yBreaks(x))) {
      const [thickness, lift] = at(x, y)
      const piece = thickness * dx * dy
      volume += piece
      mx += x * piece
      my += y * piece
      mz += lift * dx * dy
    }
  }
  return [volume, mx, my, mz]
}

/** Volume below a height, cutting each section exactly where a face passes that height. */
function belowHeight(field: HeightField, volume: number, height: number) {
  const sectionBelow = (x: number, z: number) => {
    const ys = field.yBreaks(x)
    let sum = 0
    for (let i = 1; i < ys.length; i++) {
      const [a, b] = [ys[i - 1], ys[i]]
      if (!(b > a)) continue
      if (!(field.top(x, (a + b) / 2) > field.bottom(x, (a + b) / 2))) continue
      if (liesAbove(field, x, a, b, z)) continue
      const cuts = [
        a,
        ...[
          ...crossings((y) => field.top(x, y) - z, a, b),
          ...crossings((y) => field.bottom(x, y) - z, a, b),
        ].sort((p, q) => p - q),
        b,
      ]
      sum += integratePieces(
        (y) => Math.max(0, Math.min(field.top(x, y), z) - field.bottom(x, y)),
        cuts,
      )
    }
    return sum
  }
  return (z: number) => {
    if (z >= height / 2) return volume
    if (z <= -height / 2) return 0
    return integrateAdaptively((x) => sectionBelow(x, z), field.xBreaks, 2e-7 * volume)
  }
}

/** Whether the whole of a piece of the section lies above z: nothing of it to add. */
function liesAbove(field: HeightField, x: number, a: number, b: number, z: number): boolean {
  return [0.001, 0.25, 0.5, 0.75, 0.999].every((u) => field.bottom(x, a + (b - a) * u) >= z)
}

const PROBES = 8

function crossings(f: (y: number) => number, a: number, b: number): number[] {
  const found: number[] = []
  const at = (k: number) => a + ((b - a) * (k + 1e-9)) / (PROBES + 2e-9)
  let before = f(at(0))
  for (let k = 1; k <= PROBES; k++) {
    const now = f(at(k))
    if (before > 0 !== now > 0 && Number.isFinite(before) && Number.isFinite(now))
      found.push(findZero(f, at(k - 1), at(k), 1e-12))
    before = now
  }
  return found
}

/** Unit normal by central differences, one-sided where a neighbour is outside the metal. */
function normal(
  height: (x: number, y: number) => number,
  inside: (x: number, y: number) => boolean,
  size: Size,
  x: number,
  y: number,
  up: 1 | -1,
): readonly [number, number, number] {
  if (!inside(x, y)) return [0, 0, up]
  const h = 1e-6 * Math.max(size.width, size.height)
  const slope = (dx: number, dy: number) => {
    const [ahead, behind] = [inside(x + dx, y + dy), inside(x - dx, y - dy)]
    const [a, b] = [ahead ? 1 : 0, behind ? 1 : 0]
    if (a + b === 0) return 0
    return (height(x + a * dx, y + a * dy) - height(x - b * dx, y - b * dy)) / ((a + b) * h)
  }
  const [sx, sy] = [slope(h, 0), slope(0, h)]
  const n = Math.hypot(sx, sy, 1)
  return [(-sx * up) / n, (-sy * up) / n, up / n]
}

function station(
  field: HeightField,
  area: (x: number) => number,
  thickness: (x: number, y: number) => number,
  x: number,
): Station {
  const ys = field.yBreaks(x)
  const [low, high] = [ys[0], ys[ys.length - 1]]
  const within = (u: number) => low + (high - low) * u
  const thicknesses = ys.slice(1).flatMap((b, i) => {
    const a = ys[i]
    return [1e-9, 0.25, 0.5, 0.75, 1 - 1e-9].map((u) => thickness(x, a + (b - a) * u))
  })
  return {
    x,
    area: area(x),
    width: high - low,
    thickness: Math.max(0, ...thicknesses),
    edge: thickness(x, within(1e-9)),
  }
}

/** The outside as a loop: along the lower side and back along the upper. */
function outside(field: HeightField): Point[] {
  const xs: number[] = []
  for (let i = 1; i < field.xBreaks.length; i++) {
    const [a, b] = [field.xBreaks[i - 1], field.xBreaks[i]]
    const n = 12
    const h = Math.min(1e-12, (b - a) / 4)
    for (let k = 0; k <= n; k++) {
      const x = (a + b) / 2 - ((b - a) / 2) * Math.cos((Math.PI * k) / n)
      xs.push(k === 0 ? a + h : k === n ? b - h : x)
    }
  }
  const side = (of: (ys: readonly number[]) => number) =>
    xs.map((x) => ({ x, y: of(field.yBreaks(x)) }))
  return simplified([...side((ys) => ys[0]), ...side((ys) => ys[ys.length - 1]).reverse()])
}

/** Without points that lie on the line between their neighbours (to 0.1 µm). */
function simplified(loop: readonly Point[]): Point[] {
  const kept: Point[] = []
  loop.forEach((p, i) => {
    const a = kept[kept.length - 1] ?? loop[loop.length - 1]
    const b = loop[(i + 1) % loop.length]
    const base = Math.hypot(b.x - a.x, b.y - a.y)
    const off = Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x))
    const repeated = Math.hypot(p.x - a.x, p.y - a.y) < 1e-7
    if (!repeated && (base < 1e-9 || off / base > 1e-7)) kept.push(p)
  })
  return kept
}
