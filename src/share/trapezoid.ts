/** Share of a pixel in which a value that runs linearly through it (by du and dv along its sides) is below `limit`. */
export function shareBelow(limit: number, du: number, dv: number): number {
  const [a, b] = [Math.abs(du), Math.abs(dv)]
  const [g, h] = a > b ? [a, b] : [b, a]
  const [p, q] = [(g + h) / 2, (g - h) / 2]
  if (limit <= -p) return 0
  if (limit >= p) return 1
  // One side of next to no run: the spread is a plain box.
  if (h < 1e-6 * g) return (limit + g / 2) / g
  if (limit < -q) return (limit + p) ** 2 / (2 * g * h)
  if (limit > q) return 1 - (p - limit) ** 2 / (2 * g * h)
  return 0.5 + limit / g
}

/** Share of a pixel within `depth` of a face, the value counted from it, either side. */
export function slabShare(value: number, du: number, dv: number, depth: number): number {
  const reach = (Math.abs(du) + Math.abs(dv)) / 2 + depth
  if (value > reach || value < -reach) return 0
  return shareBelow(depth - value, du, dv) - shareBelow(-depth - value, du, dv)
}
