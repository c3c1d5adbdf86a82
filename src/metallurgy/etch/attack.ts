import type { Problem } from '#problem'
import { type Composition, percent } from '#steel'
import { type Estimate, hold, outOfRange } from '../estimate.ts'
import { type Bath, diluteChloride } from './ferric-chloride.ts'

/**
 * Etching in ferric chloride, as an estimate with its range. Known: nickel slows the attack and
 * stays bright, manganese and plain carbon go fast and black (ETCH3, read), attack is held back by
 * what reaches the face and so goes as the root of the flow (ETCH-J), chromium slows and pits. No
 * rate on knife steels was found published: the numbers are from memory, and wide.
 */
export type Condition = 'hardened' | 'soft'
export type Tone = 'dark' | 'grey' | 'bright'
export type Contrast = 'strong' | 'fair' | 'faint' | 'none'

/** Attack against that on plain hardened 1084-like steel. From memory; order sure, size not. */
export function relativeAttack(
  composition: Composition,
  condition: Condition = 'hardened',
): Estimate {
  const w = (e: 'C' | 'Ni' | 'Mn' | 'Cr' | 'Si' | 'P' | 'Mo') =>
    hold(percent(composition, e), [0, 100])
  const nickel = 1 / (1 + 0.4 * w('Ni'))
  const chromium = 1 / (1 + 0.2 * w('Cr') + 0.3 * w('Mo'))
  const manganese = 1 + 0.15 * (Math.min(w('Mn'), 2) - 0.75)
  const carbon = w('C') < 0.3 ? 0.75 + w('C') * (0.25 / 0.3) : 1
  const value = nickel * chromium * manganese * carbon * (condition === 'soft' ? 0.9 : 1)
  const notes = ['From memory: which steel goes faster is known, how much faster is not.']
  if (condition === 'soft')
    notes.push('Smiths differ on whether soft steel etches slower; contrast is weaker.')
  const found: Problem[] = []
  if (w('Cr') > 10) {
    notes.push('Stainless pits in chloride rather than etching evenly.')
    found.push(outOfRange('chromium', w('Cr'), [0, 5], 'wt%', 'even attack in ferric chloride'))
  }
  return {
    value,
    range: [value ** 1.4 * 0.7, Math.min(Math.sqrt(value) * 1.3, 2)].toSorted((a, b) => a - b) as [
      number,
      number,
    ],
    unit: 'relative',
    source: 'memory',
    standing: 'from memory',
    notes,
    outOfRange: found,
  }
}

/** How dark a steel comes out of the bath, 0 black to 1 bright. From practice (ETCH3). */
export function brightness(composition: Composition): number {
  const w = (e: 'C' | 'Ni' | 'Mn' | 'Cr' | 'P') => hold(percent(composition, e), [0, 100])
  const nickel = 1 - Math.exp(-w('Ni') / 1.1)
  const chromium = 0.45 * (1 - Math.exp(-w('Cr') / 0.9))
  const phosphorus = w('P') > 0.08 ? 0.6 : 0
  const mild = 0.3 * (1 - Math.min(w('C') / 0.45, 1))
  const manganese = 0.06 * Math.min(w('Mn'), 1.5)
  return hold(Math.max(nickel, chromium, phosphorus, mild) + 0.12 - manganese, [0, 1])
}

export function toneOf(composition: Composition): Tone {
  const b = brightness(composition)
  return b < 0.3 ? 'dark' : b < 0.62 ? 'grey' : 'bright'
}

export interface PairContrast {
  readonly contrast: Contrast
  readonly tones: readonly [Tone, Tone]
  readonly notes: readonly string[]
}

/** Contrast of two steels lying side by side, with the carbon they have *after* levelling. */
export function contrastOf(
  a: Composition,
  b: Composition,
  condition: Condition = 'hardened',
): PairContrast {
  let gap = Math.abs(brightness(a) - brightness(b))
  if (condition === 'soft') gap *= 0.7
  const contrast = gap > 0.5 ? 'strong' : gap > 0.25 ? 'fair' : gap > 0.1 ? 'faint' : 'none'
  const notes = [
    'Estimate: contrast comes from nickel, manganese, chromium and phosphorus, not from carbon that levels.',
  ]
  if (contrast === 'none') notes.push('Only the weld lines will show.')
  return { contrast, tones: [toneOf(a), toneOf(b)], notes }
}

export interface EtchOrder {
  readonly minutes: number
  /** Parts of water to one of stock. Default 3. */
  readonly water?: number
  /** K. Default 293.15. */
  readonly temperature?: number
  readonly moved?: boolean
  readonly condition?: Condition
  /** m² of steel in the bath and its m³: with both, the bath's own loss of strength counts. */
  readonly area?: number
  readonly volume?: number
}

// Dilute still bath at 20 °C: 0.5 to 4 µm a minute (from memory, low); its geometric middle.
const slow = 0.5e-6
const fast = 4e-6

/** Depth etched from a face, m, with its honest range. */
export function etchDepth(composition: Composition, order: EtchOrder): Estimate {
  const found: Problem[] = []
  const t = hold(order.temperature ?? 293.15, [273.15, 333.15])
  if (t !== (order.temperature ?? 293.15))
    found.push(outOfRange('temperature', order.temperature!, [273, 333], 'K', 'the etch rate'))
  const bath = diluteChloride(order.water ?? 3)
  if (bath.water < 1 || bath.water > 15)
    found.push(outOfRange('dilution', bath.water, [1, 15], 'parts water', 'the etch rate'))
  const minutes = hold(order.minutes, [0, 1e5])
  // Doubles in 10 to 15 K (from memory).
  const warmth = 2 ** ((t - 293.15) / 12.5)
  const strength = Math.sqrt(hold(bath.molesPerLitre, [0.05, 3]) / 0.882)
  // As the root of the flow (ETCH-J): moved by hand about three times the still bath's drift.
  const flow = order.moved === true ? Math.sqrt(3) : 1
  const attack = relativeAttack(composition, order.condition)
  const depth = (rate: number, a: number) =>
    weaken(rate * a * warmth * strength * flow * minutes, bath, order)
  return {
    value: depth(Math.sqrt(slow * fast), attack.value),
    range: [depth(slow, attack.range[0]), depth(fast, attack.range[1])],
    unit: 'm',
    source: 'memory',
    standing: 'from memory',
    notes: ['Estimate: etch a scrap of the same billet first.', ...attack.notes],
    outOfRange: [...found, ...attack.outOfRange],
  }
}

/** Depth once the bath's loss of strength is counted: iron taken up comes off the rate, to first order. */
function weaken(fresh: number, bath: Bath, order: EtchOrder): number {
  const area = order.area ?? 0
  const volume = order.volume ?? 0
  if (!(area > 0 && volume > 0)) return fresh
  const limit = (bath.ironPerLitre * volume) / (area * 7850)
  return limit * (1 - Math.exp(-fresh / limit))
}

/** Step left between two steels, m: the difference of their depths. */
export function etchRelief(a: Composition, b: Composition, order: EtchOrder): Estimate {
  const da = etchDepth(a, order)
  const db = etchDepth(b, order)
  const value = Math.abs(da.value - db.value)
  // One bath, one rate: the range is of the bath, taken on both alike.
  const scale = da.value > 0 ? value / da.value : 0
  return {
    ...da,
    value,
    range: [0.5 * scale * da.range[0], Math.max(value, Math.min(1, 1.5 * scale) * da.range[1])],
    notes: ['Estimate: etch a scrap of the same billet first.'],
    outOfRange: [...da.outOfRange, ...db.outOfRange],
  }
}

/** Minutes to a depth (m) on this steel; the range is that of the rate. */
export function etchMinutes(
  composition: Composition,
  depth: number,
  order: Omit<EtchOrder, 'minutes'>,
): Estimate {
  const one = etchDepth(composition, { ...order, minutes: 1, area: 0 })
  const want = hold(depth, [0, 1e-3])
  return {
    ...one,
    value: want / one.value,
    range: [want / one.range[1], want / one.range[0]],
    unit: 'min',
    notes: [
      'In dips of a minute or two, wiped between; the bath weakens as it is used.',
      ...one.notes,
    ],
  }
}
