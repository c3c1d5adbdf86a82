import type { Origin } from '#pattern'
import type { Box } from './views.ts'

/** A closed surface for the card: three corners a facet, none shared, so that each facet keeps its own plane. */
export interface Facets {
  /** m. */
  readonly positions: Float32Array<ArrayBuffer>
  /** Unit vectors, 32767 for 1, four numbers a corner. */
  readonly normals: Int16Array<ArrayBuffer>
  readonly planes: Int16Array<ArrayBuffer>
}

/** By steel: how bright it etches, how high it stands; carbon (share of 2 %) and hardness (share of 70 HRC) if known. */
export type SteelWeights = Readonly<Record<string, number>>

export interface Metal {
  readonly facets: Facets
  readonly box: Box
  readonly origin: Origin
  readonly weights: readonly SteelWeights[]
}

/** Any closed mesh as facets of their own. */
export function cutFacets(
  positions: ArrayLike<number>,
  triangles: ArrayLike<number>,
  smooth: ArrayLike<number>,
): Facets {
  const corners = triangles.length
  const at = new Float32Array(3 * corners)
  const normals = new Int16Array(4 * corners)
  const planes = new Int16Array(4 * corners)
  const put = (to: Int16Array, corner: number, x: number, y: number, z: number) => {
    to[4 * corner] = Math.round(32767 * x)
    to[4 * corner + 1] = Math.round(32767 * y)
    to[4 * corner + 2] = Math.round(32767 * z)
  }
  for (let i = 0; i < corners; i += 3) {
    for (let k = 0; k < 3; k++)
      for (let c = 0; c < 3; c++) at[3 * (i + k) + c] = positions[3 * triangles[i + k]! + c]!
    const side = (k: number, c: number) =>
      positions[3 * triangles[i + k]! + c]! - positions[3 * triangles[i]! + c]!
    const [x, y, z] = [0, 1, 2].map((c) => {
      const [d, e] = [(c + 1) % 3, (c + 2) % 3]
      return side(1, d) * side(2, e) - side(1, e) * side(2, d)
    }) as [number, number, number]
    const over = 1 / (Math.hypot(x, y, z) || 1)
    for (let k = 0; k < 3; k++) {
      put(planes, i + k, x * over, y * over, z * over)
      const n = 3 * (i + k)
      put(normals, i + k, smooth[n]!, smooth[n + 1]!, smooth[n + 2]!)
    }
  }
  return { positions: at, normals, planes }
}

/** A bar as a box. */
export function boxFacets({ low, high }: Box): Facets {
  const corner = (i: number) =>
    [i & 1, (i >> 1) & 1, i >> 2].map((b, k) => (b ? high[k]! : low[k]!))
  const positions = Array.from({ length: 8 }, (_, i) => corner(i)).flat()
  const quads = [
    [0, 2, 3, 1],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 4, 6, 2],
    [1, 3, 7, 5],
  ]
  const triangles = quads.flatMap(([a, b, c, d]) => [a!, b!, c!, a!, c!, d!])
  const outward = [
    [0, 0, -1],
    [0, 0, 1],
    [0, -1, 0],
    [0, 1, 0],
    [-1, 0, 0],
    [1, 0, 0],
  ]
  const smooth = outward.flatMap((n) => Array.from({ length: 6 }, () => n).flat())
  return cutFacets(positions, triangles, smooth)
}
