import type { Problem } from '#problem'
import { type Composition, percent } from '#steel'
import { hold } from '../estimate.ts'
import { ac1, eutectoid, fullAustenite } from './critical-points.ts'

/** From the coolest heat at which a steel hardens fully to the hottest that does it no harm, K. */
export interface HardeningWindow {
  readonly low: number
  readonly high: number
}

export interface SharedWindow extends HardeningWindow {
  /** True if one heat suits every steel. */
  readonly suitsAll: boolean
  /** Middle of the window, or the least harm where there is none. */
  readonly advised: number
  readonly each: readonly HardeningWindow[]
  readonly notes: readonly string[]
  readonly problems: readonly Problem[]
}

/**
 * One steel's window, K: 40 to 125 K over Ac3 up to the eutectoid; above it 40 to 115 K over Ac1,
 * not so hot that all carbide dissolves, for then grain and kept austenite run away; 20 K more for
 * each per cent of chromium, whose carbides are slow. Common practice, laid so that it takes in
 * the hardening heats that makers print (MEAD, L6X, read).
 */
export function hardeningWindow(composition: Composition): HardeningWindow {
  const full = fullAustenite(composition)
  const slow = 20 * hold(percent(composition, 'Cr'), [0, 2])
  const start = ac1(composition).value
  return full.line === 'Ac3'
    ? {
        low: Math.max(full.value, start) + 40 + slow,
        high: Math.max(full.value, start) + 125 + slow,
      }
    : { low: start + 40 + slow, high: start + 115 + slow }
}

/** The heat that suits a whole set of steels hardened together. */
export function shareWindow(steels: readonly Composition[]): SharedWindow {
  const each = steels.map(hardeningWindow)
  if (each.length === 0)
    return {
      low: 1073.15,
      high: 1073.15,
      advised: 1073.15,
      suitsAll: false,
      each,
      notes: ['No steel given.'],
      problems: [],
    }
  const low = Math.max(...each.map((w) => w.low))
  const high = Math.min(...each.map((w) => w.high))
  const suitsAll = low <= high
  // Hard is worth more than fine grain, so without a common window the hungriest steel decides.
  const advised = suitsAll ? (low + high) / 2 : low
  const soft = steels.filter((s) => percent(s, 'C') < 0.35).length
  const notes = ['Windows over Ac1 and Ac3: common practice.']
  if (steels.some((s) => percent(s, 'C') > eutectoid.carbon))
    notes.push('Above 0.76 % carbon some carbide is left undissolved on purpose.')
  const problems: Problem[] = []
  if (soft > 0 && soft < steels.length)
    notes.push('Layers under 0.35 % carbon stay soft whatever the heat.')
  if (!suitsAll)
    problems.push({
      at: 'steels',
      what: 'No one hardening heat suits every steel here.',
      why: `One wants at least ${Math.round(low - 273.15)} °C, another at most ${Math.round(high - 273.15)} °C.`,
      try: [
        `Harden at ${Math.round(advised - 273.15)} °C with a short soak; the other grows some grain.`,
        'Choose steels whose hardening heats lie closer.',
      ],
    })
  return { low, high, suitsAll, advised, each, notes, problems }
}
