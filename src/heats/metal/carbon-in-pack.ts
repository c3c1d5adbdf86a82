import type { Problem } from '#problem'
import type { Composition } from '#steel'
import { type TemperatureHistory, evolveCarbon } from '#metallurgy'
import { CELLS, type Ply, meanCarbon, sliceCarbon } from './metal.ts'

/** Below 727 °C carbon is held in carbide (CTHERM): nothing moves, and such points are left out. */
const STILL = 1000
/** m²/s, carbon in austenite near 1250 °C (CPART): the quickest it goes, for the reach only. */
const QUICK = 4e-10

/** Temperatures of all the heats of a step in a row, and where the pack thins. */
export interface Heating {
  readonly points: TemperatureHistory
  readonly thinning: readonly { readonly time: number; readonly factor: number }[]
}

export interface PackCarbon {
  readonly plies: readonly Ply[]
  readonly drift: number
  readonly outOfRange: readonly Problem[]
}

/** Carbon of a pack's plies after the heats of one step. Repeats inside a long run are solved once. */
export function moveCarbon(
  plies: readonly Ply[],
  heating: Heating,
  compositionOf: (steel: string) => Composition,
): PackCarbon {
  const hot = heating.points.some((p) => p.temperature > STILL)
  if (!hot || plies.length < 2) return { plies, drift: 0, outOfRange: [] }
  const kept = fold(shorten(plies, reachOf(heating)))
  const outcome = evolveCarbon(
    kept.plies.map((p) => ({
      composition: compositionOf(p.steel),
      thickness: p.thickness,
      carbon: p.carbon,
    })),
    heating,
    { nodesPerLayer: CELLS },
  )
  return {
    plies: plies.map((ply, i) => {
      const { place, turned, half } = kept.stands(i)
      const across = outcome.layers[place]?.across
      if (!across) return ply
      const carbon = fill(half ? [...across, ...across.toReversed()] : across)
      return { ...ply, carbon: turned ? carbon.toReversed() : carbon }
    }),
    drift: outcome.drift,
    outOfRange: outcome.outOfRange,
  }
}

/** Profiles are of one length, whatever share of a layer was solved. */
function fill(across: readonly number[]): readonly number[] {
  return across.length === CELLS ? across : sliceCarbon(across, 0, 1, CELLS)
}

/** How deep a face is felt through the heats of a step, m: four times the spread. */
function reachOf({ points }: Heating): number {
  let seconds = 0
  for (let i = 1; i < points.length; i++)
    if (points[i]!.temperature > STILL) seconds += points[i]!.time - points[i - 1]!.time
  return 4 * Math.sqrt(QUICK * Math.max(seconds, 0))
}

interface Shortened {
  readonly plies: readonly Ply[]
  /** The place in the short pack of the ply at a place in the whole one. */
  stands(place: number): number
}

/** The least that must be solved, and which ply of it stands for each of the whole pack. */
interface Least {
  readonly plies: readonly Ply[]
  /** `half`: it is solved from its face to its middle, which is a mirror. */
  stands(place: number): {
    readonly place: number
    readonly turned: boolean
    readonly half: boolean
  }
}

/** wt% and share of a thickness by which two sides of a pack may differ and still be mirrors. */
const MIRRORED = 1e-5

/** A pack that reads the same from both sides is solved to its middle: no carbon crosses a mirror. */
function fold({ plies, stands }: Shortened): Least {
  const n = plies.length
  const mirror = plies.every((p, i) => mirrors(p, plies[n - 1 - i]!))
  if (!mirror) return { plies, stands: (i) => ({ place: stands(i), turned: false, half: false }) }
  const count = Math.ceil(n / 2)
  const kept = plies.slice(0, count)
  const odd = n % 2 === 1
  if (odd) {
    const middle = kept[count - 1]!
    const carbon = sliceCarbon(middle.carbon, 0, 0.5)
    kept[count - 1] = { ...middle, thickness: middle.thickness / 2, carbon }
  }
  return {
    plies: kept,
    stands: (i) => {
      const place = stands(i)
      const turned = place >= count
      return {
        place: turned ? n - 1 - place : place,
        turned,
        half: odd && place === count - 1,
      }
    },
  }
}

function mirrors(a: Ply, b: Ply): boolean {
  const n = a.carbon.length
  return (
    a.steel === b.steel &&
    Math.abs(a.thickness / b.thickness - 1) < MIRRORED &&
    a.carbon.every((c, i) => Math.abs(c - b.carbon[n - 1 - i]!) < MIRRORED)
  )
}

/**
 * A pack with repeats left out of the middle of its longest run: metal there meets only its own
 * like, however often. What is left at each side of the middle is deeper than a face is felt.
 */
function shorten(plies: readonly Ply[], reach: number): Shortened {
  const n = plies.length
  const whole = { plies, stands: (i: number) => i }
  const run = n < 12 ? undefined : longestRun(plies)
  if (!run) return whole
  const { from, period, repeats } = run
  const unit = plies.slice(from, from + period).reduce((sum, p) => sum + p.thickness, 0)
  const deep = Math.max(1, Math.ceil(reach / unit))
  const keep = 2 * deep + 1
  if (repeats <= keep) return whole
  const out = (repeats - keep) * period
  const cut = from + (deep + 1) * period
  return {
    plies: [...plies.slice(0, cut), ...plies.slice(cut + out)],
    stands: (i) => {
      if (i < cut) return i
      if (i >= cut + out) return i - out
      // Inside: the unit in the middle stands for it.
      return from + deep * period + ((i - from) % period)
    },
  }
}

/** The run of repeats that covers most of the pack: where it begins, its unit, how often. */
function longestRun(plies: readonly Ply[]) {
  const keys = lettersOf(plies)
  const n = keys.length
  let best: { from: number; period: number; repeats: number } | undefined
  let most = 0
  for (let period = 2; period <= n / 4; period++) {
    let start = 0
    for (let i = 0; i + period <= n; i++) {
      if (i + period < n && keys[i] === keys[i + period]) continue
      const length = i + period - start
      if (length >= 4 * period && length > most + period) {
        most = length
        best = { from: start, period, repeats: Math.floor(length / period) }
      }
      start = i + 1
    }
    if (best && most > 0.8 * n) break
  }
  return best
}

/** One number a kind of ply: alike in steel, in thickness to a part in a thousand, in carbon to 0.001 wt%. */
function lettersOf(plies: readonly Ply[]): number[] {
  const known = new Map<string, number>()
  return plies.map((p) => {
    const c = p.carbon
    const key = [
      p.steel,
      Math.round(Math.log(p.thickness) * 1000),
      Math.round(meanCarbon(p) * 1000),
      Math.round(c[0]! * 1000),
      Math.round(c[c.length - 1]! * 1000),
    ].join(' ')
    const letter = known.get(key) ?? known.size
    known.set(key, letter)
    return letter
  })
}
