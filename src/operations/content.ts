import type { Axis } from '#geometry'
import { type Build, type Joined, type Layered, sharesOf, thicknessOf } from '#billet'

/** A box inside a bar, as shares of its sides: 0 at the low side, 1 at the high side. */
export type Within = Readonly<Partial<Record<Axis, readonly [number, number]>>>

/** Steels in a box, as shares of the box. */
export type ContentReader = (box: Within) => Readonly<Record<string, number>>

/**
 * Steels in a box cut out of a bar, as shares of the box. Flat layers and parts side by side are cut
 * where they lie; what lies every way (twisted, wrapped) is there in its mean.
 */
export function contentOf(build: Build, box: Within): Readonly<Record<string, number>> {
  return contentReader(build)(box)
}

/** The same for many boxes of one bar: what does not depend on the box is worked out once. */
export function contentReader(build: Build): ContentReader {
  if (build.form === 'layered') return layersReader(build)
  if (build.form === 'joined') return partsReader(build)
  const shares = sharesOf(build)
  return () => shares
}

function layersReader(build: Layered): ContentReader {
  const { axis, layers } = build
  const whole = sharesOf(build)
  const steels = Object.keys(whole)
  const thickness = thicknessOf(build)
  const to = new Float64Array(layers.length)
  // Thickness of each steel below the top of each layer: a difference of two reads is what lies between.
  const below = steels.map(() => new Float64Array(layers.length + 1))
  let height = 0
  layers.forEach((layer, i) => {
    height += layer.thickness / thickness
    to[i] = i === layers.length - 1 ? 1 : height
    steels.forEach((steel, s) => {
      below[s][i + 1] = below[s][i] + (steel === layer.steel ? layer.thickness / thickness : 0)
    })
  })
  const belowAt = (table: Float64Array, at: number, i: number): number => {
    const from = i === 0 ? 0 : to[i - 1]
    const within = to[i] > from ? (at - from) / (to[i] - from) : 0
    return table[i] + (table[i + 1] - table[i]) * within
  }
  return (box) => {
    const range = box[axis]
    if (!range) return whole
    const [low, high] = [clamp(range[0]), clamp(range[1])]
    const [a, b] = [layerAt(to, low), layerAt(to, high)]
    if (!(high > low)) return { [layers[a].steel]: 1 }
    const met: Record<string, number> = {}
    for (let s = 0; s < steels.length; s++)
      met[steels[s]] = (belowAt(below[s], high, b) - belowAt(below[s], low, a)) / (high - low)
    return met
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

function partsReader({ axis, parts }: Joined): ContentReader {
  const readers = parts.map((part) => contentReader(part.build))
  const mix = (each: (i: number) => readonly [number, Within]): Record<string, number> => {
    const sum: Record<string, number> = {}
    parts.forEach((_, i) => {
      const [share, box] = each(i)
      if (!(share > 0)) return
      for (const [steel, has] of Object.entries(readers[i](box)))
        sum[steel] = (sum[steel] ?? 0) + has * share
    })
    return sum
  }
  // Parts that tile or wrap the section are met alike wherever the box lies.
  if (axis === 'section') return (box) => mix((i) => [parts[i].share, { x: box.x }])
  return (box) => {
    const range = box[axis]
    const [low, high] = range ? [clamp(range[0]), clamp(range[1])] : [0, 1]
    let from = 0
    return mix((i) => {
      const start = from
      const end = i === parts.length - 1 ? 1 : start + parts[i].share
      from = end
      const [a, b] = [Math.max(low, start), Math.min(high, end)]
      const thin = !(high > low)
      const share = thin
        ? low >= start && (low < end || end === 1)
          ? 1
          : 0
        : (b - a) / (high - low)
      // Several like parts together are met in their mean on the axis they follow one another.
      const inner: readonly [number, number] | undefined =
        parts[i].times === 1
          ? [(a - start) / (end - start), (b - start) / (end - start)]
          : undefined
      return [share, { ...box, [axis]: inner }]
    })
  }
}

function clamp(at: number): number {
  return Math.min(1, Math.max(0, at))
}
