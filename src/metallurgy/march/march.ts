import { type Tridiagonal, factor, makeTridiagonal, solve } from './tridiagonal.ts'

/**
 * What drives a flux and how freely it moves, at every node of a row. Flux is -K dp/dx, so for
 * plain Fick p is the carbon itself and K the diffusivity; with activity as the driving force p
 * is the activity and K the mobility over it; for heat p is the temperature and K the
 * conductivity, while the thing conserved is the enthalpy.
 */
export interface FluxLaw {
  /** Fills potential p, dp/du, mobility K and dK/du for the conserved u, at one driving value
   * (the temperature of the history for carbon, of the fire for heat). */
  fill(
    u: Float64Array,
    driver: number,
    p: Float64Array,
    dp: Float64Array,
    k: Float64Array,
    dk: Float64Array,
  ): void
}

/** What happens at the outer face of the first cell. */
export interface Skin {
  /**
   * Flux into the cell through a square metre, into `out[0]`; its change with the cell's
   * potential into `out[1]`, with the cell's mobility into `out[2]`.
   */
  flux(p: number, k: number, width: number, driver: number, out: Float64Array): void
}

/**
 * A row of finite volumes, marched through a history. Space: second order, flux through each face
 * from the two half-cells in series, so a face may be a weld between unlike steels. Time: a
 * linearly implicit Rosenbrock method with an error estimate in each step (Hairer & Wanner,
 * Solving ODEs II, IV.7: RODAS; and the cheaper RODAS3 of Sandu et al. 1997; coefficients from
 * memory, order shown by test). The Jacobian's columns sum to nothing, as the flux form demands,
 * so what is conserved is conserved to rounding whatever the step.
 */
export interface Row {
  /** Thickness of each cell in the direction of flow, m, before any thinning. */
  readonly width: Float64Array
  /** The conserved quantity in each cell, for each unit of volume. */
  readonly value: Float64Array
  readonly law: FluxLaw
  /** `sealed`: nothing through the ends. `cyclic`: the row repeats for ever. */
  readonly ends: 'sealed' | 'cyclic'
  /** Left out, the first face is sealed too. */
  readonly skin?: Skin
  /** For rows that are not flat: volume of each cell, and area of the face in front of each. */
  readonly volume?: Float64Array
  readonly area?: Float64Array
}

/** Straight piece of the history: the driver at both ends, and thickness against the first. */
export interface Spell {
  readonly seconds: number
  readonly from: number
  readonly to: number
  readonly stretch: number
}

export interface MarchReport {
  readonly steps: number
  readonly rejected: number
  /** True if the step limit was met before the end. */
  readonly unfinished: boolean
}

interface Method {
  readonly stages: number
  readonly order: number
  readonly gamma: number
  readonly time: readonly number[]
  readonly slope: readonly number[]
  readonly a: readonly (readonly number[])[]
  readonly c: readonly (readonly number[])[]
  readonly weight: readonly number[]
  readonly error: readonly number[]
  readonly fresh: readonly boolean[]
}

const rodas3: Method = {
  stages: 4,
  order: 3,
  gamma: 0.5,
  time: [0, 0, 1, 1],
  slope: [0.5, 1.5, 0, 0],
  a: [[], [0], [2, 0], [2, 0, 1]],
  c: [[], [4], [1, -1], [1, -1, -8 / 3]],
  weight: [2, 0, 1, 1],
  error: [0, 0, 0, 1],
  fresh: [true, false, true, true],
}

const rodasA5 = [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895]
const rodas4: Method = {
  stages: 6,
  order: 4,
  gamma: 0.25,
  time: [0, 0.386, 0.21, 0.63, 1, 1],
  slope: [0.25, -0.1043, 0.1035, -0.0362, 0, 0],
  a: [
    [],
    [1.544],
    [0.9466785280815826, 0.2557011698983284],
    [3.314825187068521, 2.896124015972201, 0.9986419139977817],
    rodasA5,
    [...rodasA5, 1],
  ],
  c: [
    [],
    [-5.6688],
    [-2.430093356833875, -0.2063599157091915],
    [-0.1073529058151375, -9.594562251023355, -20.47028614809616],
    [7.496443313967647, -10.24680431464352, -33.99990352819905, 11.7089089320616],
    [
      8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136,
      -6.058818238834054,
    ],
  ],
  weight: [...rodasA5, 1, 1],
  error: [0, 0, 0, 0, 0, 1],
  fresh: [true, true, true, true, true, true],
}

const stepLimit = 20_000

/** Alters `row.value` in place: the row belongs to the caller's march and to nobody else.
 *  `tolerance` is the error allowed in each step, in the unit of the value. `fine` asks for the
 *  method of higher order, worth its cost for small tolerances. `observe` is told of each step taken, with the time since
 *  the start, and ends the march by answering true. */
export function march(
  row: Row,
  spells: readonly Spell[],
  tolerance: number,
  fine = tolerance <= 1e-4,
  observe?: (seconds: number) => boolean,
): MarchReport {
  const n = row.value.length
  // For coarse answers the cheaper step wins, for fine ones the higher order.
  const method = fine ? rodas4 : rodas3
  const w = workspace(row, n, method.stages)
  let steps = 0
  let rejected = 0
  let step = 0
  let before = 0
  const stride = 130 * (tolerance / 1e-3) ** (1 / method.order)
  for (const spell of spells) {
    // A microsecond moves nothing, and shorter spells would make the rate of heating infinite.
    if (!(spell.seconds > 1e-6)) continue
    const scale = 1 / (spell.stretch * spell.stretch)
    const rate = (spell.to - spell.from) / spell.seconds
    let t = 0
    const start = before
    before += spell.seconds
    while (t < spell.seconds * (1 - 1e-12)) {
      if (steps + rejected > stepLimit) return { steps, rejected, unfinished: true }
      const temperature = spell.from + rate * t
      slopeAndJacobian(w, row, temperature, scale)
      if (step === 0) step = firstStep(w, tolerance, spell.seconds)
      // On a ramp rates change by e in some 40 K: a longer stride would only be turned back. The
      // rest of the spell is cut evenly, so that no scrap of a step is left at its end.
      const left = spell.seconds - t
      let h = left / Math.ceil((0.95 * left) / Math.min(step, stride / Math.abs(rate)))
      // A step cut short by the end of the spell says nothing against the length that was wanted.
      let wanted = h < step ? step : 0
      for (;;) {
        const error = attempt(w, row, method, temperature, rate, h, scale) / tolerance
        const sound = Number.isFinite(error)
        const grow = !sound ? 0.1 : error > 0 ? 0.9 * error ** (-1 / method.order) : 6
        if (error <= 1 || h < 1e-9 * spell.seconds) {
          t += h
          steps++
          // A step that cannot be computed at any length leaves the row as it was.
          if (sound) row.value.set(w.next)
          step = Math.max(h * Math.min(6, Math.max(0.2, grow)), wanted)
          break
        }
        rejected++
        wanted = 0
        h *= Math.min(0.9, Math.max(0.1, grow))
      }
      if (observe?.(start + t) === true) return { steps, rejected, unfinished: false }
    }
  }
  return { steps, rejected, unfinished: false }
}

interface Workspace {
  readonly p: Float64Array
  readonly dp: Float64Array
  readonly k: Float64Array
  readonly dk: Float64Array
  readonly inverse: Float64Array
  readonly area: Float64Array
  readonly f0: Float64Array
  readonly ft: Float64Array
  readonly f: Float64Array
  readonly stage: Float64Array
  readonly next: Float64Array
  readonly stages: Float64Array[]
  readonly jacobian: { lower: Float64Array; diagonal: Float64Array; upper: Float64Array }
  readonly system: Tridiagonal
  readonly skin: Float64Array
}

function workspace(row: Row, n: number, stages: number): Workspace {
  const line = () => new Float64Array(n)
  const system = makeTridiagonal(n, row.ends === 'cyclic')
  return {
    p: line(),
    dp: line(),
    k: line(),
    dk: line(),
    f0: line(),
    ft: line(),
    f: line(),
    stage: line(),
    next: line(),
    inverse: (row.volume ?? row.width).map((x) => 1 / x),
    area: row.area ?? line().fill(1),
    stages: Array.from({ length: stages }, line),
    jacobian: { lower: line(), diagonal: line(), upper: line() },
    system,
    skin: new Float64Array(3),
  }
}

/** Rate of change of every cell, at one driving value, into `out`. */
function slope(
  w: Workspace,
  row: Row,
  u: Float64Array,
  driver: number,
  scale: number,
  out: Float64Array,
): void {
  const { p, k, inverse, area } = w
  row.law.fill(u, driver, p, w.dp, k, w.dk)
  const n = u.length
  const width = row.width
  let into = 0
  if (row.skin !== undefined) {
    row.skin.flux(p[0]!, k[0]!, width[0]!, driver, w.skin)
    into = w.skin[0]! * area[0]!
  }
  if (w.system.cyclic) {
    const bottom = width[n - 1]! * k[0]! + width[0]! * k[n - 1]! + 1e-300
    into = (2 * k[n - 1]! * k[0]! * (p[n - 1]! - p[0]!)) / bottom
  }
  const first = into
  for (let i = 0; i < n - 1; i++) {
    const ka = k[i]!
    const kb = k[i + 1]!
    const through =
      (2 * area[i + 1]! * ka * kb * (p[i]! - p[i + 1]!)) /
      (width[i]! * kb + width[i + 1]! * ka + 1e-300)
    out[i] = (into - through) * inverse[i]! * scale
    into = through
  }
  out[n - 1] = (into - (w.system.cyclic ? first : 0)) * inverse[n - 1]! * scale
}

function slopeAndJacobian(w: Workspace, row: Row, driver: number, scale: number): void {
  slope(w, row, row.value, driver, scale, w.f0)
  const { p, dp, k, dk, inverse, area } = w
  const { lower, diagonal, upper } = w.jacobian
  const n = p.length
  const width = row.width
  diagonal.fill(0)
  if (row.skin !== undefined) {
    const change = w.skin[1]! * dp[0]! + w.skin[2]! * dk[0]!
    diagonal[0] = change * area[0]! * inverse[0]! * scale
  }
  const faces = w.system.cyclic ? n : n - 1
  for (let i = 0; i < faces; i++) {
    const j = i + 1 === n ? 0 : i + 1
    const ka = k[i]!
    const kb = k[j]!
    const bottom = 1 / (width[i]! * kb + width[j]! * ka + 1e-300)
    const gap = p[i]! - p[j]!
    const couple = 2 * ka * kb * bottom
    // d/dKa of Ka Kb / (ha Kb + hb Ka) = ha Kb² / (...)²
    const da = couple * dp[i]! + 2 * gap * width[i]! * kb * kb * bottom * bottom * dk[i]!
    const db = -couple * dp[j]! + 2 * gap * width[j]! * ka * ka * bottom * bottom * dk[j]!
    const si = area[j]! * inverse[i]! * scale
    const sj = area[j]! * inverse[j]! * scale
    diagonal[i] = diagonal[i]! - da * si
    upper[i] = -db * si
    lower[j] = da * sj
    diagonal[j] = diagonal[j]! + db * sj
  }
}

function firstStep(w: Workspace, tolerance: number, span: number): number {
  let fastest = 0
  for (const f of w.f0) fastest = Math.max(fastest, Math.abs(f))
  return fastest > 0 ? Math.min(span, (50 * tolerance) / fastest) : span
}

/** One Rosenbrock step into `w.next`; returns the largest error estimate. */
function attempt(
  w: Workspace,
  row: Row,
  m: Method,
  temperature: number,
  rate: number,
  h: number,
  scale: number,
): number {
  const n = row.value.length
  const { system, jacobian, stages, stage, f, f0, ft, next } = w
  const shift = 1 / (h * m.gamma)
  for (let i = 0; i < n; i++) {
    system.lower[i] = -jacobian.lower[i]!
    system.upper[i] = -jacobian.upper[i]!
    system.diagonal[i] = shift - jacobian.diagonal[i]!
  }
  factor(system)
  const moving = rate !== 0
  if (moving) {
    // df/dt by a difference forward in time: the temperature alone changes.
    const dt = Math.max(1e-4 * h, 1e-9)
    slope(w, row, row.value, temperature + rate * dt, scale, ft)
    for (let i = 0; i < n; i++) ft[i] = (ft[i]! - f0[i]!) / dt
  }
  for (let s = 0; s < m.stages; s++) {
    const b = stages[s]!
    let now: Float64Array
    if (s === 0) now = f0
    else if (!m.fresh[s]) now = s === 1 ? f0 : f
    else {
      stage.set(row.value)
      const a = m.a[s]!
      for (let j = 0; j < s; j++) {
        const aj = a[j]!
        if (aj === 0) continue
        const kj = stages[j]!
        for (let i = 0; i < n; i++) stage[i] = stage[i]! + aj * kj[i]!
      }
      slope(w, row, stage, temperature + rate * h * m.time[s]!, scale, f)
      now = f
    }
    b.set(now)
    const c = m.c[s]!
    for (let j = 0; j < s; j++) {
      const cj = c[j]! / h
      if (cj === 0) continue
      const kj = stages[j]!
      for (let i = 0; i < n; i++) b[i] = b[i]! + cj * kj[i]!
    }
    if (moving && m.slope[s] !== 0) {
      const g = h * m.slope[s]!
      for (let i = 0; i < n; i++) b[i] = b[i]! + g * ft[i]!
    }
    solve(system, b)
  }
  next.set(row.value)
  for (let s = 0; s < m.stages; s++) {
    const ws = m.weight[s]!
    if (ws === 0) continue
    const ks = stages[s]!
    for (let i = 0; i < n; i++) next[i] = next[i]! + ws * ks[i]!
  }
  let worst = 0
  const last = stages[m.stages - 1]!
  for (let i = 0; i < n; i++) {
    const e = last[i]! < 0 ? -last[i]! : last[i]!
    if (e !== e) return NaN
    if (e > worst) worst = e
  }
  return worst
}
