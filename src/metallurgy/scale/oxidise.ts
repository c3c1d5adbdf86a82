import { type Estimate, rangeChecks } from '../estimate.ts'
import { type TemperatureHistory, gasConstant, integrateRate, tidyHistory } from '../history.ts'

/** How the fire scales: by the square root of time in air and lean gas, straight with time when rich. */
export type Atmosphere = 'air' | 'lean' | 'neutral' | 'rich'

interface Fire {
  readonly law: 'parabolic' | 'linear'
  /** Loss against that in still air over the same heat. */
  readonly factor: number
  readonly range: readonly [number, number]
  readonly note: string
}

// Regimes LGY and ABU97 (read abstracts): parabolic with air to spare, linear at 101 % and below.
// Factors against still air: from memory, low; only their order is sure (ABU92, FRISA).
export const atmospheres: Readonly<Record<Atmosphere, Fire>> = {
  air: { law: 'parabolic', factor: 1, range: [0.7, 1.5], note: 'Still air.' },
  lean: {
    law: 'parabolic',
    factor: 0.9,
    range: [0.6, 1.4],
    note: 'Air to spare: parabolic (LGY).',
  },
  neutral: {
    law: 'linear',
    factor: 0.5,
    range: [0.3, 0.8],
    note: 'Near the right mixture: linear, FeO alone (LGY).',
  },
  rich: {
    law: 'linear',
    factor: 0.3,
    range: [0.15, 0.6],
    note: 'Short of air: linear, FeO alone (LGY).',
  },
}

/** g² cm⁻⁴ s⁻¹. Paidassi, pure iron in air, 700 to 1250 °C: from memory. */
export function paidassi(temperature: number): number {
  return 6.1 * Math.exp(-169452 / (gasConstant * temperature))
}

/** g² cm⁻⁴ s⁻¹. Pure iron in air, 500 to 900 °C (STAN, read abstract; unit inferred). */
export function stanley(temperature: number): number {
  return 0.37 * Math.exp(-33000 / (1.98720425864083 * temperature))
}

/**
 * Metal lost for oxygen gained, by the scale's make-up: 95 % wüstite Fe0.95O, 4 % magnetite, 1 %
 * haematite by volume (densities 5.7, 5.18, 5.24; iron 7.87 g/cm³). YABU has the same structure.
 */
export const conversion = scaleConversion([0.95, 0.04, 0.01])

export function scaleConversion(volumes: readonly [number, number, number]) {
  const fe = 55.845
  const o = 15.999
  const kinds = [
    { density: 5.7, iron: 0.95, oxygen: 1 },
    { density: 5.18, iron: 3, oxygen: 4 },
    { density: 5.24, iron: 2, oxygen: 3 },
  ]
  let mass = 0
  let oxygen = 0
  kinds.forEach((k, i) => {
    const m = volumes[i]! * k.density
    mass += m
    oxygen += (m * k.oxygen * o) / (k.oxygen * o + k.iron * fe)
  })
  const ironPerOxygen = (mass - oxygen) / oxygen
  const volume = volumes[0] + volumes[1] + volumes[2]
  return {
    ironPerOxygen,
    scalePerOxygen: mass / oxygen,
    /** m of metal for each kg/m² of oxygen gained. */
    metal: ironPerOxygen / 7870,
    /** m of scale for each kg/m² of oxygen gained. */
    scale: volume / (oxygen * 1000),
  }
}

export interface ScaleLoss {
  /** m of metal from each face. */
  readonly recession: Estimate
  /** m of scale on each face, if none of it was knocked off. */
  readonly thickness: number
  readonly law: 'parabolic' | 'linear'
}

/** kp in kg² m⁻⁴ s⁻¹ from g² cm⁻⁴ s⁻¹: (10 kg/m² for each g/cm²)². */
const perSquareMetre = 100

/** Time over which the linear laws are set equal to the parabolic one: five minutes at heat. */
const matched = 300

/**
 * Metal lost from a face through one heat or a whole route. Between `descaled` times (s) the
 * scale stays on and, in air, shields the metal; each time it is knocked off the metal starts
 * bare. In rich gas the law is linear and descaling costs nothing extra. A shop's own measured
 * loss wins over all of this where there is one.
 */
export function oxidise(
  history: TemperatureHistory,
  atmosphere: Atmosphere = 'neutral',
  descaled: readonly number[] = [],
): ScaleLoss {
  const points = tidyHistory(history)
  const ranges = rangeChecks()
  const hottest = Math.max(293.15, ...points.map((p) => p.temperature))
  if (hottest > 1523.15)
    ranges.check('temperature', hottest, [973, 1523], 'K', 'Paidassi’s oxidation law')
  const fire = atmospheres[atmosphere] ?? atmospheres.neutral
  const kp = (t: number) => perSquareMetre * paidassi(Math.min(Math.max(t, 500), 1600))
  let oxygen = 0
  let last = 0
  for (const piece of splitAt(points, descaled)) {
    const gain =
      fire.law === 'parabolic'
        ? Math.sqrt(integrateRate(piece, kp))
        : integrateRate(piece, (t) => Math.sqrt(kp(t) / matched))
    oxygen += fire.factor * gain
    last = fire.factor * gain
  }
  const value = oxygen * conversion.metal
  return {
    recession: {
      value,
      range: [(value * fire.range[0]) / fire.factor, (value * fire.range[1]) / fire.factor],
      unit: 'm',
      source: 'memory',
      standing: 'from memory',
      notes: [
        fire.note,
        'Pure-iron law from memory; an independent one (STAN) agrees within 25 % at 1000 to 1200 °C.',
        'High-carbon steel was not found measured. Measure your own fire: it decides.',
      ],
      outOfRange: ranges.found,
    },
    thickness: last * conversion.scale,
    law: fire.law,
  }
}

function splitAt(points: TemperatureHistory, times: readonly number[]): TemperatureHistory[] {
  if (points.length === 0) return []
  const end = points[points.length - 1]!.time
  const cuts = times.filter((t) => t > points[0]!.time && t < end).sort((a, b) => a - b)
  const pieces: TemperatureHistory[] = []
  let rest = points
  for (const cut of cuts) {
    const before = rest.filter((p) => p.time < cut)
    const after = rest.filter((p) => p.time >= cut)
    const a = before[before.length - 1]
    const b = after[0]
    if (a === undefined || b === undefined) continue
    const middle = {
      time: cut,
      temperature:
        a.temperature + ((b.temperature - a.temperature) * (cut - a.time)) / (b.time - a.time),
    }
    pieces.push([...before, middle])
    rest = [middle, ...after]
  }
  return [...pieces, rest]
}
