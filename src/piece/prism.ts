import { type HeightField } from '#geometry'
import { joinBreaks } from './breaks.ts'

/** A bar of one section from end to end; `kinks` are the breaks of the section, sides included. */
export function prismField(
  length: number,
  kinks: readonly number[],
  top: (y: number) => number,
  bottom: (y: number) => number,
): HeightField {
  const ys = [...kinks].sort((a, b) => a - b)
  return {
    xBreaks: joinBreaks(length, []),
    yBreaks: () => ys,
    top: (_, y) => top(y),
    bottom: (_, y) => bottom(y),
  }
}
