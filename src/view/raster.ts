import type { Outline } from '#geometry'
import type { Imprint } from '#piece'
import { pressInto, sparedAt } from './press.ts'
import type { FaceView, FacetSurface, Frame, Vector } from './view.ts'

/** The surface under a band of rows: row-major, row 0 the highest asked for. */
export interface BandSurface {
  /** Share of each pixel that is metal, 0 … 255. */
  readonly alpha: Uint8Array
  /** Present where the surface is not one plane: height towards the eye (m), its slopes, and the smooth normal. */
  readonly facets?: {
    readonly out: Float64Array
    readonly slopeRight: Float32Array
    readonly slopeUp: Float32Array
    readonly normalRight: Float32Array
    readonly normalUp: Float32Array
    /** How much of polish and rubbing it is spared, 0 … 255; only where something is pressed in. */
    readonly spared?: Uint8Array
  }
}

/** The surface of rows `top` to `bottom` (exclusive), counted from the top of the picture. */
export function rasterise(view: FaceView, top: number, bottom: number): BandSurface {
  const { width } = view
  const rows = bottom - top
  const { surface } = view
  if (surface.kind === 'flat') {
    const alpha = areaCover(view, top, rows, edgesOf(surface.outlines))
    return { alpha }
  }
  const size = width * rows
  const facets = {
    out: new Float64Array(size).fill(-Infinity),
    slopeRight: new Float32Array(size),
    slopeUp: new Float32Array(size),
    normalRight: new Float32Array(size),
    normalUp: new Float32Array(size),
    ...(surface.imprint && { spared: new Uint8Array(size) }),
  }
  fillFacets(view, surface, top, rows, facets)
  const alpha = areaCover(view, top, rows, silhouette(surface))
  const back = view.depth > 0 ? backOf(view, surface, top, rows) : undefined
  extendToRim(view, facets, alpha)
  for (let i = 0; i < size; i++) {
    if (facets.out[i] === -Infinity) alpha[i] = 0
    if (alpha[i] === 0 || !back) continue
    const lean = Math.hypot(1, facets.slopeRight[i]!, facets.slopeUp[i]!)
    facets.out[i] = facets.out[i]! - view.depth * lean
    // Where the surface is open behind, how thick the metal is cannot be told.
    if (back[i] !== Infinity && facets.out[i]! < back[i]!) alpha[i] = 0
  }
  if (surface.imprint) pressIn(view, surface.imprint, top, rows, facets)
  return { alpha, facets }
}

/** Heights and slopes of parts of pixels, `fine` × `fine` of each, row by row from its upper left. */
export type PartFacets = Pick<Facets, 'out' | 'slopeRight' | 'slopeUp'>

/**
 * The surface under the parts of some pixels (numbers in a band from row `top`, in order): a pixel on a ridge lies on
 * several facets. Where a part's middle is off the metal its height is −∞. Undefined of a plane.
 */
export function facetsOfParts(
  view: FaceView,
  top: number,
  pixels: readonly number[],
  fine: number,
): PartFacets | undefined {
  const { surface, width } = view
  if (surface.kind === 'flat' || pixels.length === 0) return undefined
  const size = pixels.length * fine ** 2
  const parts: PartFacets = {
    out: new Float64Array(size).fill(-Infinity),
    slopeRight: new Float32Array(size),
    slopeUp: new Float32Array(size),
  }
  const rowOf = (at: number) => Math.floor(at / width)
  const first = rowOf(pixels[0]!)
  const rows = rowOf(pixels[pixels.length - 1]!) - first + 1
  const places = new Int32Array(rows * width).fill(-1)
  pixels.forEach((at, k) => (places[at - first * width] = k))
  // Of each place the column of the first pixel asked for from there on; none in its row: the end of it.
  const next = new Int32Array(rows * width)
  for (let at = rows * width - 1; at >= 0; at--) {
    const column = at % width
    next[at] = places[at]! >= 0 ? column : column === width - 1 ? width : next[at + 1]!
  }
  const finer = {
    ...view,
    width: width * fine,
    height: view.height * fine,
    pixel: view.pixel / fine,
  }
  const from = (top + first) * fine
  scan(
    finer,
    surface,
    from,
    rows * fine,
    1,
    (place, out, _, _u, _v, slopes) => {
      const [row, column] = [Math.floor(place / finer.width), place % finer.width]
      const k = places[Math.floor(row / fine) * width + Math.floor(column / fine)]!
      const at = (k * fine + (row % fine)) * fine + (column % fine)
      if (k < 0 || out <= parts.out[at]!) return
      parts.out[at] = out
      parts.slopeRight[at] = slopes[0]
      parts.slopeUp[at] = slopes[1]
    },
    (row, column) => {
      const [y, x] = [Math.floor((row - from) / fine), Math.floor(column / fine)]
      const wanted = next[y * width + x]!
      return wanted === x ? column : wanted * fine
    },
  )
  const { imprint } = surface
  pixels.forEach((pixel, k) => {
    for (let part = 0; part < fine ** 2; part++) {
      const at = k * fine ** 2 + part
      if (parts.out[at] === -Infinity) continue
      const lean = Math.hypot(1, parts.slopeRight[at]!, parts.slopeUp[at]!)
      parts.out[at] = parts.out[at]! - view.depth * lean
      const row = (top + rowOf(pixel)) * fine + Math.floor(part / fine)
      if (imprint) press(finer, imprint, row, (pixel % width) * fine + (part % fine), parts, at)
    }
  })
  return parts
}

/**
 * Lowers a place of the face to where the eye meets an imprint, as far as the face has not been ground down to its
 * floor; how far, and the normal there, in the metal's frame, if it did.
 */
function press(
  { frame, height, pixel, depth }: FaceView,
  imprint: Imprint,
  row: number,
  column: number,
  facets: PartFacets,
  at: number,
): { readonly below: number; readonly leaning: (smooth: Vector) => Vector } | undefined {
  if (facets.out[at] === -Infinity) return undefined
  const flat = inMetal(frame, [-facets.slopeRight[at]!, -facets.slopeUp[at]!, 1])
  const seen = [(column + 0.5) * pixel, (height - row - 0.5) * pixel, facets.out[at]!] as const
  const pressed = pressInto(imprint, frame, seen, flat, depth)
  if (!pressed) return undefined
  const { below, alongX, alongY } = pressed
  const leaning = (n: Vector): Vector => [n[0] + n[2] * alongX, n[1] + n[2] * alongY, n[2]]
  facets.out[at] = facets.out[at]! - below
  const [right, up, out] = inPicture(frame, leaning(flat))
  const facing = Math.max(out, EDGE_ON)
  facets.slopeRight[at] = -right / facing
  facets.slopeUp[at] = -up / facing
  return { below, leaning }
}

function inMetal({ right, up, out }: Frame, [r, u, o]: Vector): Vector {
  return [0, 1, 2].map((k) => r * right[k]! + u * up[k]! + o * out[k]!) as unknown as Vector
}

function inPicture({ right, up, out }: Frame, n: Vector): Vector {
  return [right, up, out].map(
    (axis) => n[0] * axis[0] + n[1] * axis[1] + n[2] * axis[2],
  ) as unknown as Vector
}

function pressIn(
  view: FaceView,
  imprint: Imprint,
  top: number,
  rows: number,
  facets: Facets,
): void {
  const { width, frame } = view
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < width; column++) {
      const at = row * width + column
      const pressed = press(view, imprint, top + row, column, facets, at)
      if (!pressed) continue
      const { below, leaning } = pressed
      if (facets.spared) facets.spared[at] = Math.round(255 * sparedAt(below))
      const [right, up] = [facets.normalRight[at]!, facets.normalUp[at]!]
      const out = Math.sqrt(Math.max(1e-6, 1 - right * right - up * up))
      const lean = inPicture(frame, leaning(inMetal(frame, [right, up, out])))
      const size = Math.hypot(...lean)
      facets.normalRight[at] = lean[0] / size
      facets.normalUp[at] = lean[1] / size
    }
  }
}

/** Rim pixels whose centre lies off the metal take the surface of the neighbour it reaches them from. */
function extendToRim(view: FaceView, facets: Facets, alpha: Uint8Array): void {
  const { width, pixel } = view
  const wanted: number[] = []
  for (let i = 0; i < alpha.length; i++) {
    if (facets.out[i] !== -Infinity) continue
    if (alpha[i]! > 0) wanted.push(i)
  }
  const rows = alpha.length / width
  const takes = wanted.map((i) => {
    const [row, column] = [Math.floor(i / width), i % width]
    for (let ring = 1; ring <= 2; ring++)
      for (let dr = -ring; dr <= ring; dr++)
        for (let dc = -ring; dc <= ring; dc++) {
          const [r, c] = [row + dr, column + dc]
          if (r < 0 || r >= rows || c < 0 || c >= width) continue
          if (facets.out[r * width + c]! > -Infinity) return { i, from: r * width + c, dr, dc }
        }
    return { i, from: -1, dr: 0, dc: 0 }
  })
  const found = takes.map(({ from, dr, dc }) =>
    from < 0
      ? 0
      : facets.out[from]! - pixel * (dc * facets.slopeRight[from]! - dr * facets.slopeUp[from]!),
  )
  takes.forEach(({ i, from }, k) => {
    if (from < 0) {
      alpha[i] = 0
      return
    }
    facets.out[i] = found[k]!
    for (const row of [facets.slopeRight, facets.slopeUp, facets.normalRight, facets.normalUp])
      row[i] = row[from]!
  })
}

/** Steeper than this to the eye, a facet is seen edge on and shows nothing. */
const EDGE_ON = 1e-3

/** Edges as [x0, y0, x1, y1], m, metal on the left. */
type Edges = Float64Array

function edgesOf(outlines: readonly Outline[]): Edges {
  const edges: number[] = []
  for (const loop of outlines)
    loop.forEach((a, i) => {
      const b = loop[(i + 1) % loop.length]!
      edges.push(a.x, a.y, b.x, b.y)
    })
  return Float64Array.from(edges)
}

const silhouettes = new WeakMap<FacetSurface, Edges>()

/** Edges where what faces the eye ends. */
function silhouette(surface: FacetSurface): Edges {
  const seen = silhouettes.get(surface)
  if (seen) return seen
  const { positions: p, triangles: t } = surface
  const open = new Map<number, number>()
  const span = p.length / 3
  for (let i = 0; i < t.length; i += 3) {
    if (facing(surface, i) <= 0) continue
    for (let k = 0; k < 3; k++) {
      const [a, b] = [t[i + k]!, t[i + ((k + 1) % 3)]!]
      if (!open.delete(b * span + a)) open.set(a * span + b, 1)
    }
  }
  const edges = new Float64Array(open.size * 4)
  let n = 0
  for (const key of open.keys()) {
    const [a, b] = [Math.floor(key / span) * 3, (key % span) * 3]
    edges.set([p[a]!, p[a + 1]!, p[b]!, p[b + 1]!], 4 * n++)
  }
  silhouettes.set(surface, edges)
  return edges
}

/** Twice the area seen, positive towards the eye; 0 if edge on. */
function facing({ positions: p, triangles: t }: FacetSurface, i: number): number {
  const [a, b, c] = [t[i]! * 3, t[i + 1]! * 3, t[i + 2]! * 3]
  const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!]
  const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!]
  const seen = ux * vy - uy * vx
  const size = Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, seen)
  return Math.abs(seen) < EDGE_ON * size ? 0 : seen
}

/** Exact share of each pixel inside closed edges: the area to the right of every edge, added up with its sign. */
function areaCover(view: FaceView, top: number, rows: number, edges: Edges): Uint8Array {
  const { width, height, pixel } = view
  // Of each row the columns at which the share changes, and by how much.
  const changes: Changes[] = Array.from({ length: rows }, () => ({ columns: [], steps: [] }))
  for (let e = 0; e < edges.length; e += 4) {
    let [x0, x1] = [edges[e]! / pixel, edges[e + 2]! / pixel]
    let [y0, y1] = [height - edges[e + 1]! / pixel - top, height - edges[e + 3]! / pixel - top]
    if (y0 === y1) continue
    const sign = y0 < y1 ? 1 : -1
    if (y0 > y1) [x0, x1, y0, y1] = [x1, x0, y1, y0]
    if (y1 <= 0 || y0 >= rows) continue
    const slope = (x1 - x0) / (y1 - y0)
    const clampX = (x: number) => Math.min(Math.max(x, 0), width)
    for (let row = Math.max(0, Math.floor(y0)); row < Math.min(rows, Math.ceil(y1)); row++) {
      const [ya, yb] = [Math.max(y0, row), Math.min(y1, row + 1)]
      const [xa, xb] = [clampX(x0 + slope * (ya - y0)), clampX(x0 + slope * (yb - y0))]
      addEdge(changes[row]!, sign * (yb - ya), Math.min(xa, xb), Math.max(xa, xb))
    }
  }
  const alpha = new Uint8Array(width * rows)
  changes.forEach((change, row) => fillRun(alpha, row * width, width, change))
  return alpha
}

interface Changes {
  readonly columns: number[]
  readonly steps: number[]
}

function fillRun(alpha: Uint8Array, at: number, width: number, { columns, steps }: Changes): void {
  const order = columns.map((_, k) => k).sort((a, b) => columns[a]! - columns[b]!)
  let run = 0
  let from = 0
  const fill = (to: number) => {
    const share = Math.round(255 * Math.min(1, Math.abs(run)))
    if (to > from && share > 0) alpha.fill(share, at + from, at + Math.min(to, width))
    from = Math.max(from, to)
  }
  for (const k of order) {
    fill(columns[k]!)
    run += steps[k]!
  }
  fill(width)
}

/** An edge falling by `drop` between xa and xb: what it does to the share of each pixel and of all to its right. */
function addEdge({ columns, steps }: Changes, drop: number, xa: number, xb: number): void {
  const add = (column: number, step: number) => {
    columns.push(column)
    steps.push(step)
  }
  const first = Math.floor(xa)
  if (xb <= first + 1) {
    const share = first + 1 - (xa + xb) / 2
    add(first, drop * share)
    add(first + 1, drop * (1 - share))
    return
  }
  const perPixel = drop / (xb - xa)
  let before = 0
  let already = 0
  for (let i = first; i < xb; i++) {
    const [a, b] = [Math.max(xa, i), Math.min(xb, i + 1)]
    const part = perPixel * (b - a)
    const cover = already + part * (i + 1 - (a + b) / 2)
    add(i, cover - before)
    already += part
    before = cover
  }
  add(Math.ceil(xb), already - before)
}

type Facets = NonNullable<BandSurface['facets']>

function fillFacets(
  view: FaceView,
  surface: FacetSurface,
  top: number,
  rows: number,
  to: Facets,
): void {
  const { normals } = surface
  scan(view, surface, top, rows, 1, (at, out, i, u, v, slopes) => {
    if (out <= to.out[at]!) return
    to.out[at] = out
    to.slopeRight[at] = slopes[0]!
    to.slopeUp[at] = slopes[1]!
    const n = i * 3
    const w = 1 - u - v
    to.normalRight[at] = w * normals[n]! + u * normals[n + 3]! + v * normals[n + 6]!
    to.normalUp[at] = w * normals[n + 1]! + u * normals[n + 4]! + v * normals[n + 7]!
  })
}

/** The far side of the metal. */
function backOf(view: FaceView, surface: FacetSurface, top: number, rows: number): Float64Array {
  const back = new Float64Array(view.width * rows).fill(Infinity)
  scan(view, surface, top, rows, -1, (at, out) => {
    if (out < back[at]!) back[at] = out
  })
  return back
}

/**
 * Visits every pixel centre under every triangle that faces the eye (1) or away (−1). `nextOf`: the next column of a row
 * that is wanted, from a column on; left out, all are.
 */
function scan(
  view: FaceView,
  surface: FacetSurface,
  top: number,
  rows: number,
  side: 1 | -1,
  visit: (
    at: number,
    out: number,
    i: number,
    u: number,
    v: number,
    slopes: readonly [number, number],
  ) => void,
  nextOf?: (row: number, column: number) => number,
): void {
  const { height, width, pixel } = view
  const { positions: p, triangles: t } = surface
  for (let i = 0; i < t.length; i += 3) {
    const [a, b, c] = [t[i]! * 3, t[i + 1]! * 3, t[i + 2]! * 3]
    const [ay, by, cy] = [p[a + 1]!, p[b + 1]!, p[c + 1]!]
    const first = Math.ceil(height - Math.max(ay, by, cy) / pixel - 0.5)
    const last = Math.floor(height - Math.min(ay, by, cy) / pixel - 0.5)
    if (last < top || first >= top + rows) continue
    const seen = facing(surface, i)
    if (seen * side <= 0) continue
    const [ax, ux, vx] = [p[a]!, p[b]! - p[a]!, p[c]! - p[a]!]
    const [uy, vy] = [by - ay, cy - ay]
    const [az, uz, vz] = [p[a + 2]!, p[b + 2]! - p[a + 2]!, p[c + 2]! - p[a + 2]!]
    const slopes = [(uz * vy - vz * uy) / seen, (vz * ux - uz * vx) / seen] as const
    for (let row = Math.max(first, top); row <= Math.min(last, top + rows - 1); row++) {
      const y = (height - row - 0.5) * pixel - ay
      // Where the row enters and leaves: u, v ≥ 0 and u + v ≤ 1 are all linear in x.
      const bounds = rowSpan(ax, ux, uy, vx, vy, seen, y)
      const from = Math.max(0, Math.ceil(bounds[0] / pixel - 0.5))
      const to = Math.min(width - 1, Math.floor(bounds[1] / pixel - 0.5))
      for (let column = from; column <= to; column++) {
        if (nextOf && (column = nextOf(row, column)) > to) break
        const x = (column + 0.5) * pixel - ax
        const u = (x * vy - y * vx) / seen
        const v = (y * ux - x * uy) / seen
        const out = az + x * slopes[0] + y * slopes[1]
        visit((row - top) * width + column, out, i, u, v, slopes)
      }
    }
  }
}

const span: [number, number] = [0, 0]

function rowSpan(
  ax: number,
  ux: number,
  uy: number,
  vx: number,
  vy: number,
  seen: number,
  y: number,
): readonly [number, number] {
  span[0] = -Infinity
  span[1] = Infinity
  // slack: neighbours share an edge; a pixel centre on it belongs to both rather than to neither.
  const limit = (slope: number, at: number) => {
    // slope·x + at ≥ 0
    if (slope > 0) span[0] = Math.max(span[0], -at / slope)
    else if (slope < 0) span[1] = Math.min(span[1], -at / slope)
    else if (at < 0) span[1] = -Infinity
  }
  const slack = 1e-9
  limit(vy / seen, (-y * vx) / seen + slack)
  limit(-uy / seen, (y * ux) / seen + slack)
  limit((uy - vy) / seen, 1 - (y * (ux - vx)) / seen + slack)
  span[0] += ax
  span[1] += ax
  return span
}
