import type { Estimate } from '../estimate.ts'

/** Sections a bar is knocked between, told by the distance across their flats. */
export type SectionShape = 'square' | 'octagon' | 'round'

/** Area over (across flats)². */
export const areaOf: Readonly<Record<SectionShape, number>> = {
  square: 1,
  octagon: 2 * (Math.SQRT2 - 1),
  round: Math.PI / 4,
}

/** Share of the area that lies outside the other shape when both have one area and one middle. */
function outside(a: SectionShape, b: SectionShape): number {
  if (a === b) return 0
  const pair = [a, b].toSorted().join(' ')
  if (pair === 'octagon square') {
    // Four corners of the square cut by the slanted flats of the octagon of the same area.
    const across = 1 / Math.sqrt(areaOf.octagon)
    return 2 * (1 - across / Math.SQRT2) ** 2
  }
  // A circle of unit radius against a regular polygon of the same area: segments beyond the flats.
  const [shape, flats] =
    pair === 'octagon round' ? (['octagon', 8] as const) : (['square', 4] as const)
  const half = 0.5 * Math.sqrt(Math.PI / areaOf[shape])
  const angle = Math.acos(half)
  return (flats * (angle - Math.sin(angle) * half)) / Math.PI
}

/** Share of a section's area that must move for it to become another of the same area (plane geometry). */
export function movedShare(from: SectionShape, to: SectionShape): number {
  return outside(from, to)
}

/** Pressure on a corner over Y while it is forged flat: from free compression to a flat punch; between them a wedge's. */
const cornerPressure = [2 / Math.sqrt(3), 1.8, (2 / Math.sqrt(3)) * (1 + Math.PI / 2)] as const

/**
 * Work (J) and force (N) of forging corners down: pressure times the metal that moves (m³), and on
 * the flat a corner has become under one bite (m²). 2k(1 + ψ) of a right-angled wedge blunted by a
 * flat die lies near 1.8 Y (Hill's field, from memory, medium confidence).
 */
export function cornerLoad({ low, value, high }: Estimate, moved: number, flat: number) {
  const stress = [low, value, high]
  const each = (of: number): readonly [number, number, number] => [
    cornerPressure[0] * stress[0]! * of,
    cornerPressure[1] * stress[1]! * of,
    cornerPressure[2] * stress[2]! * of,
  ]
  return { work: each(moved), force: each(flat) }
}

export interface Reshaped {
  /** Across the flats of the new section, m. */
  readonly across: number
  readonly elongation: number
  /** Across flats if all displaced metal lengthened the bar, and if none did. */
  readonly range: readonly [number, number]
}

/**
 * A bar knocked from one section to another, e.g. square to octagon before a twist. Metal outside
 * the new shape is displaced; `sideways` of it (half, worked out in this project, no source) fills
 * the new flats and the rest lengthens the bar. Volume is kept: length × `elongation`.
 */
export function reshape(
  from: SectionShape,
  across: number,
  to: SectionShape,
  sideways = 0.5,
): Reshaped {
  const area = areaOf[from] * across * across
  const moved = outside(from, to)
  const at = (share: number) => {
    const left = 1 - moved * (1 - share)
    return Math.sqrt((area * left) / areaOf[to])
  }
  const share = Math.min(1, Math.max(0, sideways))
  const now = at(share)
  return { across: now, elongation: area / (areaOf[to] * now * now), range: [at(0), at(1)] }
}

export interface TaperEnd {
  readonly height: number
  readonly width: number
}

export interface Taper {
  /** Length of parallel bar of the thick end's section that the taper takes, m. */
  readonly stock: number
  /** Length over stock, on the whole and at the thin end. */
  readonly elongation: number
  readonly tipElongation: number
  readonly volume: number
}

/** A straight-sided taper of a given finished length: the area is a parabola, so Simpson is exact. */
export function taperFrom(thick: TaperEnd, thin: TaperEnd, length: number): Taper {
  const area = (end: TaperEnd) => end.height * end.width
  const middle = { height: (thick.height + thin.height) / 2, width: (thick.width + thin.width) / 2 }
  const volume = (length * (area(thick) + 4 * area(middle) + area(thin))) / 6
  const stock = area(thick) > 0 ? volume / area(thick) : 0
  return {
    stock,
    elongation: stock > 0 ? length / stock : 1,
    tipElongation: area(thin) > 0 ? area(thick) / area(thin) : Infinity,
    volume,
  }
}

/** Width the thin end comes to when only its height is forged down and nothing holds the sides. */
export function freeTaperWidth(thick: TaperEnd, thinHeight: number, s: number): number {
  return thick.width * (thick.height / thinHeight) ** s
}
