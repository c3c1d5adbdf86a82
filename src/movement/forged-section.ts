import type { Outline } from '#geometry'
import type { PieceSolid } from '#piece'

/** One section of the forged shape. */
export interface ForgedSection {
  readonly area: number
  /** Share of the section's area on the lower side of a place; past its sides it goes on evenly. */
  shareBelow(y: number): number
  column(y: number): { readonly thick: number; readonly middle: number }
}

const PLACES = 96

/** The section of a piece forged with stock on it, at a place along the piece, m. */
export function forgedSection(
  piece: PieceSolid,
  x: number,
  stock: number,
  bevels: boolean,
): ForgedSection {
  const [outline] = piece.edges.outline
  const inner = spanAt(outline, clampInside(x, piece.size.length))
  const [low, high] = [inner[0] - stock, inner[1] + stock]
  const step = (high - low) / PLACES
  const columns = Array.from({ length: PLACES + 1 }, (_, k) => {
    const y = Math.min(inner[1] - 1e-9, Math.max(inner[0] + 1e-9, low + k * step))
    const [top, bottom] = [piece.top(x, y), piece.bottom(x, y)]
    return { thick: Math.max(0, top - bottom) + 2 * stock, middle: (top + bottom) / 2 }
  })
  const most = Math.max(...columns.map((c) => c.thick))
  const flat = { thick: most, middle: 0 }
  const thick = columns.map((c) => (bevels ? Math.max(c.thick, 0.02 * most, 1e-5) : most))
  const sums = integrated(thick, step)
  const area = sums[PLACES]
  const at = (y: number) => (y - low) / step
  return {
    area,
    shareBelow(y) {
      const t = at(y)
      if (t <= 0) return (t * step * thick[0]) / area
      if (t >= PLACES) return 1 + ((t - PLACES) * step * thick[PLACES]) / area
      const k = Math.floor(t)
      const f = t - k
      return (sums[k] + step * f * (thick[k] + (f / 2) * (thick[k + 1] - thick[k]))) / area
    },
    column(y) {
      if (!bevels) return flat
      const k = Math.min(PLACES, Math.max(0, Math.round(at(y))))
      return { thick: thick[k], middle: columns[k].middle }
    },
  }
}

/** The outline's least and greatest y at a place along it. */
function spanAt(outline: Outline, x: number): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity]
  outline.forEach((p, i) => {
    const q = outline[(i + 1) % outline.length]
    if ((p.x - x) * (q.x - x) > 0) return
    const f = q.x === p.x ? 0 : (x - p.x) / (q.x - p.x)
    for (const y of q.x === p.x ? [p.y, q.y] : [p.y + f * (q.y - p.y)]) {
      low = Math.min(low, y)
      high = Math.max(high, y)
    }
  })
  return low <= high ? [low, high] : [0, 0]
}

/** Running integral of evenly spaced values, straight between. */
export function integrated(values: readonly number[], step: number): number[] {
  const sums = [0]
  for (let i = 1; i < values.length; i++)
    sums.push(sums[i - 1] + (step * (values[i - 1] + values[i])) / 2)
  return sums
}

/** Just inside the ends, where the outline is met. */
function clampInside(x: number, length: number): number {
  return Math.min(length * (1 - 1e-6), Math.max(length * 1e-6, x))
}
