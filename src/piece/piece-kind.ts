import type { Mesh, Outline, Point, Size, SplineSurface } from '#geometry'
import type { Parameters, ValuesOf } from '#parameters'
import type { Result } from '#problem'

/** A kind of finished piece: what is asked for and the solid it makes. */
export interface PieceKind<P extends Parameters = Parameters> {
  /** The word in the job file: `plaque`, `hidden-tang-knife`. */
  readonly name: string
  readonly title: string
  readonly summary: string
  readonly parameters: P
  /** Names of the lengths one would be asked first: always shown, and written in a job to begin with. */
  readonly sizes: readonly (keyof P & string)[]
  /** Names of the parameters that are thicknesses: scaled together when sizes must meet a weight. */
  readonly thicknesses: readonly (keyof P & string)[]
  /** The solid of these values, or what is wrong with them; `at` names the parameter. */
  build(values: ValuesOf<P>): Result<PieceSolid>
  /** Values as a job file holds them, that build: for laws, docs and starter jobs. */
  readonly examples: readonly Record<string, unknown>[]
}

/** The section at one station. */
export interface Station {
  /** Distance from the origin (x = 0), m. */
  readonly x: number
  /** Section area, m². */
  readonly area: number
  /** From edge to spine, or side to side, m; holes are not taken off. */
  readonly width: number
  /** Greatest thickness, m. */
  readonly thickness: number
  /** Thickness at the lower side (y least): the cutting edge of a blade, m. */
  readonly edge: number
}

/** A round hole right through, and where it is. */
export interface Hole {
  readonly name: string
  readonly at: Point
  readonly diameter: number
}

/** A groove or fuller: its middle line, greatest width and depth, and the face it is cut in. */
export interface Groove {
  readonly name: string
  readonly path: readonly Point[]
  readonly width: number
  readonly depth: number
  readonly face: 'front' | 'back' | 'both'
}

/** The box a stamp is pressed in. */
export interface StampBox {
  readonly at: Point
  readonly length: number
  readonly width: number
  /** Of the deepest places, m. */
  readonly depth: number
  /** Share of the box pressed to full depth, 0 to 1. */
  readonly share: number
}

/** What a stamp has really pressed into the front face, in the piece's frame. */
export interface Imprint {
  /** How deep it was pressed at each place, m; nothing at its rim. */
  readonly depths: SplineSurface
  /** Ground off the face since, and not out of the mark, m. */
  readonly lost: number
  /** What it was made from: the same words, the same imprint. */
  readonly told: string
}

/** Lines and features for drawing, in plan (x along, y across), m. */
export interface Edges {
  /** Closed loops: the outside first (anticlockwise), then holes (clockwise). */
  readonly outline: readonly Outline[]
  /** Lines on the front face: grind line, ridge, edge of a flat. */
  readonly lines: readonly { readonly name: string; readonly points: readonly Point[] }[]
  readonly holes: readonly Hole[]
  readonly grooves: readonly Groove[]
  readonly stamp?: StampBox
}

/**
 * Metal that a later step takes out of the plain ground shape: `volume` (finished) plus the sum of
 * these is what grinding leaves. The route's operations take them out one kind at a time.
 */
export interface Feature {
  readonly kind: 'hole' | 'groove' | 'fuller' | 'slot' | 'stamp'
  /** Metal removed, or pressed aside by a stamp, m³. */
  readonly volume: number
}

/** The straight bar the finished piece is ground from, before any allowance. */
export interface Blank {
  readonly size: Size
  readonly volume: number
  readonly note: string
  /** It is bent to the piece, not ground to it: a straight bar must hold the whole box of the piece. */
  readonly bent?: boolean
}

/**
 * The finished piece as a solid: for every (x, y) one run of metal from `bottom` to `top`.
 * Frame: x along from the origin, 0 to length; y across, zero in the middle of the bounding box, the
 * cutting edge of a single-edged blade at the lower side; z up, zero in the mid-plane. The front
 * face is the top. Metres.
 */
export interface PieceSolid {
  readonly kind: string
  /** What the end at x = 0 is called: only a blade has a butt, of any other piece it is the left end as drawn. */
  readonly origin: 'the butt' | 'the left end'
  /** Bounding box. */
  readonly size: Size
  /** m³, to 1e-9 relative (a crowned ring 2e-8). */
  readonly volume: number
  readonly centreOfMass: { readonly x: number; readonly y: number; readonly z: number }
  /** Area of the whole skin, m², to 1e-3: what an allowance left on every face weighs. */
  readonly surface: number
  readonly edges: Edges
  readonly features: readonly Feature[]
  readonly blank: Blank
  /** Where the section changes its form along x: from 0 to length, ascending. */
  readonly stations: readonly number[]
  inside(x: number, y: number): boolean
  /** Height of the front face; 0 where there is no metal (`bottom` likewise, so thickness is 0). */
  top(x: number, y: number): number
  bottom(x: number, y: number): number
  /** Unit normals pointing out of the metal; ±z where there is none. */
  normalTop(x: number, y: number): readonly [number, number, number]
  normalBottom(x: number, y: number): readonly [number, number, number]
  /** Section area at x, m²; 0 beyond the ends. */
  area(x: number): number
  /** n + 1 stations evenly from end to end. */
  sections(n: number): readonly Station[]
  /** Metal between two heights, m³, to 1e-6 of the volume; neighbours add up exactly. */
  volumeBetween(z0: number, z1: number): number
  /** What its stamp has pressed in; left out, the box at its mean depth, as it is weighed. */
  readonly imprint?: Imprint
  /** The same piece, its account as it was, with a stamp's imprint in its front face instead of the box; with none, unstamped. */
  stamped(imprint: Imprint | undefined): PieceSolid
  /** Closed, outward-facing triangles with sides of about `facet` metres at most, on the surface at every corner. */
  mesh(facet: number): Mesh
}
