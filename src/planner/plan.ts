import type { Problem } from '#problem'
import type { Size } from '#geometry'
import type { Billet } from '#billet'
import type { Operation, Step } from '#operations'

/** One step of the plan as it will be done. */
export interface DoneStep {
  readonly bar: string
  /** Index in its bar. */
  readonly index: number
  readonly at: string
  readonly operation: Operation
  /** Values with every free number filled in. */
  readonly values: Readonly<Record<string, unknown>>
  readonly before: readonly Billet[]
  readonly step: Step
  /** The least size the bar must have after this step for the rest to work out. */
  readonly demand?: Size
}

/** A number that was left free, worked out. */
export interface Solved {
  readonly at: string
  readonly name: string
  readonly value: number
}

/** Where the plan stands at a measurement. */
export interface Standing {
  readonly bar: string
  readonly index: number
  /** Planned, measured and still needed at this point, m and kg. */
  readonly planned: { readonly size: Size; readonly mass: number }
  readonly measured: { readonly size: Size; readonly mass: number }
  readonly needed?: Size
  /** Length to spare (negative: short), m. */
  readonly spare: number
}

/** A whole route worked out, both ways. */
export interface Plan {
  /** In the order in which the work can be done. */
  readonly steps: readonly DoneStep[]
  readonly finished: Billet
  readonly solved: readonly Solved[]
  readonly standings: readonly Standing[]
  readonly warnings: readonly Problem[]
}
