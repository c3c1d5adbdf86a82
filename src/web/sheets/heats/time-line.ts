import type { HeatRecord } from '#job'

/** One warming on the time line: `x` counts drawn seconds. */
export interface Warming {
  readonly heat: HeatRecord
  readonly from: number
  readonly to: number
  /** Begun from cold: the line before it is broken. */
  readonly cold: boolean
  /** Drawn seconds and kelvin; a long soak is cut short and marked. */
  readonly points: readonly { readonly x: number; readonly K: number }[]
  /** Where a part of the soak was cut out, drawn seconds. */
  readonly cutAt?: number
}

/** The heats of one step, one after another. */
export interface StepSpan {
  readonly step: number
  readonly do: string
  readonly from: number
  readonly to: number
  readonly count: number
  readonly hottest: number
  readonly stop?: number
  readonly purpose: HeatRecord['purpose']
  readonly warmings: readonly Warming[]
}

/** A bar's own fire. */
export interface BarLine {
  readonly bar: string
  readonly steps: readonly StepSpan[]
  readonly long: number
}

/** Between two heats from cold lies a pause of this many drawn seconds, between two steps one more. */
const PAUSE = 100
/** A heat is drawn about so long at most; the rest is cut out of its soak, s. */
const LONGEST = 1200
/** Of a long soak so much is drawn whatever the warming takes: that the bar stays at heat must be seen, s. */
const SOAK_SEEN = 420
/** After a bar has come out it is drawn cooling for so long, s. */
const COOLING = 90

/** Every heat laid on a line of time, bar by bar, in the order of the work. */
export function layTime(heats: readonly HeatRecord[]): BarLine[] {
  return [...Map.groupBy(heats, (heat) => heat.bar)].map(([bar, own]) => {
    let at = 0
    const steps = [...Map.groupBy(own, (heat) => heat.step)].map(([step, records]): StepSpan => {
      const warmings: Warming[] = []
      const all = records.flatMap((heat) => Array.from({ length: heat.times }, () => heat))
      all.forEach((heat, i) => {
        if (!heat.again && at > 0) at += PAUSE
        const made = layHeat(heat, at, all[i + 1]?.again ?? false)
        warmings.push(made)
        at = made.to
      })
      const [first] = records
      return {
        step,
        do: first!.do,
        from: warmings[0]!.from,
        to: at,
        count: all.length,
        hottest: Math.max(...records.map((r) => r.temperature)),
        stop: first!.stop,
        purpose: first!.purpose,
        warmings,
      }
    })
    return { bar, steps, long: at }
  })
}

function layHeat(heat: HeatRecord, from: number, goesOn: boolean): Warming {
  const { history, soak, warming } = heat
  const whole = history.at(-1)?.time ?? 0
  const cut = Math.max(0, soak - Math.max(SOAK_SEEN, LONGEST - warming.value))
  // What is left out is taken from the middle of the soak, where nothing changes.
  const [begin, end] = [warming.value + (soak - cut) / 2, warming.value + (soak + cut) / 2]
  const drawn = (t: number) => (t <= begin ? t : t <= end ? begin : t - cut)
  const points = history.map(({ time, mean }) => ({ x: from + drawn(time), K: mean }))
  const to = from + drawn(whole)
  const last = history.at(-1)?.mean ?? 293.15
  const cutAt = cut > 0 ? from + begin : undefined
  if (goesOn) return { heat, from, to, cold: !heat.again, points, cutAt }
  return {
    heat,
    from,
    to: to + COOLING,
    cold: !heat.again,
    // Out of the fire: falling away to where the line breaks.
    points: [...points, ...fall(to, last, isQuench(heat.medium))],
    cutAt,
  }
}

function isQuench(medium: string): boolean {
  return /oil|water|brine|plates/.test(medium)
}

/** A falling line that says only that it cools; how, the records do not tell. */
function fall(from: number, K: number, fast: boolean) {
  const room = 293.15
  const rate = fast ? 12 : 1.6
  return [0.1, 0.25, 0.45, 0.7, 1].map((share) => ({
    x: from + share * COOLING,
    K: room + (K - room) * Math.exp(-rate * share),
  }))
}

/** Time spent above a temperature and altogether, s, all heats counted. */
export function timeAbove(heats: readonly HeatRecord[], K: number) {
  let [above, whole] = [0, 0]
  for (const { history, times } of heats) {
    for (let i = 1; i < history.length; i++) {
      const [a, b] = [history[i - 1]!, history[i]!]
      const step = b.time - a.time
      whole += times * step
      const [low, high] = [Math.min(a.mean, b.mean), Math.max(a.mean, b.mean)]
      if (low >= K) above += times * step
      else if (high > K) above += times * step * ((high - K) / (high - low))
    }
  }
  return { above, whole }
}

/** A time as one adds it up: `80 min`, `2 h 5 min`. */
export function inAll(seconds: number): string {
  const whole = Math.round(seconds / 60)
  return whole < 90 ? `${whole} min` : `${Math.floor(whole / 60)} h ${whole % 60} min`
}
