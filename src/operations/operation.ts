import type { Problem, Result } from '#problem'
import type { Size } from '#geometry'
import type { Parameters, ValuesOf } from '#parameters'
import type { PieceSolid } from '#piece'
import type { Shop } from '#shop'
import type { Billet, Densities } from '#billet'
import type { Composition } from '#steel'
import type { Movement } from '#movement'
import type { CautionName } from './cautions.ts'
import type { Judged, Working } from './working.ts'

/** Where the work is done: the shop, the steels' densities (kg/m³), and the piece it is done for. */
export interface Smithy {
  readonly shop: Shop
  readonly densities: Densities
  readonly piece?: PieceSolid
  /** wt% by steel, for force; a steel left out is reckoned as plain with 0.8 % carbon. */
  readonly compositions?: Readonly<Record<string, Composition>>
  /** Seconds a bar can be worked in one heat before it is too cold; left out, not known. */
  workingTime?(bar: Billet, heat: Heat): number
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
  /** Of the dangers its operation declares, those met in this step; left out, all of them. */
  readonly cautions?: readonly CautionName[]
  /** What it asks of hammer or press; only of a finished plan, and only where metal is worked (`judgeStep`). */
  readonly force?: Working
}

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
  /**
   * Done bit by bit, so that it can be looked at part done: `forward` and `movement` then heed `share`,
   * how far it has come, 0 < share ≤ 1. Left out, it is done at a stroke (laid, cut, hardened) and
   * `share` is never given. Asked through `doPartly`, which lets the fire burn its share too.
   */
  readonly gradual?: true
  /** Names of the other bars it takes, in the order they follow the bar in hand in `before`. */
  bars?(values: ValuesOf<P>): readonly string[]
  forward(
    before: readonly Billet[],
    values: ValuesOf<P>,
    smithy: Smithy,
    share?: number,
  ): Result<Step>
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
  movement(
    before: readonly Billet[],
    values: ValuesOf<P>,
    after: Billet,
    smithy: Smithy,
    share?: number,
  ): Movement
  /**
   * What the step asks of the shop's tools, for operations that work the metal. Asked once of each
   * step of a finished plan, never on the way there: planning runs `forward` hundreds of times.
   */
  force?(
    before: readonly Billet[],
    values: ValuesOf<P>,
    step: Step,
    smithy: Smithy,
  ): Judged | undefined
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
