import type { Problem, Result } from '#problem'
import type { Size } from '#geometry'
import type { Parameters, ValuesOf } from '#parameters'
import type { PieceSolid } from '#piece'
import type { Shop } from '#shop'
import type { Billet, Densities } from '#billet'
import type { Warp } from '#warp'
import type { CautionName } from './cautions.ts'

/** Where the work is done: the shop, the steels' densities (kg/m³), and the piece it is done for. */
export interface Smithy {
  readonly shop: Shop
  readonly densities: Densities
  readonly piece?: PieceSolid
}

/** Why metal is no longer in the bar. */
export type LossCause =
  'scale' | 'crop' | 'trim' | 'kerf' | 'ground' | 'drilled' | 'cut out' | 'polished' | 'etched'

/** Mass lost to one cause, by steel, kg. */
export interface Loss {
  readonly cause: LossCause
  readonly masses: Readonly<Record<string, number>>
}

export type HeatPurpose =
  'weld' | 'forge' | 'normalise' | 'anneal' | 'harden' | 'straighten' | 'temper' | 'stamp'

/** One or more like warmings of the bar. */
export interface Heat {
  readonly purpose: HeatPurpose
  readonly count: number
  /** K. */
  readonly temperature: number
  /** Work stops when the bar has cooled to this, K. */
  readonly stop?: number
  /** Time at heat once the core is hot, s. */
  readonly soak: number
  /** What it cools in afterwards: `air`, `oil`, `water`, `plates`, `vermiculite`. */
  readonly medium: string
}

/** Stock off the rack: `count` like pieces. Powder has no sizes of its own; its mass says it all. */
export interface Stock {
  readonly steel: string
  readonly form: 'sheet' | 'bar' | 'powder' | 'tube' | 'remnant'
  readonly thickness: number
  readonly width: number
  readonly length: number
  readonly count: number
  /** Mass of all of them, kg. */
  readonly mass: number
}

/** A step done: the metal after it and the account of it. */
export interface Step {
  readonly after: Billet
  readonly losses: readonly Loss[]
  /** Metal that came off the rack in this step, by steel, kg. */
  readonly added: Readonly<Record<string, number>>
  /** The same metal as pieces to take off the rack. */
  readonly taken: readonly Stock[]
  /** Pieces cut off and kept. */
  readonly setAside: readonly Billet[]
  readonly heats: readonly Heat[]
  readonly warnings: readonly Problem[]
  /** What the smith should know or measure here, one sentence each. */
  readonly notes: readonly string[]
}

/** Where a point of the metal after the step lay before it. */
export type Movement =
  | {
      /** Pull-back maps in the order they are applied to a point of the metal after the step. */
      readonly warps: readonly Warp[]
      /** What each branch of the last warp that branches leads to; left out, all leads to input 0. */
      readonly branches?: readonly Branch[]
    }
  | { readonly notYet: string }

export type Branch = { readonly input: number } | { readonly steel: string }

/** Something to try an operation on, for the laws: values as a job file writes them. */
export interface Example {
  readonly values: Readonly<Record<string, unknown>>
  /** What lies on the anvil; operations that take several list several. */
  readonly before: readonly Billet[]
  /** The piece, where the operation needs one: a kind and its values. */
  readonly piece?: { readonly kind: string } & Readonly<Record<string, unknown>>
}

/**
 * One thing done to the metal. `name` is the trade's verb: the word in the job file and on the card.
 * Everything else (form, flags, schema, reference page, laws) is derived from this declaration.
 */
export interface Operation<P extends Parameters = Parameters> {
  readonly name: string
  /** One sentence: what is done and what it is for. */
  readonly summary: string
  /** Bars it takes: none (it starts a bar), the one in hand, or that and others named by `bars`. */
  readonly takes: 'none' | 'one' | 'others'
  readonly parameters: P
  /** Every cause it can lose metal to; the laws hold it to this list, both ways. */
  readonly loses: readonly LossCause[]
  readonly cautions: readonly CautionName[]
  readonly examples: readonly Example[]
  /** Names of the other bars it takes, in the order they follow the bar in hand in `before`. */
  bars?(values: ValuesOf<P>): readonly string[]
  forward(before: readonly Billet[], values: ValuesOf<P>, smithy: Smithy): Result<Step>
  /**
   * The size each bar must have before, so that the bar after is at least `demand`. `before` is the
   * bars as the plan has them now: their sections stand, their spare sides give. Left out where one
   * bar goes in and one comes out: it is then worked back by lengthening that bar (`workBack`).
   */
  backward?(
    demand: Size,
    values: ValuesOf<P>,
    before: readonly Billet[],
    smithy: Smithy,
  ): Result<readonly Size[]>
  movement(before: readonly Billet[], values: ValuesOf<P>, after: Billet, smithy: Smithy): Movement
}

/** Declares an operation, keeping its parameters' exact types inside and hiding them outside. */
export function operation<const P extends Parameters>(declared: Operation<P>): Operation {
  return declared as unknown as Operation
}

/** A step that only changes what is stated. */
export function step(after: Billet, rest: Partial<Step> = {}): Step {
  return {
    after,
    losses: [],
    added: {},
    taken: [],
    setAside: [],
    heats: [],
    warnings: [],
    notes: [],
    ...rest,
  }
}
