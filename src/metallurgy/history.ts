/** One point of a temperature history: seconds from its start, kelvin. Straight lines between. */
export interface TemperaturePoint {
  readonly time: number
  readonly temperature: number
}

/** A heat, or all heats of a route, as points in order of time. */
export type TemperatureHistory = readonly TemperaturePoint[]

export const zeroCelsius = 273.15
/** Molar gas constant, J/(mol K): 2019 SI, exact to the digits given. */
export const gasConstant = 8.314462618

/**
 * The history as every model takes it: points in order of time, none without a number, times
 * never falling, temperatures not below 0 K. Faulty points are dropped, not guessed.
 */
export function tidyHistory(history: TemperatureHistory): TemperaturePoint[] {
  const good = history.filter((p) => Number.isFinite(p.time) && Number.isFinite(p.temperature))
  return good
    .map((p) => ({ time: p.time, temperature: Math.min(Math.max(p.temperature, 1), 5000) }))
    .sort((a, b) => a.time - b.time)
}

/** Holds one temperature for some seconds. */
export function hold(temperature: number, seconds: number): TemperaturePoint[] {
  return [
    { time: 0, temperature },
    { time: Math.max(seconds, 0), temperature },
  ]
}

/** One history after another; each starts when the one before it ends. */
export function followOn(...histories: readonly TemperatureHistory[]): TemperaturePoint[] {
  const joined: TemperaturePoint[] = []
  let start = 0
  for (const history of histories) {
    const points = tidyHistory(history)
    if (points.length === 0) continue
    const shift = start - points[0]!.time
    for (const p of points) joined.push({ time: p.time + shift, temperature: p.temperature })
    start = joined[joined.length - 1]!.time
  }
  return joined
}

/** Temperature at a time; before the first and after the last point it stays as there. */
export function temperatureAt(history: TemperatureHistory, time: number): number {
  const last = history[history.length - 1]
  if (last === undefined) return 293.15
  if (time >= last.time) return last.temperature
  for (let i = history.length - 2; i >= 0; i--) {
    const a = history[i]!
    const b = history[i + 1]!
    if (time >= a.time) {
      const span = b.time - a.time
      return span > 0
        ? a.temperature + ((b.temperature - a.temperature) * (time - a.time)) / span
        : b.temperature
    }
  }
  return history[0]!.temperature
}

// Gauss-Legendre, five points: exact for polynomials of degree nine (Abramowitz & Stegun 25.4.30).
const gauss = [
  [0, 0.5688888888888889],
  [-0.5384693101056831, 0.47862867049936647],
  [0.5384693101056831, 0.47862867049936647],
  [-0.906179845938664, 0.23692688505618908],
  [0.906179845938664, 0.23692688505618908],
] as const

/**
 * Time integral of a rate that depends on temperature. Each straight piece is cut so that no
 * part spans more than 20 K, over which an Arrhenius rate is smooth enough for 1e-9.
 */
export function integrateRate(
  history: TemperatureHistory,
  rate: (temperature: number) => number,
): number {
  let sum = 0
  for (let i = 1; i < history.length; i++) {
    const a = history[i - 1]!
    const b = history[i]!
    const span = b.time - a.time
    if (!(span > 0)) continue
    const rise = b.temperature - a.temperature
    const parts = rise === 0 ? 1 : Math.ceil(Math.abs(rise) / 20)
    if (rise === 0) {
      sum += span * rate(a.temperature)
      continue
    }
    for (let k = 0; k < parts; k++) {
      for (const [x, w] of gauss) {
        const f = (k + (x + 1) / 2) / parts
        sum += (w / 2) * (span / parts) * rate(a.temperature + f * rise)
      }
    }
  }
  return sum
}
