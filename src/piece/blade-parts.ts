import { type HeightField } from '#geometry'
import { joinBreaks, orderBreaks } from './breaks.ts'

/** A stretch of the piece along x, in its own distance s from its start. */
export interface Part {
  readonly length: number
  readonly breaks: readonly number[]
  low(s: number): number
  high(s: number): number
  /** Where the section turns, between low and high; always the same number. */
  kinks(s: number): readonly number[]
  top(s: number, y: number): number
  bottom(s: number, y: number): number
}

/** Parts one after another from the butt; steps between them are square shoulders. */
export function joinParts(parts: readonly Part[]): HeightField {
  const starts = parts.map((_, i) => parts.slice(0, i).reduce((sum, part) => sum + part.length, 0))
  const length = parts.reduce((sum, part) => sum + part.length, 0)
  const at = (x: number) => {
    let i = parts.length - 1
    while (i > 0 && x < starts[i]) i--
    return [parts[i], x - starts[i]] as const
  }
  return {
    xBreaks: joinBreaks(
      length,
      parts.flatMap((part, i) => [starts[i], ...part.breaks.map((s) => starts[i] + s)]),
    ),
    yBreaks: (x) => {
      const [part, s] = at(x)
      const low = part.low(s)
      return orderBreaks(low, Math.max(low, part.high(s)), part.kinks(s))
    },
    top: (x, y) => {
      const [part, s] = at(x)
      return part.top(s, y)
    },
    bottom: (x, y) => {
      const [part, s] = at(x)
      return part.bottom(s, y)
    },
  }
}

/** A straight run between two values, by s from 0 to length. */
export function evenly(from: number, to: number, length: number): (s: number) => number {
  return (s) => from + ((to - from) * s) / length
}

export interface TangSizes {
  readonly length: number
  readonly width: number
  readonly endWidth: number
  readonly thickness: number
  readonly endThickness: number
  readonly end: 'square' | 'round'
  /** Middle line, y. */
  readonly middle: number
}

/** A tang from its end (s = 0) to the shoulder. */
export function tangPart(sizes: TangSizes): Part {
  const { length, middle } = sizes
  const radius = sizes.end === 'round' ? Math.min(sizes.endWidth / 2, length / 2) : 0
  const even = evenly(sizes.endWidth / 2, sizes.width / 2, length)
  const half = (s: number) => {
    if (s >= radius) return even(s)
    const t = 1 - s / radius
    return even(s) * Math.sqrt(Math.max(0, 1 - t * t))
  }
  const thick = evenly(sizes.endThickness / 2, sizes.thickness / 2, length)
  return {
    length,
    breaks: [radius],
    low: (s) => middle - half(s),
    high: (s) => middle + half(s),
    kinks: () => [],
    top: (s) => thick(s),
    bottom: (s) => -thick(s),
  }
}
