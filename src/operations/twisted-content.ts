import { type Build, type Layered, thicknessOf } from '#billet'

/** Rings a twisted section is told in, from its middle to its skin. */
const RINGS = 256
/** Places looked at across a box and up it. */
const ACROSS = 2
const UP = 8

/** The flat pack that was twisted, where a build is one twisted pack and nothing else. */
export function twistedPack(build: Build): Layered | undefined {
  let twisted = false
  for (let at = build; ; at = at.of) {
    if (at.form === 'layered') return twisted && at.axis !== 'x' ? at : undefined
    if (at.form !== 'worked' || at.shares) return undefined
    twisted ||= at.by.startsWith('twisted')
  }
}

/**
 * A twisted bar along its length holds at every distance from its middle what the flat pack holds all
 * round at that distance: the middle layers only at the middle. A ring is taken square, as the
 * section is that was twisted and the one it is forged to: half of it lies along its outermost
 * layers, half across all within.
 */
export function twistedMeter(
  pack: Layered,
  steels: readonly string[],
): (box: Float64Array, weight: number, sums: Float64Array) => void {
  const rings = steels.map((steel) => ringsOf(pack, steel))
  return (box, weight, sums) => {
    const each = weight / (ACROSS * UP)
    for (let i = 0; i < ACROSS; i++) {
      const y = Math.abs(2 * placeIn(box, 2, (i + 0.5) / ACROSS) - 1)
      for (let j = 0; j < UP; j++) {
        const z = Math.abs(2 * placeIn(box, 4, (j + 0.5) / UP) - 1)
        const ring = Math.min(RINGS - 1, Math.floor(Math.max(y, z) * RINGS))
        for (let s = 0; s < rings.length; s++) sums[s] += rings[s][ring] * each
      }
    }
  }
}

/** A place between the two sides of a box, or of the whole where the box does not say. */
function placeIn(box: Float64Array, at: number, share: number): number {
  const low = Number.isNaN(box[at]) ? 0 : box[at]
  const high = Number.isNaN(box[at + 1]) ? 1 : box[at + 1]
  return low + (high - low) * share
}

/** Share of one steel in each ring. */
function ringsOf(pack: Layered, steel: string): Float64Array {
  const { layers } = pack
  const half = thicknessOf(pack) / 2
  /** Thickness of this steel between the middle and a height, both ways together, as a share of half. */
  const within = new Float64Array(RINGS + 1)
  for (let i = 0; i <= RINGS; i++) {
    const reach = (i / RINGS) * half
    let bottom = -half
    for (const layer of layers) {
      const top = bottom + layer.thickness
      const met = Math.min(top, reach) - Math.max(bottom, -reach)
      if (layer.steel === steel && met > 0) within[i] += met
      bottom = top
    }
  }
  return Float64Array.from({ length: RINGS }, (_, i) => {
    const [a, b] = [i / RINGS, (i + 1) / RINGS]
    // Of the square a wide the steel fills a · within(a); a ring is the difference of two squares.
    const filled = (2 * b * within[i + 1] - 2 * a * within[i]) / half
    return filled / (4 * (b * b - a * a))
  })
}
