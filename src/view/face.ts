import type { Mesh, Outline, Size } from '#geometry'
import type { Imprint, PieceSolid } from '#piece'
import { smoothNormals } from './smooth-normals.ts'
import type { FaceView, Frame, Surface, Vector } from './view.ts'

/** The six ways to look at a bar or a piece: `edge` is the side of least y, `butt` the end at x = 0. */
export type Side = 'front' | 'back' | 'edge' | 'spine' | 'butt' | 'point'
export const SIDES: readonly Side[] = ['front', 'back', 'edge', 'spine', 'butt', 'point']

/** Right, up and out of each side. The back is the bar rolled over about its length, as a smith turns it. */
const LOOKS: Readonly<Record<Side, readonly [Vector, Vector, Vector]>> = {
  front: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  back: [
    [1, 0, 0],
    [0, -1, 0],
    [0, 0, -1],
  ],
  edge: [
    [1, 0, 0],
    [0, 0, 1],
    [0, -1, 0],
  ],
  spine: [
    [1, 0, 0],
    [0, 0, -1],
    [0, 1, 0],
  ],
  butt: [
    [0, -1, 0],
    [0, 0, 1],
    [-1, 0, 0],
  ],
  point: [
    [0, 1, 0],
    [0, 0, 1],
    [1, 0, 0],
  ],
}

export interface FaceOptions {
  /** Pixels to a millimetre. */
  readonly ppmm: number
  /** How far the face is ground away, m. */
  readonly depth?: number
  /** Clear rim round the metal, m. */
  readonly margin?: number
  /**
   * Sides of the facets a curved surface is drawn by, m. Left out: four pixels, and no less than 1/800 of the length. At
   * 10 pixels to a millimetre a fuller of 41 mm radius is then half a micrometre off.
   */
  readonly facet?: number
}

function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}
function at(frame: Omit<Frame, 'origin'>, p: Vector): Vector {
  return [dot(p, frame.right), dot(p, frame.up), dot(p, frame.out)]
}
function from(frame: Omit<Frame, 'origin'>, p: Vector): Vector {
  return [0, 1, 2].map(
    (k) => p[0] * frame.right[k]! + p[1] * frame.up[k]! + p[2] * frame.out[k]!,
  ) as unknown as Vector
}

/** A face, ground flat, of a straight bar: any bar of the route, at any step. */
export function faceOfBar(size: Size, side: Side, options: FaceOptions): FaceView {
  const [right, up, out] = LOOKS[side]
  const far: Vector = [
    out[0] > 0 ? size.length : 0,
    (out[1] * size.width) / 2,
    (out[2] * size.height) / 2,
  ]
  const depth = options.depth ?? 0
  const on = far.map((c, k) => c - depth * out[k]!) as unknown as Vector
  const [low, high] = extent(barCorners(size), { right, up, out })
  return flatView(
    `${side} of the bar`,
    { right, up, out },
    dot(on, out),
    [rectangle(low, high)],
    options,
  )
}

function barCorners({ length, width, height }: Size): Vector[] {
  return [0, length].flatMap((x) =>
    [-width / 2, width / 2].flatMap((y) => [-height / 2, height / 2].map((z): Vector => [x, y, z])),
  )
}

function extent(points: readonly Vector[], axes: Omit<Frame, 'origin'>): readonly [Vector, Vector] {
  const low: [number, number, number] = [Infinity, Infinity, Infinity]
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity]
  for (const p of points)
    at(axes, p).forEach((v, k) => {
      low[k] = Math.min(low[k]!, v)
      high[k] = Math.max(high[k]!, v)
    })
  return [low, high]
}

function rectangle(low: Vector, high: Vector): Outline {
  const [a, b, c, d] = [low[0], low[1], high[0], high[1]]
  return [
    { x: a, y: b },
    { x: c, y: b },
    { x: c, y: d },
    { x: a, y: d },
  ]
}

/** A view of a plane: loops in its own right and up, `out` its distance from the frame's origin. */
function flatView(
  title: string,
  axes: Omit<Frame, 'origin'>,
  out: number,
  outlines: readonly Outline[],
  options: FaceOptions,
): FaceView {
  const margin = options.margin ?? 0
  const pixel = 1e-3 / options.ppmm
  const all = outlines.flat()
  const [left, right] = bounds(all.map((p) => p.x))
  const [low, high] = bounds(all.map((p) => p.y))
  const [x0, y0] = [left - margin, low - margin]
  return {
    title,
    frame: { ...axes, origin: from(axes, [x0, y0, out]) },
    width: pixels(right - left + 2 * margin, pixel),
    height: pixels(high - low + 2 * margin, pixel),
    pixel,
    surface: {
      kind: 'flat',
      outlines: outlines.map((loop) => loop.map(({ x, y }) => ({ x: x - x0, y: y - y0 }))),
    },
    depth: 0,
  }
}

function bounds(values: readonly number[]): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity]
  for (const v of values) [low, high] = [Math.min(low, v), Math.max(high, v)]
  return low <= high ? [low, high] : [0, 0]
}
function pixels(length: number, pixel: number): number {
  return Math.max(1, Math.ceil(length / pixel - 1e-6))
}

function facetOf(solid: PieceSolid, { facet, ppmm }: FaceOptions): number {
  return facet ?? Math.max(4e-3 / ppmm, solid.size.length / 800)
}

/** A face of a finished piece: flats, bevels, fullers, grooves, edges and ends as the solid has them. */
export function faceOfSolid(solid: PieceSolid, side: Side, options: FaceOptions): FaceView {
  const facet = facetOf(solid, options)
  return {
    ...faceOfMesh(faceted(solid, facet), side, options),
    title: `${side} of the ${solid.kind}`,
  }
}

/** A closed surface, and what is pressed into its upper face: drawn pixel by pixel, finer than any facet. */
export interface Faceted extends Pick<Mesh, 'positions' | 'triangles'> {
  readonly imprint?: Imprint
}

/** A piece as plain data, from which it can be seen from anywhere. */
export function faceted(solid: PieceSolid, facet: number): Faceted {
  const { imprint } = solid
  const { positions, triangles } = (imprint ? solid.stamped(undefined) : solid).mesh(facet)
  return { positions, triangles, ...(imprint && { imprint }) }
}

/** Any closed surface, seen from a side or along any direction (`out`, with `up` upright in the picture). */
export function faceOfMesh(
  mesh: Faceted,
  look: Side | { readonly out: Vector; readonly up: Vector },
  options: FaceOptions,
): FaceView {
  const axes = axesOf(look)
  const margin = options.margin ?? 0
  const pixel = 1e-3 / options.ppmm
  const { positions: p, triangles, imprint } = mesh
  const turned = new Float64Array(p.length)
  const low = [Infinity, Infinity]
  const high = [-Infinity, -Infinity]
  for (let i = 0; i < p.length; i += 3) {
    const q = at(axes, [p[i]!, p[i + 1]!, p[i + 2]!])
    turned.set(q, i)
    for (const k of [0, 1] as const) {
      low[k] = Math.min(low[k]!, q[k])
      high[k] = Math.max(high[k]!, q[k])
    }
  }
  const [x0, y0] = [low[0]! - margin, low[1]! - margin]
  for (let i = 0; i < turned.length; i += 3) {
    turned[i] = turned[i]! - x0
    turned[i + 1] = turned[i + 1]! - y0
  }
  const surface: Surface = {
    kind: 'facets',
    positions: turned,
    triangles,
    normals: smoothNormals(turned, triangles),
    // Under the eye it is pressed in; from behind there is nothing of it.
    ...(imprint && axes.out[2] > 0 && { imprint }),
  }
  return {
    title: typeof look === 'string' ? look : 'surface',
    frame: { ...axes, origin: from(axes, [x0, y0, 0]) },
    width: pixels(high[0]! - x0 + margin, pixel),
    height: pixels(high[1]! - y0 + margin, pixel),
    pixel,
    surface,
    depth: options.depth ?? 0,
  }
}

function axesOf(look: Side | { readonly out: Vector; readonly up: Vector }): Omit<Frame, 'origin'> {
  if (typeof look === 'string') {
    const [right, up, out] = LOOKS[look]
    return { right, up, out }
  }
  const out = unit(look.out)
  const lean = dot(look.up, out)
  const up = unit(look.up.map((v, k) => v - lean * out[k]!) as unknown as Vector)
  const right: Vector = [
    up[1] * out[2] - up[2] * out[1],
    up[2] * out[0] - up[0] * out[2],
    up[0] * out[1] - up[1] * out[0],
  ]
  return { right, up, out }
}
function unit(v: Vector): Vector {
  const n = Math.hypot(...v) || 1
  return [v[0] / n, v[1] / n, v[2] / n]
}

/** A plane through the metal: across an axis at a distance along it, or through a point in any direction. */
export type Plane =
  | { readonly axis: 'x' | 'y' | 'z'; readonly at: number }
  | { readonly through: Vector; readonly out: Vector; readonly up: Vector }

const ACROSS: Readonly<Record<'x' | 'y' | 'z', Side>> = { x: 'point', y: 'edge', z: 'front' }

function planeOf(plane: Plane) {
  if ('axis' in plane) {
    const axes = axesOf(ACROSS[plane.axis])
    const sign = axes.out[{ x: 0, y: 1, z: 2 }[plane.axis]]!
    return { axes, out: plane.at * sign, title: `section at ${plane.axis}` }
  }
  const axes = axesOf(plane)
  return { axes, out: dot(plane.through, axes.out), title: 'section' }
}

/** A section of a straight bar. */
export function sectionOfBar(size: Size, plane: Plane, options: FaceOptions): FaceView {
  const corners = barCorners(size)
  const quads = [
    [0, 1, 3, 2],
    [4, 6, 7, 5],
    [0, 4, 5, 1],
    [2, 3, 7, 6],
    [0, 2, 6, 4],
    [1, 5, 7, 3],
  ]
  const triangles = quads.flatMap(([a, b, c, d]) => [a!, b!, c!, a!, c!, d!])
  const mesh = {
    positions: Float64Array.from(corners.flat()),
    triangles: Uint32Array.from(triangles),
  }
  return sectionOfMesh(mesh, plane, options)
}

/** A section of a finished piece. */
export function sectionOfSolid(solid: PieceSolid, plane: Plane, options: FaceOptions): FaceView {
  const facet = facetOf(solid, options)
  return sectionOfMesh(solid.mesh(facet), plane, options)
}

/** A section of any closed surface. */
export function sectionOfMesh(
  mesh: Pick<Mesh, 'positions' | 'triangles'>,
  plane: Plane,
  options: FaceOptions,
): FaceView {
  const { axes, out, title } = planeOf(plane)
  const { positions: p, triangles: t } = mesh
  const count = p.length / 3
  const turned = Array.from({ length: count }, (_, i) =>
    at(axes, [p[3 * i]!, p[3 * i + 1]!, p[3 * i + 2]!]),
  )
  // A corner in the plane counts as above it, so that every cut triangle has exactly two cut sides.
  const above = turned.map((q) => q[2] >= out)
  const outlines: Outline[] = []
  for (let i = 0; i < t.length; i += 3) {
    const corners = [t[i]!, t[i + 1]!, t[i + 2]!]
    const ends: { x: number; y: number; rising: boolean }[] = []
    corners.forEach((a, k) => {
      const b = corners[(k + 1) % 3]!
      if (above[a] === above[b]) return
      const [u, v] = [turned[a]!, turned[b]!]
      const s = (out - u[2]) / (v[2] - u[2])
      ends.push({
        x: u[0] + s * (v[0] - u[0]),
        y: u[1] + s * (v[1] - u[1]),
        rising: above[b]!,
      })
    })
    if (ends.length !== 2) continue
    // Two points, there and back by way of nothing: a loop the area of which is told by its one real side.
    const [start, end] = ends[0]!.rising ? [ends[1]!, ends[0]!] : [ends[0]!, ends[1]!]
    outlines.push([
      { x: start.x, y: start.y },
      { x: end.x, y: end.y },
    ])
  }
  return flatView(title, axes, out, joinSides(outlines), options)
}

/** Loose sides put end to end into loops. */
function joinSides(sides: readonly Outline[]): Outline[] {
  const key = (p: { x: number; y: number }) => `${Math.round(p.x * 1e9)} ${Math.round(p.y * 1e9)}`
  const next = new Map<string, Outline[]>()
  for (const side of sides) {
    const k = key(side[0]!)
    next.set(k, [...(next.get(k) ?? []), side])
  }
  const loops: Outline[] = []
  for (const starts of next.values()) {
    while (starts.length > 0) {
      const loop: { x: number; y: number }[] = []
      for (let side = starts.pop(); side; side = next.get(key(side[1]!))?.pop()) loop.push(side[0]!)
      if (loop.length > 2) loops.push(loop)
    }
  }
  return loops
}
