import type { Section } from './section.ts'

/** Like grooves across one face of a bar, or the ridges of a die pressed into it. */
export interface GrooveRow {
  /** `ridges`: a smooth wave between the deepest places and the face. */
  readonly shape: 'v' | 'round' | 'square' | 'ridges'
  readonly depth: number
  readonly width: number
  readonly pitch: number
  /** Mean depth over the whole bar, which says how much is cut away in all. */
  readonly mean: number
  /** Middle of one of them. */
  readonly first: number
  /** Where the cutting begins and ends; what lies beyond is left whole. */
  readonly from: number
  readonly to: number
}

/** One dimple in a face: its middle from the start and from the middle line, as shares of length and width. */
export interface DimpleAt {
  readonly face: 'top' | 'bottom'
  readonly x: number
  readonly y: number
}

/** A rod in a row: from where to where across the row. */
export interface RodAt {
  readonly from: number
  readonly to: number
  readonly section: Section
}

/**
 * What a bar's box leaves open, so that a later step knows what it closes. Along x in shares of the
 * bar's length, across in shares of its width, depths in shares of its height: what burns or
 * stretches the bar carries it along. Of shaped pieces the piece itself says it.
 */
export type Hollow =
  | { readonly form: 'grooved'; readonly top?: GrooveRow; readonly bottom?: GrooveRow }
  | {
      readonly form: 'dimpled'
      readonly shape: 'ball' | 'cone' | 'flat'
      /** Share of the height. */
      readonly depth: number
      /** Share of the width. */
      readonly radius: number
      readonly dimples: readonly DimpleAt[]
    }
  /** The layers of the whole bar bent up and down between interlocking dies. */
  | { readonly form: 'waved'; readonly pitch: number; readonly rise: number }
  | { readonly form: 'rods'; readonly rods: readonly RodAt[] }
  /** The eye of a roll: its radius as a share of the roll's. */
  | { readonly form: 'eye'; readonly radius: number }
  /** A bar with corners, twisted in zones: its own section, and the turns up to each place. */
  | {
      readonly form: 'twisted'
      readonly width: number
      readonly height: number
      readonly phase: number
      readonly zones: readonly {
        readonly from: number
        readonly to: number
        readonly turns: number
      }[]
    }
