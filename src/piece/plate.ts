import { type HeightField } from '#geometry'
import { joinBreaks, orderBreaks } from './breaks.ts'
import { type Cut } from './cut.ts'

/** How the edges round a face are broken. */
export type EdgeForm = 'square' | 'radius' | 'chamfer'

/** What an edge form takes off a face at a distance from the side, m. */
export function edgeDrop(form: EdgeForm, size: number, distance: number): number {
  if (form === 'square' || distance >= size) return 0
  const short = size - distance
  return form === 'chamfer' ? short : size - Math.sqrt(Math.max(0, size * size - short * short))
}

export interface Plate {
  readonly length: number
  readonly width: number
  readonly thickness: number
  /** Radius of the corners in plan. */
  readonly corner: number
  readonly edge: EdgeForm
  readonly edgeSize: number
}

/**
 * A flat plate with rounded corners whose edges are broken all round both faces. With sharp
 * corners the broken edges meet in a mitre, as they come off the belt one side at a time.
 */
export function plateField(plate: Plate): HeightField {
  const { length, width, thickness, corner: c, edge } = plate
  const r = edge === 'square' ? 0 : plate.edgeSize
  const face = (x: number, y: number) => {
    const [dx, dy] = [Math.min(x, length - x), width / 2 - Math.abs(y)]
    const distance = dx < c && dy < c ? c - Math.hypot(c - dx, c - dy) : Math.min(dx, dy)
    return thickness / 2 - edgeDrop(edge, r, Math.max(0, distance))
  }
  return {
    xBreaks: joinBreaks(length, [c, r, length / 2, length - r, length - c]),
    yBreaks: (x) => {
      const dx = Math.min(x, length - x)
      const side = halfWidth(width, c, dx)
      const flat =
        dx >= c ? width / 2 - (r > c ? Math.min(dx, r) : r) : width / 2 - c + chord(c - r, c - dx)
      const breaks = [width / 2 - c, flat]
      return orderBreaks(-side, side, [...breaks, 0, ...breaks.map((y) => -y)])
    },
    top: face,
    bottom: (x, y) => -face(x, y),
  }
}

function chord(radius: number, off: number): number {
  return radius > off ? Math.sqrt(radius * radius - off * off) : 0
}

/** Half the width of a rectangle with round corners, dx from its end. */
function halfWidth(width: number, corner: number, dx: number): number {
  if (dx <= 0) return Math.max(0, width / 2 - corner)
  return dx >= corner ? width / 2 : width / 2 - corner + chord(corner, corner - dx)
}

/** A slot right through, with its ends rounded; `length` along x. */
export function slotCut(slot: {
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
  readonly corner: number
}): Cut {
  const { x: cx, y: cy, length, width, corner } = slot
  const half = (x: number) => {
    const dx = length / 2 - Math.abs(x - cx)
    return dx < 0 ? 0 : halfWidth(width, corner, dx)
  }
  return {
    xBreaks: [cx - length / 2, cx - length / 2 + corner, cx + length / 2 - corner, cx + length / 2],
    yBreaks: (x) => [cy - half(x), cy + half(x)],
    fromTop: (x, y) => (Math.abs(y - cy) < half(x) ? Infinity : 0),
    fromBottom: () => 0,
  }
}

/** A box pressed into the front face to an even depth. */
export function boxCut(box: {
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
  readonly depth: number
}): Cut {
  const [x0, x1] = [box.x - box.length / 2, box.x + box.length / 2]
  const [y0, y1] = [box.y - box.width / 2, box.y + box.width / 2]
  return {
    xBreaks: [x0, x1],
    yBreaks: () => [y0, y1],
    fromTop: (x, y) => (x > x0 && x < x1 && y > y0 && y < y1 ? box.depth : 0),
    fromBottom: () => 0,
  }
}
