import type { Estimate } from '../estimate.ts'

export interface BendPlan {
  /** Across the bend, m. */
  readonly width: number
  /** In the direction the bar curves, m. */
  readonly thickness: number
  /** Length bent, m. */
  readonly length: number
  /** Of the middle line, m. */
  readonly radius: number
}

export interface Bend {
  /** N m. */
  readonly moment: readonly [number, number, number]
  /** J. */
  readonly work: readonly [number, number, number]
  /** N in the middle of three points, the outer two `span` apart. */
  readonly force: readonly [number, number, number]
  readonly span: number
}

/** Mean strain over the section of a bend: t/(4R), half the stretch of the skin. */
export function bendStrain({ thickness, radius }: BendPlan): number {
  return radius > 0 ? thickness / (4 * radius) : 1
}

/**
 * A bar bent hot until its whole section flows: moment Y w t²/4 (fully plastic bending, from memory,
 * high confidence), 2/√3 of it where the bar is wide against its thickness and cannot narrow.
 * Struck or pressed between two supports four thicknesses apart (common practice).
 */
export function bendLoad(plan: BendPlan, stress: Estimate): Bend {
  const { width, thickness, length, radius } = plan
  const held = width > 4 * thickness ? 2 / Math.sqrt(3) : 1
  const span = Math.min(length, 4 * thickness)
  const each = (f: (y: number) => number) =>
    [f(stress.low), f(stress.value), f(stress.high)] as const
  const moment = each((y) => (held * y * width * thickness * thickness) / 4)
  const angle = radius > 0 ? length / radius : 0
  return {
    moment,
    work: [moment[0] * angle, moment[1] * angle, moment[2] * angle],
    force: each((y) => (span > 0 ? (held * y * width * thickness * thickness) / span : 0)),
    span,
  }
}
