/** A place in a plane, m. */
export interface Point {
  readonly x: number
  readonly y: number
}

/** A closed loop of straight sides; the last point joins the first. */
export type Outline = readonly Point[]
