import type { Point, Size } from '#geometry'
import type { Problem } from '#problem'
import type { Parameters } from '#parameters'
import type { UnitSystem } from '#units'
import type {
  Allowance,
  CardStep,
  CardTotals,
  Computed,
  Declared,
  DeclaredOperation,
  DeclaredSteel,
  FaceLines,
  Leverage,
  LikelyRange,
  Outcome,
  SuggestedRoute,
  Treated,
} from '#job'
import type { LaidSteel, SteelPlace } from './laid-steel.ts'

/** What goes between the window and the worker that computes. All of it is plain data. */

/** A job file's object as it is written. */
export type Written = Readonly<Record<string, unknown>>

export type Billet = Computed['plan']['finished']
export type Build = Billet['build']

/** A bar as it is drawn. */
export type DrawnBar = Pick<Billet, 'size' | 'shape' | 'build' | 'bond' | 'made'>

/** A row of the card with what is drawn on it. */
export interface Row extends CardStep {
  /** Index in its bar. */
  readonly index: number
  readonly before: readonly DrawnBar[]
  readonly after: DrawnBar
  /** The other bars the step takes in, by name. */
  readonly joins: readonly string[]
  /** All of it in short: rows of the same words are the same. */
  readonly words: string
  /** Values as SI numbers, worked-out ones filled in. */
  readonly values: Readonly<Record<string, unknown>>
}

/** An edit that mends something: what to press, and the values it sets. */
export interface Cure {
  readonly words: string
  /** What it comes to, in one sentence. */
  readonly then: string
  readonly sets: readonly {
    readonly path: readonly (string | number)[]
    readonly value: unknown
  }[]
  /** Thickness of the piece with it, m: drawn small beside. */
  readonly thickness?: number
}

/** The outcome of one job. */
export interface Worked {
  /** Whether the whole job works out; else the rows go as far as they can. */
  readonly sound: boolean
  readonly name: string
  readonly rows: readonly Row[]
  readonly problems: readonly Problem[]
  readonly warnings: readonly Problem[]
  readonly totals?: CardTotals
  readonly lines?: FaceLines
  readonly cautionsDefer: string
  /** Numbers left free, worked out, by place and name. */
  readonly solved: Readonly<Record<string, number>>
  /** Weight against sizes: what either would be if it gave way. */
  readonly weight?: Weight
  /** Where the plan stands at each measurement. */
  readonly standings: Computed['plan']['standings']
  readonly milliseconds: number
}

export interface Weight {
  readonly asked: number
  readonly found: number
  readonly within: number
  readonly agrees: boolean
  readonly cures: readonly Cure[]
}

/** The piece as lines: plan, long edge, section, all in metres. */
export interface PieceDrawing {
  readonly kind: string
  readonly size: Size
  /** kg, at the density of the steels in it. */
  readonly mass: number
  readonly outline: readonly (readonly Point[])[]
  readonly lines: readonly { readonly name: string; readonly points: readonly Point[] }[]
  readonly grooves: readonly {
    readonly path: readonly Point[]
    readonly width: number
    readonly face: string
  }[]
  readonly stamp?: { readonly at: Point; readonly length: number; readonly width: number }
  /** Highest and lowest metal along x. */
  readonly edge: { readonly top: readonly Point[]; readonly bottom: readonly Point[] }
  /** The section at `x`: top and bottom across y. */
  readonly section: {
    readonly x: number
    readonly top: readonly Point[]
    readonly bottom: readonly Point[]
  }
  /** Parameters of the kind that are the overall sizes, by side. */
  readonly overall: Readonly<Partial<Record<keyof Size, string>>>
}

export interface DeclaredKind {
  readonly name: string
  readonly title: string
  readonly summary: string
  readonly parameters: Parameters
  readonly thicknesses: readonly string[]
  /** The lengths asked first. */
  readonly sizes: readonly string[]
  /** What they begin with, as typed in either system. */
  readonly start: Readonly<Record<UnitSystem, Readonly<Record<string, string>>>>
}

export interface Declarations extends Declared {
  readonly kinds: readonly DeclaredKind[]
  /** Colour of glowing steel from 500 °C up, one each 10 K. */
  readonly glow: readonly string[]
}

/** A way to make what the job makes: its figures, what sets it apart, and the job with it in place. */
export interface Way extends SuggestedRoute {
  readonly job: Written
}

export interface Ways {
  readonly ways: readonly Way[]
  /** The card as it is: what they are held against. */
  readonly written?: Way
  /** How many were looked at. */
  readonly considered: number
  readonly problems: readonly Problem[]
}

/** How the piece is likely to turn out in this shop. */
export interface Foreseen {
  readonly range?: LikelyRange
  /** What is planned; kg, m, per metre. */
  readonly planned?: {
    readonly mass: number
    readonly length: number
    readonly lines?: number
    readonly heats: number
  }
  /** HRC of each steel as tempered; the range is the models' own error, not the hand's. */
  readonly hardness: readonly {
    readonly steel: string
    readonly value: number
    readonly low: number
    readonly high: number
  }[]
  readonly problems: readonly Problem[]
}

/** What the numbers of the route weigh: each moved as far as it is likely off. */
export interface Weighed {
  readonly now?: Outcome
  readonly numbers: readonly Leverage[]
  readonly problems: readonly Problem[]
}

/** What a job comes to now, and with something changed. */
export interface Tried {
  readonly before?: Outcome
  readonly after?: Outcome
  readonly problems: readonly Problem[]
}

export type {
  Allowance,
  CardTotals,
  DeclaredOperation,
  DeclaredSteel,
  FaceLines,
  Leverage,
  LikelyRange,
  Outcome,
  Problem,
  Size,
}

export type Ask =
  | { readonly ask: 'declare' }
  | {
      readonly ask: 'compute'
      readonly job: Written
      readonly solved: Readonly<Record<string, number>>
      /** Set to this ask's number or above by the window when a later one has come. */
      readonly latest?: SharedArrayBuffer
    }
  | { readonly ask: 'piece'; readonly job: Written }
  | { readonly ask: 'read'; readonly text: string }
  | { readonly ask: 'write'; readonly job: Written }
  | { readonly ask: 'begin'; readonly kind: string; readonly units: UnitSystem }
  | { readonly ask: 'ways'; readonly job: Written; readonly pattern?: string }
  | {
      readonly ask: 'steel'
      readonly job: Written
      readonly place?: SteelPlace
      /** The surface the window has already. */
      readonly known?: string
      /** For a graphics card, or for the engine's own pictures. */
      readonly shape: 'facets' | 'mesh'
    }
  | { readonly ask: 'heats'; readonly job: Written }
  | { readonly ask: 'foresee'; readonly job: Written }
  | { readonly ask: 'allowance'; readonly job: Written; readonly risk: number }
  | { readonly ask: 'weigh numbers'; readonly job: Written }
  | { readonly ask: 'try'; readonly job: Written; readonly other: Written }

/** What each ask is answered with. */
export interface Answers {
  readonly declare: Declarations
  readonly compute: Worked
  readonly piece: PieceDrawing | undefined
  readonly read: { readonly job?: Written; readonly problems: readonly Problem[] }
  readonly write: string
  /** A job of this kind with a plain route, to be changed. */
  readonly begin: Written | undefined
  /** Other ways to make it, or to make it in another pattern. */
  readonly ways: Ways
  readonly steel: LaidSteel | undefined
  readonly heats: Treated | undefined
  readonly foresee: Foreseen
  /** Nothing where no longer stack brings the risk down. */
  readonly allowance: Allowance | undefined
  readonly 'weigh numbers': Weighed
  readonly try: Tried
}

export type AskMessage = Ask & {
  readonly number: number
  /** Set above this ask's number by the window when the answer is no longer wanted. */
  readonly stop?: SharedArrayBuffer
}
export type Reply =
  | { readonly number: number; readonly answer: unknown }
  | { readonly number: number; readonly progress: number; readonly doing: string }
  | { readonly number: number; readonly stopped: true }
  | { readonly number: number; readonly fault: string }
