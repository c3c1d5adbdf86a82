import type { Problem } from '#problem'
import type { Quantity } from '#units'
import type { PieceKind } from '#piece'
import type { Cutting, RackItem, Rates, Shop, Tolerances } from '#shop'
import type { Grade } from '#steel'
import type { Route } from '#planner'

/** The format this program writes; older ones migrate, newer ones open read-only. */
export const FORMAT = 1

/** What the smith asked for beside the piece's sizes, SI. */
export interface Wishes {
  /** Finished mass, kg. */
  readonly mass?: number
  /** How far the mass may be off, share. */
  readonly massWithin: number
  /** Lines across the face, per metre. */
  readonly lines?: number
  /** The pattern by its trade name. */
  readonly pattern?: string
  /** Merged layers in the bar that shows the pattern. */
  readonly layers?: number
  /** The most sheets in a first stack. */
  readonly sheets?: number
  readonly heats?: number
  /** The longest the work may take, s. */
  readonly hours?: number
  /** The most steel off the rack, kg. */
  readonly steel?: number
}

/** A piece as asked for: its kind and the values it was read into. */
export interface Wanted {
  readonly kind: PieceKind
  readonly values: Readonly<Record<string, unknown>>
}

/** A job as read and checked: everything needed to compute it, and the very words it was written in. */
export interface Job {
  readonly format: number
  readonly name: string
  readonly note?: string
  readonly piece?: Wanted
  readonly wishes: Wishes
  readonly shop: Shop
  readonly rates: Rates
  readonly tolerances: Tolerances
  readonly cutting: Cutting
  /** The bars and remnants there are. */
  readonly rack: readonly RackItem[]
  /** The smith's own grades, beside those of the program. */
  readonly steels: readonly Grade[]
  readonly route: Route
  readonly seed: number
  /** Quantities as typed, by place in the file. */
  readonly typed: Readonly<Record<string, Quantity>>
  /** The file as written: what is saved again. */
  readonly written: Readonly<Record<string, unknown>>
  readonly warnings: readonly Problem[]
}
