import { type Axis, type Size, axisLength, boxVolume } from '#geometry'
import {
  type Billet,
  type Build,
  type Densities,
  type Section,
  UNWEIGHED,
  barVolume,
  massesOf,
  peel,
  stretch,
} from '#billet'
import type { Loss, LossCause } from './operation.ts'

/** What was taken off, and the bar after it. */
export interface Taken {
  readonly after: Billet
  readonly loss: Loss
  /** Flat layers that went altogether. */
  readonly lost: number
}

/** The difference of two states of one bar as a loss to one cause. */
export function lossBetween(
  before: Billet,
  after: Billet,
  cause: LossCause,
  densities: Densities,
): Loss {
  if (densities === UNWEIGHED) return { cause, masses: {} }
  const were = massesOf(before, densities)
  const are = massesOf(after, densities)
  const masses: Record<string, number> = {}
  for (const steel of Object.keys(were)) masses[steel] = were[steel] - (are[steel] ?? 0)
  return { cause, masses }
}

/** The same causes added together, in order of first meeting. */
export function sumLosses(losses: readonly Loss[]): Loss[] {
  const byCause = new Map<LossCause, Record<string, number>>()
  for (const { cause, masses } of losses) {
    const sum = byCause.get(cause) ?? {}
    for (const [steel, mass] of Object.entries(masses)) sum[steel] = (sum[steel] ?? 0) + mass
    byCause.set(cause, sum)
  }
  return [...byCause].map(([cause, masses]) => ({ cause, masses }))
}

/** Thickness to take off the two faces across one axis, m. */
export interface Off {
  readonly low: number
  readonly high: number
}

/**
 * Takes thickness off faces, for one cause. Flat layers go one by one; the rest alike.
 * Returns undefined where nothing would be left.
 */
export function takeOff(
  billet: Billet,
  off: Partial<Record<Axis, Off>>,
  cause: LossCause,
  densities: Densities,
): Taken | undefined {
  let build: Build = billet.build
  let lost = 0
  const size: Record<keyof Size, number> = { ...billet.size }
  for (const axis of ['x', 'y', 'z'] as const) {
    const { low, high } = off[axis] ?? { low: 0, high: 0 }
    if (low === 0 && high === 0) continue
    const side = axisLength[axis]
    const peeled = peel(build, axis, low, high, size[side])
    build = peeled.build
    lost += peeled.lost.low + peeled.lost.high
    size[side] -= low + high
    if (!(size[side] > 0)) return undefined
  }
  const after: Billet = { ...billet, size, build, volume: volumeAt(billet, size) }
  return { after, loss: lossBetween(billet, after, cause, densities), lost }
}

/** The same thickness off every face of a bar in the fire, m. */
export function burn(billet: Billet, perFace: number, densities: Densities): Taken | undefined {
  const each = { low: perFace, high: perFace }
  return takeOff(billet, { x: each, y: each, z: each }, 'scale', densities)
}

/** Volume of a bar of the same shape at another size. */
export function volumeAt(billet: Billet, size: Size): number {
  return billet.shape === 'cut'
    ? (billet.volume * boxVolume(size)) / boxVolume(billet.size)
    : barVolume(size, billet.shape)
}

/** The bar forged to another width, height and section; the length follows from the volume. */
export function shapeTo(
  billet: Billet,
  to: { readonly width: number; readonly height: number; readonly section?: Section },
): Billet {
  const section = to.section ?? (billet.shape === 'cut' ? 'rectangle' : billet.shape)
  const area = barVolume({ length: 1, width: to.width, height: to.height }, section)
  const size = { length: billet.volume / area, width: to.width, height: to.height }
  const by = {
    x: size.length / billet.size.length,
    y: size.width / billet.size.width,
    z: size.height / billet.size.height,
  }
  return {
    ...billet,
    size,
    shape: section,
    volume: barVolume(size, section),
    build: stretch(billet.build, by),
    worked: billet.worked * Math.min(1, 1 / by.x),
    spare: 'x',
    hollow: undefined,
  }
}
