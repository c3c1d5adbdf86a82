/** A closed surface of triangles, anticlockwise seen from outside. */
export interface Mesh {
  /** x, y, z of each corner in turn, m. */
  readonly positions: Float64Array
  /** Three corner numbers a triangle. */
  readonly triangles: Uint32Array
  /** Greatest distance between the true surface and the facets, sampled in the middle of each facet and each side, m. */
  readonly chordError: number
}

/** Volume enclosed, m³: the sum of signed tetrahedra from the origin (divergence theorem). */
export function meshVolume(mesh: Pick<Mesh, 'positions' | 'triangles'>): number {
  const { positions: p, triangles: t } = mesh
  let six = 0
  for (let i = 0; i < t.length; i += 3) {
    const [a, b, c] = [t[i] * 3, t[i + 1] * 3, t[i + 2] * 3]
    six +=
      p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) +
      p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2]) +
      p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c])
  }
  return six / 6
}

/** Area of all triangles, m². */
export function meshArea(mesh: Pick<Mesh, 'positions' | 'triangles'>): number {
  const { positions: p, triangles: t } = mesh
  let area = 0
  for (let i = 0; i < t.length; i += 3) {
    const [a, b, c] = [t[i] * 3, t[i + 1] * 3, t[i + 2] * 3]
    const u = [0, 1, 2].map((k) => p[b + k] - p[a + k])
    const v = [0, 1, 2].map((k) => p[c + k] - p[a + k])
    area +=
      Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) /
      2
  }
  return area
}

/** Sides not met by a neighbour running the other way; 0 for a watertight mesh. */
export function openSides(mesh: Pick<Mesh, 'triangles'>): number {
  const { triangles: t } = mesh
  const balance = new Map<number, number>()
  let most = 0
  for (const corner of t) most = Math.max(most, corner)
  const span = most + 1
  for (let i = 0; i < t.length; i += 3) {
    for (let k = 0; k < 3; k++) {
      const a = t[i + k]
      const b = t[i + ((k + 1) % 3)]
      const key = Math.min(a, b) * span + Math.max(a, b)
      balance.set(key, (balance.get(key) ?? 0) + (a < b ? 1 : -1))
    }
  }
  return [...balance.values()].filter((n) => n !== 0).length
}
