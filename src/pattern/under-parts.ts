import { type BandSurface, type FaceView, type PartFacets, facetsOfParts } from '#view'

/** Facets that meet at less than some six degrees are one surface: the cosine between their normals. */
const RIDGE = 0.995

/**
 * The surface under the parts of some pixels: each part lies on the facet under its own middle, and where facets meet at
 * a ridge within the pixel, so do the parts of a part.
 */
export class UnderParts {
  /** The plane last asked for: its height at the pixel's lower left corner, and its slopes. */
  readonly plane = { out: 0, right: 0, up: 0 }
  /** Whether there is but one plane. */
  readonly flat: boolean
  private readonly parts: PartFacets | undefined
  private readonly finest: PartFacets | undefined
  /** Where the finest of a pixel begin, or −1. */
  private readonly ridges: Int32Array
  private readonly whole: BandSurface['facets']
  private readonly pixels: readonly number[]
  private readonly pixel: number
  private readonly fine: number
  private readonly finer: number

  /** `pixels`: numbers in a band from row `top`, in order; of `fine` parts a side, which are of `finer`. */
  constructor(
    view: FaceView,
    { facets }: BandSurface,
    top: number,
    pixels: readonly number[],
    fine: number,
    finer: number,
  ) {
    this.whole = facets
    this.flat = !facets
    this.pixels = pixels
    this.pixel = view.pixel
    this.fine = fine
    this.finer = finer
    this.ridges = new Int32Array(pixels.length).fill(-1)
    this.parts = facets && facetsOfParts(view, top, pixels, fine)
    if (!this.parts) return
    // A ridge beside the middles of the outermost parts shows in the next pixel only.
    const ridged: number[] = []
    for (let k = 0; k < pixels.length; k++) {
      const inside = isOne(this.parts, k * fine ** 2, fine, fine)
      if (inside && isOneAround(facets!, pixels[k]!, view.width)) continue
      this.ridges[k] = ridged.length * (fine * finer) ** 2
      ridged.push(pixels[k]!)
    }
    this.finest = facetsOfParts(view, top, ridged, fine * finer)
  }

  /** Takes the plane under part (i, j from the top) of pixel k: of its own facet, or of the whole pixel's. */
  lieOn(k: number, i: number, j: number): void {
    const { parts, whole, fine } = this
    if (!whole) return
    if (parts && this.take(parts, (k * fine + j) * fine + i, i, j, fine)) return
    const at = this.pixels[k]!
    this.put(whole.out[at]!, whole.slopeRight[at]!, whole.slopeUp[at]!, 0.5, 0.5)
  }

  /** Whether the facets under part (i, j) of pixel k meet at a ridge. */
  ridgeIn(k: number, i: number, j: number): boolean {
    const { finest, ridges, fine, finer } = this
    const first = ridges[k]!
    if (first < 0) return false
    const side = fine * finer
    return !isOne(finest!, first + (j * side + i) * finer, finer, side)
  }

  /** Takes the plane under a part of a part with a ridge, (x, y from the top) of all in the pixel. */
  lieOnFinest(k: number, x: number, y: number): void {
    const { finest, ridges, fine, finer } = this
    const side = fine * finer
    if (this.take(finest!, ridges[k]! + y * side + x, x, y, side)) return
    this.lieOn(k, Math.floor(x / finer), Math.floor(y / finer))
  }

  private take(facets: PartFacets, n: number, x: number, y: number, side: number): boolean {
    const out = facets.out[n]!
    if (out === -Infinity) return false
    const [right, up] = [(x + 0.5) / side, (side - y - 0.5) / side]
    this.put(out, facets.slopeRight[n]!, facets.slopeUp[n]!, right, up)
    return true
  }

  /** A plane so high at a place of the pixel, in its sides. */
  private put(out: number, slopeRight: number, slopeUp: number, right: number, up: number): void {
    this.plane.right = slopeRight
    this.plane.up = slopeUp
    this.plane.out = out - (right * slopeRight + up * slopeUp) * this.pixel
  }
}

/** Whether `side` × `side` facets from number `first`, rows `stride` apart, lie alike; those off the metal aside. */
function isOne(facets: PartFacets, first: number, side: number, stride: number): boolean {
  let lead = -1
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      const n = first + y * stride + x
      if (facets.out[n] === -Infinity) continue
      if (lead < 0) lead = n
      else if (!isAlike(facets, lead, n)) return false
    }
  return true
}

/** Whether the facet of a pixel and those of its four neighbours lie alike. */
function isOneAround(facets: PartFacets, at: number, width: number): boolean {
  const column = at % width
  return [
    column > 0 ? at - 1 : at,
    column < width - 1 ? at + 1 : at,
    Math.max(at - width, column),
    at + width < facets.out.length ? at + width : at,
  ].every((n) => facets.out[n] === -Infinity || isAlike(facets, at, n))
}

function isAlike({ slopeRight, slopeUp }: PartFacets, a: number, b: number): boolean {
  const [r, u, right, up] = [slopeRight[a]!, slopeUp[a]!, slopeRight[b]!, slopeUp[b]!]
  return 1 + r * right + u * up >= RIDGE * Math.hypot(1, r, u) * Math.hypot(1, right, up)
}
