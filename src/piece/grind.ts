import { findZero } from '#geometry'

/** The section of a ground blade: half its thickness at a distance from the edge. */
export interface Grind {
  /** Distances from the edge at which the face turns; always the same number. */
  breaks(width: number, thick: number, edge: number): readonly number[]
  half(fromEdge: number, width: number, thick: number, edge: number): number
}

export type GrindForm = 'full-flat' | 'flat' | 'hollow' | 'convex' | 'scandi' | 'chisel' | 'ridged'

export interface GrindSizes {
  readonly form: GrindForm
  /** From edge to grind line; `Infinity` for the whole width. */
  readonly height: number
  readonly angle: number
  readonly wheelDiameter: number
  readonly belly: number
  /** Bevel height and half the rise from edge to ridge at which `belly` is meant; it shrinks with both. */
  readonly bellyAt: { readonly height: number; readonly rise: number }
  readonly backThickness: number
}

/** Height of the bevel in a section: to the grind line, or to the spine where that comes first. */
export function bevelHeight(sizes: GrindSizes, width: number, thick: number, edge: number): number {
  if (sizes.form === 'full-flat') return width
  if (sizes.form === 'scandi')
    return Math.min(width, (thick - edge) / 2 / Math.tan(sizes.angle / 2))
  return Math.min(width, sizes.height)
}

/** Radius of the arc that stands `sagitta` off a chord: c²/8s + s/2. */
export function arcRadius(chord: number, sagitta: number): number {
  return (chord * chord) / (8 * sagitta) + sagitta / 2
}

/** How far a wheel of this radius digs below a chord: r − √(r² − c²/4). */
export function wheelSagitta(radius: number, chord: number): number {
  return radius - Math.sqrt(Math.max(0, radius * radius - (chord * chord) / 4))
}

/**
 * Least wheel radius for a hollow of this height and rise that leaves the blade nowhere thinner
 * than half its edge. A wheel too small dips by R(1 − cos φ) behind the edge, φ being the arc's
 * half angle less the slope of its chord.
 */
export function leastWheelRadius(high: number, rise: number, edge: number): number {
  const chord = Math.hypot(high, rise)
  const level = rise > 0 ? chord ** 2 / (2 * rise) : Infinity
  const dip = (radius: number) => {
    const angle = Math.asin(Math.min(1, chord / (2 * radius))) - Math.atan2(rise, high)
    return angle > 0 ? radius * (1 - Math.cos(angle)) : 0
  }
  if (!(edge > 0) || dip(chord / 2) <= edge / 4) return edge > 0 ? chord / 2 : level
  return findZero((radius) => dip(radius) - edge / 4, chord / 2, Math.min(level, 1e3), 1e-9) + 1e-9
}

/**
 * An arc through (0, a) and (run, b) with its centre above (hollow) or below (convex) the chord,
 * as a height over 0…run.
 */
export function arc(run: number, a: number, b: number, radius: number, hollow: boolean) {
  const chord = Math.hypot(run, b - a)
  const rise = Math.sqrt(Math.max(0, radius * radius - (chord * chord) / 4))
  const side = hollow ? 1 : -1
  const cx = run / 2 - (side * rise * (b - a)) / chord
  const cz = (a + b) / 2 + (side * rise * run) / chord
  return (v: number) => cz - side * Math.sqrt(Math.max(0, radius * radius - (v - cx) ** 2))
}

/** The grind of these sizes; thicknesses are whole, edge and ridge, m. */
export function grindOf(sizes: GrindSizes): Grind {
  const { form } = sizes
  return {
    breaks: (width, thick, edge) => [bevelHeight(sizes, width, thick, edge)],
    half: (fromEdge, width, thick, edge) => {
      const high = bevelHeight(sizes, width, thick, edge)
      if (!(high > 0)) return thick / 2
      const [a, b] = [edge / 2, thick / 2]
      if (fromEdge >= high) {
        if (form !== 'ridged' || width <= high) return b
        return b - b * (1 - sizes.backThickness) * ((fromEdge - high) / (width - high))
      }
      const v = Math.max(0, fromEdge)
      const chord = Math.hypot(high, b - a)
      if (form === 'hollow' && sizes.wheelDiameter > chord)
        return arc(high, a, b, sizes.wheelDiameter / 2, true)(v)
      if (form === 'convex' && sizes.belly > 0) {
        const { height, rise } = sizes.bellyAt
        const sagitta = sizes.belly * (high / height) ** 2 * ((b - a) / rise)
        return sagitta > 1e-12
          ? arc(high, a, b, arcRadius(chord, sagitta), false)(v)
          : a + ((b - a) * v) / high
      }
      return a + ((b - a) * v) / high
    },
  }
}
