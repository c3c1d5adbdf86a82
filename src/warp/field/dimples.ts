import { draw } from '../draw/index.ts'
import { field } from './index.ts'
import type { Warp } from '../warp.ts'

export interface Dimple {
  readonly x: number
  readonly y: number
  readonly depth: number
  /** At the face. */
  readonly radius: number
  /** A drill's point, or a ball. */
  readonly shape: 'cone' | 'ball'
  readonly face: 'top' | 'bottom'
}

/** Depth of a dimple at a distance from its middle. */
export function dimpleDepth(dimple: Dimple, away: number): number {
  const { depth, radius, shape } = dimple
  if (away >= radius) return 0
  if (shape === 'cone') return depth * (1 - away / radius)
  if (depth >= radius) return depth - radius + Math.sqrt(radius * radius - away * away)
  const ball = (radius * radius) / (2 * depth) + depth / 2
  return Math.sqrt(Math.max(0, ball * ball - away * away)) - (ball - depth)
}

/** A dimple's rim is rounded over so many cells of the plan (rms): what a grid cannot hold would come out as ripples round every ring. */
const ROUNDED = 0.75
/** Rounding is felt so many of its rms away. */
const FELT = 3.5

/** A dimple's depth by distance from its middle, its rim rounded by a Gaussian of `rms`, m; its volume is what it was. */
function roundedDepth(dimple: Dimple, rms: number): (away: number) => number {
  const reach = dimple.radius + FELT * rms
  const step = rms / 4
  const side = Math.ceil(FELT / 0.5)
  const weights: { readonly x: number; readonly y: number; readonly share: number }[] = []
  let sum = 0
  for (let j = -side; j <= side; j++)
    for (let i = -side; i <= side; i++) {
      const share = Math.exp(-(i * i + j * j) / 8)
      weights.push({ x: (i * rms) / 2, y: (j * rms) / 2, share })
      sum += share
    }
  const table = Array.from({ length: Math.ceil(reach / step) + 2 }, (_, k) => {
    const away = k * step
    let depth = 0
    for (const { x, y, share } of weights)
      depth += share * dimpleDepth(dimple, Math.hypot(away + x, y))
    return depth / sum
  })
  return (away) => {
    if (away >= reach) return 0
    const t = away / step
    const k = Math.floor(t)
    return table[k]! + (t - k) * (table[k + 1]! - table[k]!)
  }
}

/**
 * A plate with dimples cut into its faces, forged flat (raindrop). First the metal evens out over the same plan, the
 * plane moved by the gradient of one potential so that the columns' area answers their height, then the whole is drawn
 * to `flat`, sharing the gain in area by `spread` (the share of it that goes into width). Rings are the contour lines of
 * the cut; the volume is kept exactly, the evened thickness to `residual` (rms, as a share of it).
 */
export function flattenDimples(given: {
  length: number
  width: number
  height: number
  flat: number
  dimples: readonly Dimple[]
  spread?: number
  cell?: number
}): { warps: readonly Warp[]; length: number; width: number; residual: number } {
  const { length, width, height, flat, dimples, spread = 0.5 } = given
  const smallest = Math.min(width, ...dimples.map((d) => d.radius))
  const plan = new Plan(length, width, given.cell ?? smallest / 5)
  const rms = ROUNDED * Math.max(plan.dx, plan.dy)
  const cut = { top: new Cuts(dimples, 'top', rms), bottom: new Cuts(dimples, 'bottom', rms) }
  const thickness = (x: number, y: number) => height - cut.top.depth(x, y) - cut.bottom.depth(x, y)
  const mean = plan.mean(thickness)
  const residual = plan.even((x, y) => thickness(x, y) / mean)
  const gain = mean / flat
  const factors = { length: gain ** (1 - spread), width: gain ** spread, height: 1 / gain }
  const flattened = field({
    x: 0,
    y: -width / 2,
    cellX: plan.dx,
    cellY: plan.dy,
    columns: plan.columns + 2,
    along: Array.from(plan.u),
    across: Array.from(plan.v),
    middle: plan.sample((x, y) => (cut.bottom.depth(x, y) - cut.top.depth(x, y)) / 2),
  })
  return {
    warps: [flattened, draw(factors)],
    length: length * factors.length,
    width: width * factors.width,
    residual,
  }
}

/** The dimples of one face, found by place: sorted into strips as long as the widest. */
class Cuts {
  private readonly strips = new Map<number, { dimple: Dimple; depth: (away: number) => number }[]>()
  private readonly strip: number

  constructor(dimples: readonly Dimple[], face: Dimple['face'], rms: number) {
    this.strip = Math.max(1e-6, ...dimples.map((d) => 2 * d.radius))
    const shapes = new Map<string, (away: number) => number>()
    for (const dimple of dimples) {
      if (dimple.face !== face) continue
      const shape = `${dimple.shape} ${dimple.depth} ${dimple.radius}`
      const depth = shapes.get(shape) ?? roundedDepth(dimple, rms)
      shapes.set(shape, depth)
      const reach = dimple.radius + FELT * rms
      const first = Math.floor((dimple.x - reach) / this.strip)
      const last = Math.floor((dimple.x + reach) / this.strip)
      for (let i = first; i <= last; i++)
        this.strips.set(i, [...(this.strips.get(i) ?? []), { dimple, depth }])
    }
  }

  depth(x: number, y: number): number {
    let deepest = 0
    for (const { dimple, depth } of this.strips.get(Math.floor(x / this.strip)) ?? [])
      deepest = Math.max(deepest, depth(Math.hypot(x - dimple.x, y - dimple.y)))
    return deepest
  }
}

const MOST_ROUNDS = 24
/** A round that leaves more than this share of what there was is the last. */
const SLOW = 0.93

/** Cells over a plan, and the spline coefficients (one more cell all round) of a displacement in it. */
class Plan {
  readonly columns: number
  readonly rows: number
  readonly dx: number
  readonly dy: number
  readonly u: Float64Array
  readonly v: Float64Array
  private readonly width: number
  /** Coefficients in a row. */
  private readonly stride: number

  constructor(length: number, width: number, cell: number) {
    this.columns = Math.max(4, Math.ceil(length / cell))
    this.rows = Math.max(4, Math.ceil(width / cell))
    this.dx = length / this.columns
    this.dy = width / this.rows
    this.width = width
    this.stride = this.columns + 2
    this.u = new Float64Array(this.stride * (this.rows + 2))
    this.v = new Float64Array(this.u.length)
  }

  /** Every cell: its number, the place of its middle, and that of its coefficient. */
  private each(f: (k: number, x: number, y: number, c: number) => void): void {
    for (let j = 0, k = 0; j < this.rows; j++)
      for (let i = 0; i < this.columns; i++, k++)
        f(
          k,
          (i + 0.5) * this.dx,
          (j + 0.5) * this.dy - this.width / 2,
          (j + 1) * this.stride + i + 1,
        )
  }
  private cells(): Float64Array {
    return new Float64Array(this.columns * this.rows)
  }
  mean(f: (x: number, y: number) => number): number {
    let sum = 0
    this.each((_, x, y) => (sum += f(x, y)))
    return sum / (this.columns * this.rows)
  }

  /** A spline's value over the middle of a cell, from its coefficient and its neighbours'. */
  private value(c: Float64Array, k: number): number {
    const row = (at: number) => c[at - 1]! + 6 * c[at]! + c[at + 1]!
    return (row(k - this.stride) + 6 * row(k) + row(k + this.stride)) / 64
  }
  private slope(c: Float64Array, k: number, step: number, side: number, size: number): number {
    const rise = (at: number) => c[at + step]! - c[at - step]!
    return (rise(k - side) + 6 * rise(k) + rise(k + side)) / (16 * size)
  }

  /** Coefficients of a function of the place before, read at the cells after. */
  sample(f: (x: number, y: number) => number): number[] {
    const values = this.cells()
    this.each((k, x, y, c) => (values[k] = f(x + this.value(this.u, c), y + this.value(this.v, c))))
    const all = new Float64Array(this.u.length)
    this.each((k, _x, _y, c) => (all[c] = values[k]!))
    this.border(all, 1, 1)
    return Array.from(all)
  }

  /**
   * Moves the plane until area × height is the same everywhere: each round solves a Poisson equation for the potential
   * whose gradient takes the rest away. Gives the rms of what is left.
   */
  even(height: (x: number, y: number) => number): number {
    const { u, v, dx, dy, stride } = this
    const excess = this.cells()
    const potential = new Float64Array(u.length)
    let left = Infinity
    for (let round = 0; round < MOST_ROUNDS; round++) {
      let sum = 0
      this.each((k, x, y, c) => {
        const [ux, uy] = [this.slope(u, c, 1, stride, dx), this.slope(u, c, stride, 1, dy)]
        const [vx, vy] = [this.slope(v, c, 1, stride, dx), this.slope(v, c, stride, 1, dy)]
        const area = (1 + ux) * (1 + vy) - uy * vx
        const high = height(x + this.value(u, c), y + this.value(v, c))
        excess[k] = Math.log(area * high)
        sum += excess[k]!
      })
      const mean = sum / excess.length
      let squares = 0
      for (let k = 0; k < excess.length; k++) {
        excess[k] = mean - excess[k]!
        squares += excess[k]! ** 2
      }
      const before = left
      left = Math.sqrt(squares / excess.length)
      if (left > before * SLOW || left < 1e-6) break
      const solved = this.poisson(excess)
      this.each((k, _x, _y, c) => (potential[c] = solved[k]!))
      this.border(potential, 1, 1)
      this.each((_k, _x, _y, c) => {
        u[c]! += (potential[c + 1]! - potential[c - 1]!) / (2 * dx)
        v[c]! += (potential[c + stride]! - potential[c - stride]!) / (2 * dy)
      })
      this.border(u, -1, 1)
      this.border(v, 1, -1)
    }
    return left
  }

  /** The outermost cells mirror their neighbours: by `endSign` at the ends, by `sideSign` at the sides. */
  private border(c: Float64Array, endSign: 1 | -1, sideSign: 1 | -1): void {
    const { stride, rows, columns } = this
    for (let j = 1; j <= rows; j++) {
      c[j * stride] = endSign * c[j * stride + 1]!
      c[j * stride + columns + 1] = endSign * c[j * stride + columns]!
    }
    for (let i = 0; i < stride; i++) {
      c[i] = sideSign * c[stride + i]!
      c[(rows + 1) * stride + i] = sideSign * c[rows * stride + i]!
    }
  }

  /** ∇²φ = f with no flow through the edges: cosines across, then a line of unknowns along for each. */
  private poisson(f: Float64Array): Float64Array {
    const { columns, rows } = this
    const result = this.cells()
    const line = new Float64Array(columns)
    for (let mode = 0; mode < rows; mode++) {
      const size = mode === 0 ? rows : rows / 2
      const wave = (j: number) => Math.cos((Math.PI * mode * (j + 0.5)) / rows)
      line.fill(0)
      for (let j = 0; j < rows; j++) {
        const w = wave(j) / size
        for (let i = 0; i < columns; i++) line[i]! += w * f[j * columns + i]!
      }
      const across = ((2 * Math.sin((Math.PI * mode) / (2 * rows))) / this.dy) ** 2
      solveLine(line, 1 / (this.dx * this.dx), across)
      for (let j = 0; j < rows; j++) {
        const w = wave(j)
        for (let i = 0; i < columns; i++) result[j * columns + i]! += w * line[i]!
      }
    }
    return result
  }
}

/** In place: (φ₋ − 2φ + φ₊)·a − c·φ = f with closed ends; for c = 0 the first unknown is held at zero. */
function solveLine(f: Float64Array, a: number, c: number): void {
  const n = f.length
  const upper = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    const ends = (i === 0 ? 1 : 0) + (i === n - 1 ? 1 : 0)
    const diagonal = i === 0 && c === 0 ? -1e6 * a : -(2 - ends) * a - c
    const below = i === 0 ? 0 : a
    const pivot = diagonal - below * (i === 0 ? 0 : upper[i - 1]!)
    upper[i] = a / pivot
    f[i] = (f[i]! - below * (i === 0 ? 0 : f[i - 1]!)) / pivot
  }
  for (let i = n - 2; i >= 0; i--) f[i]! -= upper[i]! * f[i + 1]!
}
