import type { Size } from '#geometry'
import type { Origin } from '#pattern'
import type { Facets } from '#scene'
import type { Faceted } from '#view'

/** Which bar, after which of its steps; left out, the piece. */
export interface SteelPlace {
  readonly bar: string
  readonly index: number
  /** How far that step has come, 0 … 1; left out, it is done. */
  readonly done?: number
}

/** A step of the route as the metal can be scrubbed through it. */
export interface SteelStep extends SteelPlace {
  /** In the words of the route. */
  readonly after: string
  /** Done bit by bit: the metal is shown on the way there. Else it is done at a stroke. */
  readonly gradual: boolean
  readonly size: Size
}

/** The metal of one moment, ready to be drawn. */
export interface LaidSteel {
  readonly place: SteelPlace
  /** Same words, same surface: what the window has it need not be sent again. */
  readonly surface: string
  readonly facets?: Facets
  readonly mesh?: Faceted
  readonly low: readonly [number, number, number]
  readonly high: readonly [number, number, number]
  readonly origin: Origin
  /** How light each steel is once etched, 0 to 1. */
  readonly light: Readonly<Record<string, number>>
  /** Ground to the piece; else a bar drawn as its box. */
  readonly isPiece: boolean
  readonly steps: readonly SteelStep[]
  /** Names of the bars whose stacks the metal came from, by the number a picture has for each. */
  readonly stacks: readonly string[]
}
