/**
 * A solid with one run of metal, `bottom` to `top`, at every (x, y): blades, bars, plates, rings.
 * Between neighbouring `xBreaks`, and there between neighbouring `yBreaks(x)`, everything is
 * smooth (square-root ends allowed), so that quadrature is exact and facets follow the edges.
 */
export interface HeightField {
  /** Where the form changes along x; ascending, first and last are the ends of the solid. */
  readonly xBreaks: readonly number[]
  /**
   * Where it changes across at x: ascending, first and last the sides; between two neighbouring
   * xBreaks always the same number of them, those not there at this x lying together in one point.
   */
  yBreaks(x: number): readonly number[]
  /** Height of the upper face inside the outline; not above `bottom` where there is no metal. */
  top(x: number, y: number): number
  bottom(x: number, y: number): number
  /** Side of the facets that show what is there, m, where it is finer than elsewhere. */
  finest?(x: number, y: number): number
}
