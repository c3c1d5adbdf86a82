import { type Imprint, imprintAt } from '#piece'

/** Faces that meet at less than this (cosine of 25°) are one smooth surface; a real edge stays an edge. */
const SMOOTH = Math.cos((25 * Math.PI) / 180)

/**
 * Unit normals of the three corners of each triangle: the mean, by area, of the facets smoothly joined there; in an
 * imprint, whose walls are few facets wide, its own.
 */
export function smoothNormals(
  positions: Float64Array,
  triangles: Uint32Array,
  imprint?: Imprint,
): Float32Array {
  const count = triangles.length / 3
  const flat = new Float64Array(count * 3)
  const sizes = new Float64Array(count)
  const first = new Int32Array(positions.length / 3 + 1)
  for (let i = 0; i < count; i++) {
    const [a, b, c] = [0, 1, 2].map((k) => triangles[3 * i + k]! * 3) as [number, number, number]
    const side = (to: number, k: number) => positions[to + k]! - positions[a + k]!
    const cross = [0, 1, 2].map((k) => {
      const [l, m] = [(k + 1) % 3, (k + 2) % 3]
      return side(b, l) * side(c, m) - side(b, m) * side(c, l)
    })
    sizes[i] = Math.hypot(...cross)
    const over = sizes[i]! > 0 ? 1 / sizes[i]! : 0
    flat.set(
      cross.map((v) => v * over),
      3 * i,
    )
    for (let k = 0; k < 3; k++) {
      const corner = triangles[3 * i + k]! + 1
      first[corner] = first[corner]! + 1
    }
  }
  for (let i = 1; i < first.length; i++) first[i] = first[i]! + first[i - 1]!
  const around = new Int32Array(triangles.length)
  const filled = Int32Array.from(first)
  triangles.forEach((corner, i) => {
    around[filled[corner]!] = Math.floor(i / 3)
    filled[corner] = filled[corner]! + 1
  })
  const normals = new Float32Array(count * 9)
  for (let i = 0; i < triangles.length; i++) {
    const own = Math.floor(i / 3) * 3
    const corner = triangles[i]!
    if (imprint && flat[own + 2]! > 0) {
      const [below, alongX, alongY] = imprintAt(
        imprint,
        positions[3 * corner]!,
        positions[3 * corner + 1]!,
      )
      const lean = Math.hypot(alongX, alongY, 1)
      if (below > 0) normals.set([alongX / lean, alongY / lean, 1 / lean], 3 * i)
      if (below > 0) continue
    }
    let [x, y, z] = [0, 0, 0]
    for (let k = first[corner]!; k < first[corner + 1]!; k++) {
      const other = around[k]! * 3
      const along =
        flat[own]! * flat[other]! +
        flat[own + 1]! * flat[other + 1]! +
        flat[own + 2]! * flat[other + 2]!
      if (along < SMOOTH) continue
      const size = sizes[around[k]!]!
      x += size * flat[other]!
      y += size * flat[other + 1]!
      z += size * flat[other + 2]!
    }
    const n = Math.hypot(x, y, z) || 1
    normals[3 * i] = x / n
    normals[3 * i + 1] = y / n
    normals[3 * i + 2] = z / n
  }
  return normals
}
