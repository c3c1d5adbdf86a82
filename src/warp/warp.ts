import type { Graph, Node } from './graph.ts'

export type WarpKindName =
  | 'affine'
  | 'draw'
  | 'turn'
  | 'shift'
  | 'restack'
  | 'slices'
  | 'accordion'
  | 'twist'
  | 'column'
  | 'field'
  | 'barrel'
  | 'shear'
  | 'taper'
  | 'bend'
  | 'roll'
  | 'tile'
  | 'side-by-side'
  | 'edge-bar'
  | 'can'
  | 'relief'
  | 'grid'
  | 'drift'

/**
 * Where each bit of metal came from: one step's movement as plain immutable data. Pull-back direction: from a point of
 * the metal AFTER the step to the point BEFORE it. Frame of both: x along the bar from its start (0 … L), y across and
 * z up, centred (−W/2 … W/2, −H/2 … H/2); metres. `form` and the lengths of tables are structure (a change compiles);
 * `numbers` and the values in tables are not (a slider compiles nothing).
 */
export interface Warp {
  readonly kind: WarpKindName
  readonly form?: string
  readonly numbers: Readonly<Record<string, number>>
  readonly tables?: Readonly<Record<string, TableEntries>>
}

/** Long tables as rows of doubles: quick to hand on to another thread or a card. */
export type TableEntries = readonly number[] | Float64Array

/** A point inside a graph. `branch` is a whole number where the step joins or cuts: which input bar, piece or sheet. */
export interface Place {
  readonly x: Node
  readonly y: Node
  readonly z: Node
  readonly branch?: Node
}

/** How a kind's graph asks for its numbers and tables. */
export interface Settings {
  readonly form: string
  number(name: string): Node
  /** The table's handle and length. */
  table(name: string): { readonly table: number; readonly length: number }
}

/** A closed box of points after the step in which an example is sound. */
export interface Domain {
  readonly x: readonly [number, number]
  readonly y: readonly [number, number]
  readonly z: readonly [number, number]
}

export interface Example {
  readonly warp: Warp
  readonly domain: Domain
}

/** One kind of warp, written once. */
export interface WarpKind {
  readonly name: WarpKindName
  /** Gives a branch (joins, cuts, folds), so its map has seams. */
  readonly branches: boolean
  pull(g: Graph, after: Place, at: Settings): Place
  /** The forward map where it has a closed form; takes the branch the pull gave. Else it is solved numerically. */
  push?(g: Graph, before: Place, at: Settings): Place
  /** Volume before for a unit of volume after; 1 unless said otherwise. 'sampled': what the data says. */
  det?: 'sampled' | ((g: Graph, after: Place, at: Settings) => Node)
  readonly examples: readonly Example[]
}
