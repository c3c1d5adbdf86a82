import type { Axis } from '#geometry'
import { type Build, type Joined, type Layered, sharesOf, steelsIn, thicknessOf } from '#billet'
import { twistedMeter, twistedPack } from './twisted-content.ts'

/** A box inside a bar, as shares of its sides: 0 at the low side, 1 at the high side. */
export type Within = Readonly<Partial<Record<Axis, readonly [number, number]>>>

/** Steels in a box, as shares of the box. */
export type ContentReader = (box: Within) => Readonly<Record<string, number>>

/** Low and high share on x, y and z in turn; an axis not a number is met in its whole length. */
export type Box = Float64Array

/** Adds `weight` of metal met in a box to the sums, steel by steel. */
export type Meter = (box: Box, weight: number, sums: Float64Array) => void

/**
 * Steels in a box cut out of a bar, as shares of the box. Flat layers and parts side by side are cut
 * where they lie; a twisted pack ring by ring; what lies every other way is there in its mean.
 */
export function contentOf(build: Build, box: Within): Readonly<Record<string, number>> {
  return contentReader(build)(box)
}

/** The same for many boxes of one bar: what does not depend on the box is worked out once. */
export function contentReader(build: Build): ContentReader {
  const { steels, meter } = contentMeter(build)
  const sums = new Float64Array(steels.length)
  const shares = new Float64Array(6)
  return ({ x, y, z }) => {
    ;[x, y, z].forEach((range, i) => shares.set(range ?? [NaN, NaN], 2 * i))
    sums.fill(0)
    meter(shares, 1, sums)
    const met: Record<string, number> = {}
    steels.forEach((steel, s) => (met[steel] = sums[s]))
    return met
  }
}

/** The same without an object a box: for sums over thousands of them. */
export function contentMeter(build: Build): {
  readonly steels: readonly string[]
  readonly meter: Meter
} {
  const steels = [...new Set([...steelsIn(build), ...Object.keys(sharesOf(build))])]
  return { steels, meter: meterOf(build, steels) }
}

function meterOf(build: Build, steels: readonly string[]): Meter {
  if (build.form === 'layered') return layersMeter(build, steels)
  if (build.form === 'joined') return partsMeter(build, steels)
  const pack = twistedPack(build)
  return pack ? twistedMeter(pack, steels) : meanMeter(build, steels)
}

function meanMeter(build: Build, steels: readonly string[]): Meter {
  const shares = sharesOf(build)
  const mean = Float64Array.from(steels, (steel) => shares[steel] ?? 0)
  return (_box, weight, sums) => {
    for (let s = 0; s < mean.length; s++) sums[s] += mean[s] * weight
  }
}

const place = { x: 0, y: 2, z: 4 } as const

function layersMeter(build: Layered, steels: readonly string[]): Meter {
  const { axis, layers } = build
  if (layers.length === 1) {
    const only = steels.indexOf(layers[0].steel)
    return (_box, weight, sums) => void (sums[only] += weight)
  }
  const at = place[axis]
  const whole = meanMeter(build, steels)
  const thickness = thicknessOf(build)
  const is = Int32Array.from(layers, (layer) => steels.indexOf(layer.steel))
  const to = new Float64Array(layers.length)
  // Thickness of each steel below the top of each layer: a difference of two reads is what lies between.
  const below = steels.map(() => new Float64Array(layers.length + 1))
  let height = 0
  layers.forEach((layer, i) => {
    height += layer.thickness / thickness
    to[i] = i === layers.length - 1 ? 1 : height
    below.forEach((table, s) => {
      table[i + 1] = table[i] + (s === is[i] ? layer.thickness / thickness : 0)
    })
  })
  const within = (z: number, i: number) => {
    const from = i === 0 ? 0 : to[i - 1]
    return to[i] > from ? (z - from) / (to[i] - from) : 0
  }
  return (box, weight, sums) => {
    const low = clamp(box[at])
    const high = clamp(box[at + 1])
    if (low !== low) return whole(box, weight, sums)
    const a = layerAt(to, low)
    if (!(high > low)) {
      sums[is[a]] += weight
      return
    }
    const b = layerAt(to, high)
    const [u, v] = [within(low, a), within(high, b)]
    const per = weight / (high - low)
    for (let s = 0; s < below.length; s++) {
      const table = below[s]
      const upper = table[b] + (table[b + 1] - table[b]) * v
      const lower = table[a] + (table[a + 1] - table[a]) * u
      sums[s] += (upper - lower) * per
    }
  }
}

/** The layer a height lies in, by halving. */
function layerAt(to: Float64Array, at: number): number {
  let [low, high] = [0, to.length - 1]
  while (low < high) {
    const middle = (low + high) >> 1
    if (at < to[middle]) high = middle
    else low = middle + 1
  }
  return low
}

/** How a core is told that has a bar bent round its point: core first, then the bar. */
export const WRAPPED = 'edge bar wrapped round the point'

/** A section of a wrapped core shows the bar on both sides, half of it on each. */
function asSectionShows(joined: Joined): Joined {
  if (joined.how !== WRAPPED || joined.parts.length !== 2) return joined
  const [core, bar] = joined.parts
  const side = { ...bar, share: bar.share / 2 }
  return { ...joined, axis: 'y', parts: [side, core, side] }
}

function partsMeter(joined: Joined, steels: readonly string[]): Meter {
  const { axis, parts } = asSectionShows(joined)

  const meters = parts.map((part) => meterOf(part.build, steels))
  const inner = new Float64Array(6)
  // Parts that tile or wrap the section are met alike wherever the box lies.
  if (axis === 'section') {
    return (box, weight, sums) => {
      inner.fill(NaN)
      inner[0] = box[0]
      inner[1] = box[1]
      for (let i = 0; i < parts.length; i++) meters[i](inner, weight * parts[i].share, sums)
    }
  }
  const at = place[axis]
  const starts = new Float64Array(parts.length + 1)
  parts.forEach((part, i) => (starts[i + 1] = starts[i] + part.share))
  starts[parts.length] = 1
  return (box, weight, sums) => {
    const all = Number.isNaN(box[at])
    const low = all ? 0 : clamp(box[at])
    const high = all ? 1 : clamp(box[at + 1])
    for (let i = 0; i < parts.length; i++) {
      const [start, end] = [starts[i], starts[i + 1]]
      const [a, b] = [Math.max(low, start), Math.min(high, end)]
      const here = low >= start && (low < end || end === 1) ? 1 : 0
      const share = high > low ? (b - a) / (high - low) : here
      if (!(share > 0)) continue
      inner.set(box)
      // Several like parts together are met in their mean on the axis they follow one another.
      const one = parts[i].times === 1
      inner[at] = one ? (a - start) / (end - start) : NaN
      inner[at + 1] = one ? (b - start) / (end - start) : NaN
      meters[i](inner, weight * share, sums)
    }
  }
}

function clamp(at: number): number {
  return at < 0 ? 0 : at > 1 ? 1 : at
}
