import type { SteelPlace, SteelStep } from '#desk'

/**
 * Places of a route on one line: the metal after its first step stands at 0, after each later one a
 * whole further on, and in between it is on its way there. The end of the line is the piece.
 */

/** Nearer to a stop than this, a hand means the stop. */
const SNAPS = 0.04

export function positionOf(steps: readonly SteelStep[], place: SteelPlace | undefined): number {
  const last = Math.max(0, steps.length - 1)
  if (!place) return last
  const at = steps.findIndex((s) => s.bar === place.bar && s.index === place.index)
  return at < 0 ? last : Math.max(0, at - 1 + (place.done ?? 1))
}

export function placeAt(steps: readonly SteelStep[], position: number): SteelPlace | undefined {
  const last = steps.length - 1
  const stop = Math.round(position)
  const i = Math.min(Math.abs(position - stop) < 1e-6 ? stop : Math.ceil(position), last)
  const step = steps[Math.max(0, i)]
  if (!step || position >= last) return undefined
  const { bar, index } = step
  return i === stop && Math.abs(position - stop) < 1e-6
    ? { bar, index }
    : { bar, index, done: 1 - (i - position) }
}

export function snapped(position: number): number {
  const stop = Math.round(position)
  return Math.abs(position - stop) < SNAPS ? stop : position
}

/** The place whose metal is to be seen: on the way through a step done at a stroke it is the nearer stop's. */
export function seenAt(
  steps: readonly SteelStep[],
  place: SteelPlace | undefined,
): SteelPlace | undefined {
  if (place?.done === undefined) return place
  const at = steps.findIndex((s) => s.bar === place.bar && s.index === place.index)
  if (at < 0 || steps[at]!.gradual) return place
  return placeAt(steps, place.done < 0.5 ? at - 1 : at)
}
