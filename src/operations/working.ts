import type { Problem } from '#problem'
import type { Size } from '#geometry'
import type { Judgement } from '#forming'

/** A figure with the least and the most it may be. */
export interface Bracket {
  readonly low: number
  readonly value: number
  readonly high: number
}

/** What working the metal in one step asks of a tool, and whether the shop's can give it. SI. */
export interface Working {
  /** The shop's tool that does it best, as a smith calls it. */
  readonly tool: string
  readonly way: 'hand hammer' | 'power hammer' | 'press'
  /** K, of the metal while it is worked. */
  readonly temperature: number
  /** Pa. */
  readonly flowStress: Bracket
  /** Laws the flow stress and the force rest on. */
  readonly laws: readonly string[]
  /** N: the greatest a press must give; the mean force of a blow. */
  readonly force: Bracket
  /** Blows of a hammer, squeezes of a press, for the whole step. */
  readonly blows: Bracket
  /** Heats the tool needs for it, and heats the plan takes. */
  readonly heats: number
  readonly planned: number
  /** Least and greatest the bar may come out. */
  readonly size: { readonly low: Size; readonly high: Size }
  readonly verdict: Judgement['verdict']
  /** What would do it, likeliest first; empty where it can be done. */
  readonly wouldDo: readonly string[]
  /**
   * Flat layers of several steels: how far each comes out thicker than equal thinning would leave it,
   * in the mean over the width and near the free sides. The account thins all alike.
   */
  readonly drift?: readonly {
    readonly steel: string
    readonly mean: number
    readonly atSides: number
  }[]
  readonly impression?: Impression
}

/** A mark pressed in: what it takes at several heats, what is left of it, what it does to the layers below. */
export interface Impression {
  /** Of the stamp's raised face, m and m². */
  readonly area: number
  readonly perimeter: number
  readonly stroke: number
  readonly size: readonly [number, number]
  /** Whether the face was measured on an outline, or guessed from the box. */
  readonly drawn: boolean
  /** Pressed, taken off the face afterwards, and left; m. */
  readonly depth: number
  readonly takenOff: number
  readonly depthLeft: number
  readonly smallestStroke: number
  readonly crack: 'low' | 'some' | 'high'
  /**
   * Layers below sink by depth · e^(−2π z / feature), z below the floor of the mark; a tenth is left
   * at `reach` below the face. What the pattern bends them by.
   */
  readonly sinking: { readonly depth: number; readonly feature: number; readonly reach: number }
  /** The same mark at each heat: blows of a 4 lb hand hammer, N of a press. */
  readonly at: readonly {
    /** K. */
    readonly temperature: number
    readonly handBlows: Bracket
    readonly pressForce: Bracket
  }[]
}

/** The account of force of one step, and what it adds to what the smith is told. */
export interface Judged {
  readonly force: Working
  readonly warnings: readonly Problem[]
  readonly notes: readonly string[]
}
