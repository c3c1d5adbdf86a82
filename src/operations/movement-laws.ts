import { type Size, axisLength } from '#geometry'
import { type Billet, type Layer, type Layered, layeredWithin, massesOf, sharesOf } from '#billet'
import type { Movement } from '#movement'
import type { Operation, Step } from './operation.ts'
import { type Traced, traceMovement } from './trace-movement.ts'
import { type Trial, done, examplesOf } from './trials.ts'

/** What the movement of every operation must keep. `find` gives every way in which it does not. */
export interface MovementLaw {
  readonly name: string
  find(case_: Moved): readonly string[]
}

/** One example done, its movement, and where points scattered in the bar after it came from. */
export interface Moved {
  readonly trial: Trial
  readonly after: Billet
  readonly movement: Movement
  readonly points: readonly (readonly [number, number, number])[]
  readonly traced: readonly Traced[]
  /** Burnt off every face of the bar in hand before it was moved, m. */
  readonly skin: number
}

/** Points to a trial: shares of volume are then good to about 1 %. */
const POINTS = 6000
/** Rounding of the maps and of their tables, m. */
const ROUNDING = 1e-6

export const movementLaws: readonly MovementLaw[] = [
  { name: 'metal comes from inside the bar before', find: comesFromInside },
  { name: 'shaping keeps volume', find: keepsVolume },
  { name: 'every branch leads to a bar that went in', find: branchesLead },
  { name: 'the picture holds as much metal as the account', find: holdsAsMuch },
  { name: 'the picture holds the steels of the account', find: holdsTheSteels },
  { name: 'flat layers lie where the account has them', find: layersLie },
]

/** Every example of an operation that works, moved; `points` fewer than usual for a quicker look. */
export function movedExamples(
  operation: Operation,
  points = POINTS,
): (Moved & { readonly told: string })[] {
  return examplesOf(operation).flatMap((trial) => {
    const { ok: step } = done(operation, trial)
    if (!step) return []
    const { after } = step
    const { before, values, smithy, told } = trial
    const movement = operation.movement(before, values as never, after, smithy)
    const places = scattered(after, points)
    const rows = {
      x: places.map((p) => p[0]),
      y: places.map((p) => p[1]),
      z: places.map((p) => p[2]),
    }
    const skin = skinOf(trial, step)
    const traced = traceMovement(movement, rows)
    return [{ told, trial, after, movement, points: places, traced, skin }]
  })
}

/** Thickness that the scale of a step makes all over the bar in hand, by halving. */
function skinOf({ before, smithy }: Trial, step: Step): number {
  const [bar] = before
  if (!bar) return 0
  const masses = massesOf(bar, smithy.densities)
  const whole = Object.values(masses).reduce((a, b) => a + b, 0)
  const burnt = step.losses
    .filter((loss) => loss.cause === 'scale')
    .flatMap((loss) => Object.values(loss.masses))
    .reduce((a, b) => a + b, 0)
  const { length, width, height } = bar.size
  const left = (s: number) =>
    ((length - 2 * s) * (width - 2 * s) * (height - 2 * s)) / (length * width * height)
  let [low, high] = [0, Math.min(length, width, height) / 2]
  for (let i = 0; i < 50; i++) {
    const s = (low + high) / 2
    if (left(s) > 1 - burnt / whole) low = s
    else high = s
  }
  return low
}

/** Spread evenly over the box (Halton), those outside a round or eight-sided section left out. */
function scattered({ size, shape }: Billet, count: number): (readonly [number, number, number])[] {
  const points: (readonly [number, number, number])[] = []
  for (let i = 1; points.length < count; i++) {
    const [u, v, w] = [radical(i, 2), radical(i, 3) - 0.5, radical(i, 5) - 0.5]
    if (!inSection(shape, v, w)) continue
    points.push([u * size.length, v * size.width, w * size.height])
  }
  return points
}

function radical(i: number, base: number): number {
  let [value, part] = [0, 1]
  for (let n = i; n > 0; n = Math.floor(n / base)) {
    part /= base
    value += part * (n % base)
  }
  return value
}

/** Whether a place in a section one wide and one high is metal. */
function inSection(shape: Billet['shape'], y: number, z: number): boolean {
  if (shape === 'round') return Math.hypot(y, z) <= 0.5
  if (shape === 'octagon') return Math.abs(y) + Math.abs(z) <= Math.SQRT1_2
  return true
}

/** How far a point lies outside a bar's box and section, m; 0 inside. */
function outside({ size, shape }: Billet, { x, y, z }: Traced, skin = 0): number {
  const box = Math.max(
    skin - x,
    x - size.length + skin,
    Math.abs(y) - size.width / 2 + skin,
    Math.abs(z) - size.height / 2 + skin,
    0,
  )
  if (shape === 'round')
    return Math.max(box, (Math.hypot(y / size.width, z / size.height) - 0.5) * size.width)
  if (shape === 'octagon') {
    const corner = Math.abs(y) / size.width + Math.abs(z) / size.height - Math.SQRT1_2
    return Math.max(box, corner * Math.SQRT1_2 * size.width)
  }
  return box
}

function outsideOf(trial: Trial, traced: Traced, skin = 0): number | undefined {
  const { from } = traced
  if (!from) return undefined
  if ('input' in from) return outside(trial.before[from.input], traced, from.input === 0 ? skin : 0)
  const whole = from.layers.reduce((sum, layer) => sum + layer.thickness, 0)
  return Math.max(0, Math.abs(traced.z) - whole / 2)
}

/** Of a bar that is cut into, its box holds more than its metal: what comes from outside is air. */
function comesFromInside({ trial, after, movement, traced }: Moved): string[] {
  if (after.shape === 'cut') return []
  const allowed = ROUNDING + (movement.beyond ?? 0)
  const off = traced.map((t) => outsideOf(trial, t) ?? 0)
  const worst = Math.max(...off)
  return worst <= allowed
    ? []
    : [`a point comes from ${worst} m outside the bar before; ${allowed} m is stated`]
}

function keepsVolume({ movement, traced }: Moved): string[] {
  if (movement.onTheWhole) return []
  const stated = 1 / (movement.fill ?? 1)
  const off = traced.filter((t) => t.from).map((t) => Math.abs(t.volume / stated - 1))
  const worst = Math.max(0, ...off)
  return worst <= 1e-6 ? [] : [`volume changes by ${worst} of itself somewhere`]
}

function branchesLead({ trial, traced }: Moved): string[] {
  const met = new Set<number>()
  for (const { from } of traced) if (from && 'input' in from) met.add(from.input)
  const missing = trial.before.flatMap((_, i) => (met.has(i) ? [] : [i]))
  const odd = [...met].filter((i) => !trial.before[i])
  return [
    ...missing.map((i) => `no point comes from bar ${i}`),
    ...odd.map((i) => `a point comes from bar ${i}, which did not go in`),
  ]
}

/** Share of the box after that comes from metal before, against the account. */
function holdsAsMuch({ trial, after, movement, traced, skin }: Moved): string[] {
  if (after.shape !== 'cut' || isDomainOnly(movement) || trial.before.length === 0) return []
  const inside = traced.filter((t) => (outsideOf(trial, t, skin) ?? 1) <= ROUNDING).length
  const { length, width, height } = after.size
  const share = after.volume / (length * width * height)
  const fills = (inside / traced.length) * solidBefore(trial)
  const allowed =
    0.02 +
    ((movement.beyond ?? 0) * 2) / Math.min(length, width, height) +
    (movement.onTheWhole ? 0.01 : 0)
  return Math.abs(fills - share) <= allowed
    ? []
    : [
        `${fills.toFixed(4)} of the box is metal in the picture; the account has ${share.toFixed(4)}`,
      ]
}

/** Nothing is moved: what is cut away is not in the maps but in the faces that are drawn. */
function isDomainOnly({ warps, branches }: Movement): boolean {
  return !branches && warps.every((warp) => warp.kind === 'shift')
}

function solidBefore({ before }: Trial): number {
  const boxes = before.reduce((sum, b) => sum + b.size.length * b.size.width * b.size.height, 0)
  const metal = before.reduce((sum, b) => sum + b.volume, 0)
  return before.some((b) => b.shape === 'cut') ? metal / boxes : 1
}

/** The steel at a place of a bar whose layers lie flat; undefined where the build does not tell. */
function steelIn(bar: Billet, at: Traced): string | undefined {
  const build = plainOf(bar)
  if (!build) return undefined
  const { axis, layers } = build
  const size = bar.size[axisLength[axis]]
  const whole = layers.reduce((sum, layer) => sum + layer.thickness, 0)
  const place = axis === 'x' ? at.x : at[axis] + size / 2
  return steelAt(layers, (place / size) * whole)
}

function steelAt(layers: readonly Layer[], height: number): string {
  let top = 0
  for (const layer of layers) {
    top += layer.thickness
    if (height < top) return layer.steel
  }
  return layers[layers.length - 1].steel
}

/** The flat layers a bar is: also where it was bent or ground from one pack, whose layers still lie so. */
function plainOf({ build }: Billet): Layered | undefined {
  if (build.form === 'layered') return build
  const within = layeredWithin(build)
  const one = build.form === 'worked' && within.length === 1 ? within[0] : undefined
  return one &&
    (one.layers.length === 1 ||
      /ground to shape|octagon|round/.test((build as { by?: string }).by ?? ''))
    ? one
    : undefined
}

function steelOf(trial: Trial, traced: Traced): string | undefined {
  const { from } = traced
  if (!from) return undefined
  if ('input' in from) return steelIn(trial.before[from.input], traced)
  const whole = from.layers.reduce((sum, layer) => sum + layer.thickness, 0)
  return steelAt(from.layers, traced.z + whole / 2)
}

function isOneSteel(build: Billet['build']): boolean {
  return Object.keys(sharesOf(build)).length === 1
}

/** Sampling error of a share, and what the account itself rounds off. */
const SHARES_WITHIN = 0.015

function holdsTheSteels({ trial, after, movement, traced }: Moved): string[] {
  if (isDomainOnly(movement) && after.shape === 'cut') return []
  // In a round or eight-sided section a layer's thickness is not its share: the account takes it so.
  const started = trial.before.length === 0 ? [after] : trial.before
  if (
    started.some(
      ({ shape, build }) => shape !== 'rectangle' && shape !== 'cut' && !isOneSteel(build),
    )
  )
    return []
  const met: Record<string, number> = {}
  let count = 0
  for (const t of traced) {
    if (after.shape === 'cut' && (outsideOf(trial, t) ?? 1) > ROUNDING) continue
    if (!t.from) continue
    const steel = steelOf(trial, t)
    if (steel === undefined) return []
    met[steel] = (met[steel] ?? 0) + 1
    count++
  }
  const least = Math.min(after.size.length, after.size.width, after.size.height)
  const allowed = SHARES_WITHIN + (movement.beyond ?? 0) / least
  return Object.entries(sharesOf(after.build)).flatMap(([steel, share]) => {
    const has = (met[steel] ?? 0) / count
    return Math.abs(has - share) <= allowed
      ? []
      : [`${steel}: ${has.toFixed(4)} in the picture, ${share.toFixed(4)} in the account`]
  })
}

/** Flat layers after, from flat layers before: steel for steel at every point not hard by a boundary. */
function layersLie({ trial, after, movement, points, traced }: Moved): string[] {
  const { build, size } = after
  if (build.form !== 'layered' || build.layers.length < 2 || after.shape !== 'rectangle') return []
  const side: keyof Size = axisLength[build.axis]
  const k = ['x', 'y', 'z'].indexOf(build.axis)
  let [same, all] = [0, 0]
  traced.forEach((t, i) => {
    const steel = steelOf(trial, t)
    if (steel === undefined) return
    const height = points[i][k] + (build.axis === 'x' ? 0 : size[side] / 2)
    if (nearBoundary(build.layers, height, 2e-6 + (movement.beyond ?? 0))) return
    all++
    if (steelAt(build.layers, height) === steel) same++
  })
  return same === all
    ? []
    : [`${all - same} of ${all} points are of another steel than the account's layers`]
}

function nearBoundary(layers: readonly Layer[], height: number, within: number): boolean {
  let top = 0
  return layers.some((layer) => {
    top += layer.thickness
    return Math.abs(height - top) < within
  })
}
