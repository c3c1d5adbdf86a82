import type { Axis } from '#geometry'
import { type Build, sharesOf, thicknessOf } from '#billet'

/** A box inside a bar, as shares of its sides: 0 at the low side, 1 at the high side. */
export type Within = Readonly<Partial<Record<Axis, readonly [number, number]>>>

/**
 * Steels in a box cut out of a bar, as shares of the box. Flat layers and parts side by side are cut
 * where they lie; what lies every way (twisted, wrapped) is there in its mean.
 */
export function contentOf(build: Build, box: Within): Record<string, number> {
  const sum: Record<string, number> = {}
  const add = (steel: string, share: number) => {
    sum[steel] = (sum[steel] ?? 0) + share
  }
  if (build.form === 'layered') {
    const whole = thicknessOf(build)
    along(
      box[build.axis],
      build.layers.map((layer) => layer.thickness / whole),
      (i, share) => add(build.layers[i].steel, share),
    )
    return sum
  }
  if (build.form === 'joined') {
    const { axis } = build
    const inParts = axis === 'section' ? undefined : box[axis]
    along(
      inParts,
      build.parts.map((part) => part.share),
      (i, share, inner) => {
        const part = build.parts[i]
        // Several like parts together are met in their mean on the axis they follow one another.
        const inside: Within =
          axis === 'section' ? {} : { ...box, [axis]: part.times === 1 ? inner : undefined }
        for (const [steel, has] of Object.entries(contentOf(part.build, inside)))
          add(steel, has * share)
      },
    )
    return sum
  }
  return { ...sharesOf(build) }
}

/** Goes along pieces of these lengths (sum 1) and tells each one's share of the range met. */
function along(
  range: readonly [number, number] | undefined,
  lengths: readonly number[],
  each: (i: number, share: number, inner: readonly [number, number]) => void,
): void {
  const [low, high] = range ?? [0, 1]
  const width = high - low
  let from = 0
  lengths.forEach((length, i) => {
    const to = from + length
    const last = i === lengths.length - 1
    const [a, b] = [Math.max(low, from), last ? high : Math.min(high, to)]
    if (width > 0 ? b > a : low >= from && (low < to || last))
      each(i, width > 0 ? (b - a) / width : 1, [
        (a - from) / length,
        Math.min(1, (b - from) / length),
      ])
    from = to
  })
}
