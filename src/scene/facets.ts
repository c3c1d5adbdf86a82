/** A closed surface for a graphics card: three corners a facet, none shared, so that each keeps its own plane. */
export interface Facets {
  /** m. */
  readonly positions: Float32Array<ArrayBuffer>
  /** Smooth unit vectors, 32767 for 1; four numbers a corner, the last is nothing. */
  readonly normals: Int16Array<ArrayBuffer>
  /**
   * The facet's own, for places are reckoned from it, and layers may lie nearly along it; and how far a mark is pressed
   * into the upper face there, m: four numbers a corner.
   */
  readonly planes: Float32Array<ArrayBuffer>
}

type Vector = readonly [number, number, number]

/** A facet that faces up less than this is none of the upper face's, however it was rounded. */
const LEVEL = 1e-3

/**
 * Any closed mesh as facets of their own; `smooth`: three normals a triangle; `below`: a number a corner of the mesh, how
 * deep the upper face is pressed in over or under it, m.
 */
export function cutFacets(
  positions: ArrayLike<number>,
  triangles: ArrayLike<number>,
  smooth: ArrayLike<number>,
  below?: ArrayLike<number>,
): Facets {
  const corners = triangles.length
  const at = new Float32Array(3 * corners)
  const normals = new Int16Array(4 * corners)
  const planes = new Float32Array(4 * corners)
  for (let i = 0; i < corners; i += 3) {
    const [a, b, c] = [3 * triangles[i], 3 * triangles[i + 1], 3 * triangles[i + 2]]
    for (let k = 0; k < 3; k++) {
      at[3 * i + k] = positions[a + k]
      at[3 * i + 3 + k] = positions[b + k]
      at[3 * i + 6 + k] = positions[c + k]
    }
    const [ux, uy, uz] = [0, 1, 2].map((k) => positions[b + k] - positions[a + k])
    const [vx, vy, vz] = [0, 1, 2].map((k) => positions[c + k] - positions[a + k])
    const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx]
    const over = 1 / (Math.hypot(x, y, z) || 1)
    for (let k = i; k < i + 3; k++) {
      const deep = below && z * over > LEVEL ? below[triangles[k]] : 0
      planes.set([x * over, y * over, z * over, deep], 4 * k)
      for (let c = 0; c < 3; c++) normals[4 * k + c] = Math.round(32767 * smooth[3 * k + c])
    }
  }
  return { positions: at, normals, planes }
}

/** A bar as its box: corners shared, six faces of two triangles. */
export function boxMesh(low: Vector, high: Vector) {
  const corners = Array.from({ length: 8 }, (_, i) =>
    [i & 1, (i >> 1) & 1, i >> 2].map((far, k) => (far ? high[k] : low[k])),
  )
  const quads = ['0231', '4576', '0154', '2673', '0462', '1375']
  return {
    positions: Float64Array.from(corners.flat()),
    triangles: Uint32Array.from(
      quads.flatMap((quad) => [0, 1, 2, 0, 2, 3].map((k) => Number(quad[k]))),
    ),
  }
}
