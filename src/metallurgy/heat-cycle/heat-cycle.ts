import type { Problem } from '#problem'
import { type Estimate, outOfRange } from '../estimate.ts'
import type { TemperaturePoint } from '../history.ts'
import { type BarSection, heatBar } from '../heating/heat-bar.ts'
import { type Fire, fireAt, fires, inAir } from '../heating/surroundings.ts'

/** One heat as a smith gives it: the bar, the fire, the heat wanted, the soak, the stop. */
export interface HeatOrder {
  readonly bar: BarSection
  readonly fire: Fire
  /** Temperature of the fire's walls, K; left out, the preset's. */
  readonly fireTemperature?: number
  /** Heat the core is to reach, K. */
  readonly target: number
  /** Seconds at heat once the core is there. */
  readonly soak?: number
  /** Skin temperature at which work stops, K; left out, the bar is not taken out. */
  readonly stop?: number
  /** Whether the bar lies between dies or on the anvil while it cools. */
  readonly worked?: boolean
  /** K before the heat, throughout. Default 293.15. */
  readonly from?: number
}

export interface HeatCycle {
  /** Skin, core and mean through warming, soak and work, K against s from the start. */
  readonly skin: readonly TemperaturePoint[]
  readonly core: readonly TemperaturePoint[]
  readonly mean: readonly TemperaturePoint[]
  /** Seconds until the core is within 10 K of the heat wanted. */
  readonly warming: Estimate
  /** Seconds from the fire until the skin is down to the stop temperature. */
  readonly working: Estimate
  readonly model: 'lumped' | 'through the thickness'
  readonly biot: number
  readonly notes: readonly string[]
  readonly outOfRange: readonly Problem[]
}

/** Nobody waits longer than a day. */
const longest = 86_400

/** How near the core must come to count as hot. */
const nearEnough = 10

/** A whole heat: in the fire till the core is hot, soaked, and worked or left in air. */
export function runHeat(order: HeatOrder): HeatCycle {
  const problems: Problem[] = []
  const from = finite(order.from, 293.15)
  const place = fireAt(order.fire, order.fireTemperature)
  const reachable = (place.coil?.until ?? Math.max(place.wall, place.gas)) - nearEnough
  const wanted = finite(order.target, 1273.15)
  const target = Math.min(wanted, reachable)
  if (wanted > reachable + nearEnough)
    problems.push({
      at: 'target',
      what: 'The fire is colder than the heat wanted.',
      why: `Its walls give at most ${Math.round(reachable + nearEnough - 273.15)} °C.`,
      try: ['Raise the fire.', 'Ask for a lower heat.'],
    })
  const [low, high] = fires[order.fire].range
  const wall = place.coil?.until ?? place.wall
  if (wall < low || wall > high)
    problems.push(outOfRange('fireTemperature', wall, [low, high], 'K', `a ${order.fire} fire`))
  const warm = warmTo(order.bar, place, from, target)
  const { run } = warm
  const cut = cutAt(run, warm.seconds)
  const soak = Math.max(finite(order.soak, 0), 0)
  const shift = (points: readonly TemperaturePoint[], by: number) =>
    points.map((p) => ({ time: p.time + by, temperature: p.temperature }))
  let at = warm.seconds
  const held = { time: at + soak, temperature: target }
  const skin = [...cut.skin, ...(soak > 0 ? [held] : [])]
  const core = [...cut.core, ...(soak > 0 ? [held] : [])]
  const mean = [...cut.mean, ...(soak > 0 ? [held] : [])]
  at += soak
  const stop = order.stop
  let working = 0
  let slow = 0
  if (stop !== undefined && Number.isFinite(stop)) {
    const air = inAir(order.worked ?? false)
    const start = soak > 0 ? target : warm.profile
    const cool = coolTo(order.bar, air, start, stop)
    working = cool.seconds
    slow = cool.meanSeconds
    const out = cutAt(cool.run, cool.seconds)
    skin.push(...shift(out.skin, at).slice(1))
    core.push(...shift(out.core, at).slice(1))
    mean.push(...shift(out.mean, at).slice(1))
  }
  const notes = [...run.notes, fires[order.fire].note]
  const source = { source: 'EN-FSE', standing: 'computed', unit: 's', outOfRange: [] } as const
  return {
    skin,
    core,
    mean,
    warming: {
      ...source,
      value: warm.seconds,
      // Fires differ more than the arithmetic: a third either way, common practice.
      range: [warm.seconds * 0.7, warm.seconds * 1.4],
      notes: ['The fire’s walls and draught decide; time one bar and correct.'],
    },
    working: {
      ...source,
      value: working,
      range: [working * 0.8, Math.max(slow, working * 1.15)],
      notes: ['From the fire to the stop heat at the skin; the core stays hotter.'],
    },
    model: run.model,
    biot: run.biot,
    notes,
    outOfRange: [...problems, ...run.outOfRange],
  }
}

/** Heats needed for some seconds of work, with the seconds each heat leaves for it. */
export function heatsFor(workSeconds: number, windowSeconds: number): number {
  if (!(workSeconds > 0)) return 0
  // A window of nothing would ask for endless heats: one second is the least a smith can use.
  return Math.ceil(workSeconds / Math.max(finite(windowSeconds, 1), 1))
}

type Run = ReturnType<typeof heatBar>

function warmTo(bar: BarSection, place: ReturnType<typeof fireAt>, from: number, target: number) {
  const until = { at: 'core', temperature: target - nearEnough, rising: true } as const
  const run = heatBar(bar, place, { from, seconds: longest, until })
  const seconds = crossing(run.core, until.temperature, true) ?? run.core.at(-1)!.time
  return { run, seconds, profile: run.profile }
}

function coolTo(
  bar: BarSection,
  place: ReturnType<typeof inAir>,
  from: number | readonly number[],
  stop: number,
) {
  const level = Math.max(stop, place.gas + 5)
  const run = heatBar(bar, place, {
    from,
    seconds: longest,
    until: { at: 'mean', temperature: level, rising: false },
  })
  const end = run.skin.at(-1)!.time
  return {
    run,
    seconds: crossing(run.skin, level, false) ?? end,
    meanSeconds: crossing(run.mean, level, false) ?? end,
  }
}

/** Time at which a history first comes to a temperature, rising or falling. */
function crossing(
  points: readonly TemperaturePoint[],
  level: number,
  rising: boolean,
): number | undefined {
  for (let i = 0; i < points.length; i++) {
    const p = points[i]!
    if (rising ? p.temperature < level : p.temperature > level) continue
    if (i === 0) return p.time
    const q = points[i - 1]!
    return q.time + ((p.time - q.time) * (level - q.temperature)) / (p.temperature - q.temperature)
  }
  return undefined
}

function cutAt(run: Run, seconds: number) {
  const cut = (points: readonly TemperaturePoint[]) => {
    const kept = points.filter((p) => p.time < seconds)
    const next = points.find((p) => p.time >= seconds)
    const last = kept[kept.length - 1]
    if (next === undefined || last === undefined) return next === undefined ? [...points] : [next]
    const f = (seconds - last.time) / (next.time - last.time)
    return [
      ...kept,
      { time: seconds, temperature: last.temperature + f * (next.temperature - last.temperature) },
    ]
  }
  return { skin: cut(run.skin), core: cut(run.core), mean: cut(run.mean) }
}

function finite(value: number | undefined, otherwise: number): number {
  return value !== undefined && Number.isFinite(value) ? value : otherwise
}
