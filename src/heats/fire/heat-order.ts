import type { Billet } from '#billet'
import type { Heat, HeatPurpose } from '#operations'
import type { Shop } from '#shop'
import { type HeatOrder, type TemperatureHistory, fires, runHeat } from '#metallurgy'

export type HeatRun = ReturnType<typeof runHeat>
type Fire = HeatOrder['fire']

/** What is worked between hammer and anvil, or between dies, while it cools. */
const worked: readonly HeatPurpose[] = ['weld', 'forge', 'stamp']
/** The fire is turned down for these: nobody hardens in a fire at welding heat. */
const gentle: readonly HeatPurpose[] = ['normalise', 'anneal', 'harden', 'temper', 'straighten']

/** K the fire's walls are over the heat wanted: working fires, and fires turned down (common practice). */
const OVER = { working: 40, gentle: 25 } as const
/** Where an air cooling is no longer followed, K: austenite is gone. */
const BLACK = 773.15
/** A heat for straightening or stamping is used up when it has fallen this far, K (common practice). */
const FALL = 150

/** The plain section that heats and cools as the bar does: what is cut into it is levelled. */
export function sectionOf(bar: Billet): HeatOrder['bar'] {
  const { width, length } = bar.size
  const height = bar.shape === 'cut' ? bar.volume / (width * length) : bar.size.height
  const thickness = Math.min(width, height)
  return bar.shape === 'round' || bar.shape === 'octagon'
    ? { shape: 'round', thickness }
    : { shape: 'rectangle', thickness, width: Math.max(width, height) }
}

/** The section half way through a step that changes it: the geometric mean of both. */
export function sectionBetween(a: HeatOrder['bar'], b: HeatOrder['bar']): HeatOrder['bar'] {
  const mean = (x: number, y: number) => Math.sqrt(x * y)
  const thickness = mean(a.thickness, b.thickness)
  if (a.shape === 'round' && b.shape === 'round') return { shape: 'round', thickness }
  const width = mean(a.width ?? a.thickness, b.width ?? b.thickness)
  return { shape: 'rectangle', thickness, width }
}

/** Walls of the fire for a heat, K: the preset's, hotter where the heat asks for it, turned down for treating. */
export function fireFor(purpose: HeatPurpose, temperature: number, fire: Fire): number {
  if (gentle.includes(purpose)) return temperature + OVER.gentle
  const { surroundings } = fires[fire]
  const usual = 'coil' in surroundings ? surroundings.coil.until : surroundings.wall
  if (fire === 'kiln' || fire === 'induction') return temperature + OVER.gentle
  return Math.max(usual, temperature + OVER.working)
}

/** Where a heat ends: the smith's stop, the shop's for welding, or where nothing more is done. */
export function stopOf(heat: Heat, shop: Shop): number | undefined {
  if (heat.stop !== undefined) return heat.stop
  switch (heat.purpose) {
    case 'weld':
    case 'forge':
      return shop.stopHeat
    case 'stamp':
    case 'straighten':
      return heat.temperature - FALL
    case 'normalise':
      return BLACK
    default:
      return undefined
  }
}

/** A heat of the plan as the heating model takes it. `from`: K the bar comes to the fire with. */
export function orderFor(heat: Heat, bar: HeatOrder['bar'], shop: Shop, from: number): HeatOrder {
  const fire: Fire = heat.purpose === 'temper' ? 'kiln' : shop.fire
  return {
    bar,
    fire,
    fireTemperature: fireFor(heat.purpose, heat.temperature, fire),
    target: heat.temperature,
    soak: heat.soak,
    stop: stopOf(heat, shop),
    worked: worked.includes(heat.purpose),
    from,
  }
}

/** Heats run lately, by what was asked: an edit of one step leaves the others as they were. */
const runs = new Map<string, HeatRun>()
const KEPT = 400

export function run(order: HeatOrder): HeatRun {
  // Sizes to a hundredth of a millimetre: below that no clock could tell.
  const size = (m: number | undefined) => (m === undefined ? '' : (m * 1e5).toFixed(0))
  const { bar } = order
  const key = [
    bar.shape,
    size(bar.thickness),
    size(bar.width),
    order.fire,
    order.fireTemperature,
    order.target,
    order.soak,
    order.stop,
    order.worked,
    order.from,
  ].join(' ')
  const known = runs.get(key)
  if (known) return known
  const made = runHeat(order)
  runs.set(key, made)
  if (runs.size > KEPT) runs.delete(runs.keys().next().value as string)
  return made
}

/** A history in as few points as keep it to some kelvin: straight pieces need only their ends. */
export function thinOut(points: TemperatureHistory, within: number): TemperatureHistory {
  if (points.length < 3) return points
  const keep = new Uint8Array(points.length)
  keep[0] = keep[points.length - 1] = 1
  const spans: [number, number][] = [[0, points.length - 1]]
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [a, b] = span
    const p = points[a]!
    const q = points[b]!
    const slope = q.time > p.time ? (q.temperature - p.temperature) / (q.time - p.time) : 0
    let worst = within
    let at = -1
    for (let i = a + 1; i < b; i++) {
      const off = Math.abs(
        points[i]!.temperature - p.temperature - slope * (points[i]!.time - p.time),
      )
      if (off > worst) {
        worst = off
        at = i
      }
    }
    if (at < 0) continue
    keep[at] = 1
    spans.push([a, at], [at, b])
  }
  return points.filter((_, i) => keep[i] === 1)
}
