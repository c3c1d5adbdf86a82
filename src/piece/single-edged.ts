import { findZero } from '#geometry'
import type { ValuesOf } from '#parameters'
import type { bladeParameters } from './blade-parameters.ts'
import type { Part } from './blade-parts.ts'
import { type BladeProfile, profileOf, usualTipDrop } from './blade-profile.ts'
import { type Grind, type GrindSizes, bevelHeight, grindOf } from './grind.ts'

export type BladeValues = ValuesOf<typeof bladeParameters>

/** A single-edged blade from shoulder (s = 0) to point. */
export interface Blade {
  readonly part: Part
  readonly profile: BladeProfile
  readonly thickness: (s: number) => number
  readonly grind: Grind
  readonly grindSizes: GrindSizes
  /** y of the grind line or ridge, ricasso to point. */
  readonly grindLine: (s: number) => number
}

/** The values with what was left out filled in. */
export function filledIn(v: BladeValues) {
  const widthAtPoint = v.widthAtPoint ?? v.width
  const ricassoWidth = v.ricassoLength > 0 ? (v.ricassoWidth ?? v.width) : v.width
  return {
    ...v,
    widthAtPoint,
    ricassoWidth,
    clipLength: v.clipLength ?? v.pointLength,
    tipDrop: v.tipDrop ?? usualTipDrop(v.point, widthAtPoint),
    middleThickness: v.spineThicknessMiddle ?? (v.spineThickness + v.spineThicknessPoint) / 2,
    grindHeight: v.grindHeight ?? (v.grind === 'ridged' ? (v.width * 2) / 3 : Infinity),
  }
}

export function bladeOf(values: BladeValues, curve = 0): Blade {
  const v = filledIn(values)
  const length = v.bladeLength
  const profile = profileOf({ ...v, length, curve })
  const thickness = (s: number) =>
    s < length / 2
      ? v.spineThickness + ((v.middleThickness - v.spineThickness) * s) / (length / 2)
      : v.middleThickness +
        ((v.spineThicknessPoint - v.middleThickness) * (s - length / 2)) / (length / 2)
  const grindSizes: GrindSizes = {
    form: v.grind,
    height: v.grindHeight,
    angle: v.grindAngle,
    wheelDiameter: v.wheelDiameter,
    belly: v.belly,
    bellyAt: {
      height: Math.min(v.grindHeight, v.width),
      rise: (v.spineThickness - v.edgeThickness) / 2,
    },
    backThickness: v.backThickness,
  }
  const grind = grindOf(grindSizes)
  const width = (s: number) => Math.max(0, profile.spine(s) - profile.edge(s))
  /** The edge cannot be thicker than what it is ground from. */
  const edge = (s: number) => Math.min(v.edgeThickness, thickness(s))
  const [heel, plunge] = [v.ricassoLength, Math.min(v.plunge, v.bladeLength - v.ricassoLength)]
  const ground = (s: number) => {
    if (s < heel) return 0
    if (s >= heel + plunge) return 1
    const t = (s - heel) / plunge
    return t * t * (3 - 2 * t)
  }
  const half = (s: number, y: number) => {
    const thick = thickness(s)
    const share = ground(s)
    if (share === 0) return thick / 2
    const cut = grind.half(y - profile.edge(s), width(s), thick, edge(s))
    return thick / 2 + share * (cut - thick / 2)
  }
  const high = (s: number) => bevelHeight(grindSizes, width(s), thickness(s), edge(s))
  const chisel = v.grind === 'chisel'
  const part: Part = {
    length,
    breaks: [
      ...profile.breaks,
      heel + plunge,
      length / 2,
      ...grindLineEnds(grindSizes, width, thickness, edge, profile.breaks),
    ],
    low: (s) => profile.edge(s),
    high: (s) => profile.spine(s),
    kinks: (s) => [profile.edge(s) + high(s)],
    top: (s, y) => (chisel ? 2 * half(s, y) - thickness(s) / 2 : half(s, y)),
    bottom: (s, y) => (chisel ? -thickness(s) / 2 : -half(s, y)),
  }
  return {
    part,
    profile,
    thickness,
    grind,
    grindSizes,
    grindLine: (s) => profile.edge(s) + high(s),
  }
}

/** Where the grind line meets the spine: the section changes its form there. */
function grindLineEnds(
  sizes: GrindSizes,
  width: (s: number) => number,
  thickness: (s: number) => number,
  edge: (s: number) => number,
  breaks: readonly number[],
): number[] {
  if (sizes.form === 'full-flat') return []
  const spare = (s: number) => width(s) - bevelHeight(sizes, Infinity, thickness(s), edge(s))
  const sorted = [...breaks].sort((a, b) => a - b)
  const found: number[] = []
  for (let i = 1; i < sorted.length; i++) {
    const n = 8
    const at = (k: number) => sorted[i - 1] + ((sorted[i] - sorted[i - 1]) * k) / n
    for (let k = 1; k <= n; k++)
      if (spare(at(k - 1)) > 0 !== spare(at(k)) > 0) found.push(findZero(spare, at(k - 1), at(k)))
  }
  return found.filter((s) => Number.isFinite(s))
}
