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
  const cut = { top: new Cuts(dimples, 'top'), bottom: new Cuts(dimples, 'bottom') }
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
  private readonly strips = new Map<number, Dimple[]>()
  private readonly strip: number

  constructor(dimples: readonly Dimple[], face: Dimple['face']) {
    this.strip = Math.max(1e-6, ...dimples.map((d) => 2 * d.radius))
    for (const dimple of dimples) {
      if (dimple.face !== face) continue
      const first = Math.floor((dimple.x - dimple.radius) / this.strip)
      const last = Math.floor((dimple.x + dimple.radius) / this.strip)
      for (let i = first; i <= last; i++)
        this.strips.set(i, [...(this.strips.get(i) ?? []), dimple])
    }
  }

  depth(x: number, y: number): number {
    let deepest = 0
    for (const d of this.strips.get(Math.floor(x / this.strip)) ?? []) {
      const away = Math.hypot(x - d.x, y - d.y)
      if (away < d.radius) deepest = Math.max(deepest, dimpleDepth(d, away))
    }
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
