/** Section of a plain bar: how much of its box it fills. */
export type Section = 'rectangle' | 'octagon' | 'round'

/** Share of the enclosing rectangle that each plain section fills (exact geometry). */
export const filled: Readonly<Record<Section, number>> = {
  rectangle: 1,
  octagon: 2 * (Math.SQRT2 - 1),
  round: Math.PI / 4,
}
