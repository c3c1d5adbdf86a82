import type { Estimate } from '../estimate.ts'

export interface HolePlan {
  /** Diameter to start from, m; 0 where it is slit. */
  readonly from: number
  readonly to: number
  /** Thickness the hole goes through, m. */
  readonly height: number
  /** Width of the bar round it, m. */
  readonly width: number
}

/** Rise of a drift's side over its length: about one in ten each side (common practice). */
const taper = 0.1
/** Coulomb friction of a drift in hot steel, coal dust or graphite to bare (from memory, low confidence). */
const friction = [0.1, 0.3, 0.5] as const

/**
 * Pressure that opens a hole of radius a in a ring of outer radius b: (2/√3) Y ln(b/a), the fully
 * plastic thick cylinder in plane strain (from memory, high confidence). The ring keeps its area:
 * b² = a² + `ring`. Never over a flat punch's 2.97 Y, where a drift pierces instead.
 */
export function openingPressure(radius: number, ring: number): number {
  if (!(ring > 0)) return 0
  const log = radius > 0 ? 0.5 * Math.log(1 + ring / (radius * radius)) : Infinity
  return Math.min((2 / Math.sqrt(3)) * log, (2 / Math.sqrt(3)) * (1 + Math.PI / 2))
}

/** ∫ ln(1 + B/u) du from 0 to u. */
const area = (u: number, ring: number) =>
  (u + ring) * Math.log(u + ring) - (u > 0 ? u * Math.log(u) : 0) - ring * Math.log(ring)

export interface HoleLoad {
  /** Work of opening alone and with the drift's friction, J: least, likely, most. */
  readonly work: readonly [number, number, number]
  /** N on the drift at the last, with its friction. */
  readonly force: readonly [number, number, number]
}

/** Work and force of driving a drift through: the pressure summed over the hole, and the rubbing on top. */
export function holeLoad({ from, to, height, width }: HolePlan, stress: Estimate): HoleLoad {
  const [a0, a1] = [from / 2, Math.max(from, to) / 2]
  const ring = Math.max(1e-9, (width / 2) ** 2 - a0 * a0)
  const opened = (Math.PI * height * (area(a1 * a1, ring) - area(a0 * a0, ring))) / Math.sqrt(3)
  const side = openingPressure(a1, ring) * 2 * Math.PI * a1 * Math.min(height, a1 / taper)
  const y = [stress.low, stress.value, stress.high]
  const rub = friction.map((mu) => 1 + mu / taper)
  return {
    work: [opened * y[0]! * rub[0]!, opened * y[1]! * rub[1]!, opened * y[2]! * rub[2]!],
    force: [
      side * y[0]! * taper * rub[0]!,
      side * y[1]! * taper * rub[1]!,
      side * y[2]! * taper * rub[2]!,
    ],
  }
}
