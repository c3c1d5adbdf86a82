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
  const cell = given.cell ?? smallest / 6
  const plan = new Plan(length, width, cell)
  const depth = (face: Dimple['face'], x: number, y: number) =>
    dimples.reduce(
      (deepest, d) =>
        d.face === face ? Math.max(deepest, dimpleDepth(d, Math.hypot(x - d.x, y - d.y))) : deepest,
      0,
    )
  const top = (x: number, y: number) => height / 2 - depth('top', x, y)
  const bottom = (x: number, y: number) => -height / 2 + depth('bottom', x, y)
  const mean = plan.mean((x, y) => top(x, y) - bottom(x, y))
  const residual = plan.even((x, y) => (top(x, y) - bottom(x, y)) / mean)
  const gain = mean / flat
  const factors = { length: gain ** (1 - spread), width: gain ** spread, height: 1 / gain }
  const flattened = field({
    x: 0,
    y: -width / 2,
    cellX: plan.dx,
    cellY: plan.dy,
    columns: plan.columns + 2,
    along: plan.u,
    across: plan.v,
    middle: plan.sample((x, y) => (top(x, y) + bottom(x, y)) / 2),
  })
  return {
    warps: [flattened, draw(factors)],
    length: length * factors.length,
    width: width * factors.width,
    residual,
  }
}

const ROUNDS = 24

/** Cells over a plan, and the spline coefficients (one more cell all round) of a displacement in it. */
class Plan {
  readonly columns: number
  readonly rows: number
  readonly dx: number
  readonly dy: number
  private readonly width: number
  u: number[]
  v: number[]

  constructor(length: number, width: number, cell: number) {
    this.columns = Math.max(4, Math.ceil(length / cell))
    this.rows = Math.max(4, Math.ceil(width / cell))
    this.dx = length / this.columns
    this.dy = width / this.rows
    this.width = width
    const all = (this.columns + 2) * (this.rows + 2)
    this.u = new Array<number>(all).fill(0)
    this.v = new Array<number>(all).fill(0)
  }

  private at(i: number, j: number): number {
    return (j + 1) * (this.columns + 2) + i + 1
  }
  private place(i: number, j: number): [number, number] {
    return [(i + 0.5) * this.dx, (j + 0.5) * this.dy - this.width / 2]
  }
  private cells<T>(f: (i: number, j: number) => T): T[] {
    return Array.from({ length: this.columns * this.rows }, (_, k) =>
      f(k % this.columns, Math.floor(k / this.columns)),
    )
  }
  mean(f: (x: number, y: number) => number): number {
    const all = this.cells((i, j) => f(...this.place(i, j)))
    return all.reduce((a, b) => a + b, 0) / all.length
  }

  /** A spline's own value over the middle of a cell, from its coefficient and its neighbours'. */
  private value(c: readonly number[], i: number, j: number): number {
    const row = (k: number) =>
      (c[this.at(i - 1, k)]! + 6 * c[this.at(i, k)]! + c[this.at(i + 1, k)]!) / 8
    return (row(j - 1) + 6 * row(j) + row(j + 1)) / 8
  }
  private slopes(c: readonly number[], i: number, j: number): [number, number] {
    const along = (k: number) => (c[this.at(i + 1, k)]! - c[this.at(i - 1, k)]!) / (2 * this.dx)
    const across = (k: number) => (c[this.at(k, j + 1)]! - c[this.at(k, j - 1)]!) / (2 * this.dy)
    const blend = (f: (k: number) => number, k: number) => (f(k - 1) + 6 * f(k) + f(k + 1)) / 8
    return [blend(along, j), blend(across, i)]
  }
  /** Where the middle of a cell after lay before, and the area before of one after. */
  private before(i: number, j: number) {
    const [x, y] = this.place(i, j)
    const [ux, uy] = this.slopes(this.u, i, j)
    const [vx, vy] = this.slopes(this.v, i, j)
    return {
      x: x + this.value(this.u, i, j),
      y: y + this.value(this.v, i, j),
      area: (1 + ux) * (1 + vy) - uy * vx,
    }
  }

  /** Coefficients of a function of the place before, read at the cells after. */
  sample(f: (x: number, y: number) => number): number[] {
    const values = this.cells((i, j) => {
      const { x, y } = this.before(i, j)
      return f(x, y)
    })
    return this.bordered(values, 1, 1)
  }

  /**
   * Moves the plane until area × height is the same everywhere: each round solves a Poisson equation for the potential
   * whose gradient takes the rest away. Gives the rms of what is left.
   */
  even(height: (x: number, y: number) => number): number {
    let left = 0
    for (let round = 0; round < ROUNDS; round++) {
      const excess = this.cells((i, j) => {
        const { x, y, area } = this.before(i, j)
        return Math.log(area * height(x, y))
      })
      const mean = excess.reduce((a, b) => a + b, 0) / excess.length
      left = Math.sqrt(excess.reduce((sum, e) => sum + (e - mean) ** 2, 0) / excess.length)
      const potential = this.bordered(this.poisson(excess.map((e) => mean - e)), 1, 1)
      const grad = this.cells((i, j): [number, number] => [
        (potential[this.at(i + 1, j)]! - potential[this.at(i - 1, j)]!) / (2 * this.dx),
        (potential[this.at(i, j + 1)]! - potential[this.at(i, j - 1)]!) / (2 * this.dy),
      ])
      const inner = (c: readonly number[]) => this.cells((i, j) => c[this.at(i, j)]!)
      this.u = this.bordered(
        inner(this.u).map((u, k) => u + grad[k]![0]),
        -1,
        1,
      )
      this.v = this.bordered(
        inner(this.v).map((v, k) => v + grad[k]![1]),
        1,
        -1,
      )
    }
    return left
  }

  /** With one more cell all round: mirrored at the ends by `endSign`, at the sides by `sideSign`. */
  private bordered(inner: readonly number[], endSign: 1 | -1, sideSign: 1 | -1): number[] {
    const all = new Array<number>((this.columns + 2) * (this.rows + 2)).fill(0)
    for (let j = -1; j <= this.rows; j++)
      for (let i = -1; i <= this.columns; i++) {
        const [ci, cj] = [
          Math.min(Math.max(i, 0), this.columns - 1),
          Math.min(Math.max(j, 0), this.rows - 1),
        ]
        const sign = (ci === i ? 1 : endSign) * (cj === j ? 1 : sideSign)
        all[this.at(i, j)] = sign * inner[cj * this.columns + ci]!
      }
    return all
  }

  /** ∇²φ = f with no flow through the edges: cosines across, then a line of unknowns along for each. */
  private poisson(f: readonly number[]): number[] {
    const { columns, rows } = this
    const result = new Array<number>(f.length).fill(0)
    for (let mode = 0; mode < rows; mode++) {
      const wave = Array.from({ length: rows }, (_, j) =>
        Math.cos((Math.PI * mode * (j + 0.5)) / rows),
      )
      const size = mode === 0 ? rows : rows / 2
      const right = Array.from(
        { length: columns },
        (_, i) => wave.reduce((sum, w, j) => sum + w * f[j * columns + i]!, 0) / size,
      )
      const across = ((2 * Math.sin((Math.PI * mode) / (2 * rows))) / this.dy) ** 2
      const line = solveLine(right, 1 / (this.dx * this.dx), across)
      wave.forEach((w, j) => line.forEach((value, i) => (result[j * columns + i]! += w * value)))
    }
    return result
  }
}

/** (φ₋ − 2φ + φ₊)·a − c·φ = f with closed ends; for c = 0 the first unknown is held at zero. */
function solveLine(f: readonly number[], a: number, c: number): number[] {
  const n = f.length
  const upper: number[] = []
  const right: number[] = []
  for (let i = 0; i < n; i++) {
    const ends = (i === 0 ? 1 : 0) + (i === n - 1 ? 1 : 0)
    let diagonal = -(2 - ends) * a - c
    if (i === 0 && c === 0) diagonal = -1e6 * a
    const below = i === 0 ? 0 : a
    const pivot = diagonal - below * (upper[i - 1] ?? 0)
    upper.push(a / pivot)
    right.push((f[i]! - below * (right[i - 1] ?? 0)) / pivot)
  }
  const x = new Array<number>(n).fill(0)
  for (let i = n - 1; i >= 0; i--) x[i] = right[i]! - (i < n - 1 ? upper[i]! * x[i + 1]! : 0)
  return x
}
