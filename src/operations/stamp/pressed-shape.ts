import type { SplineSurface } from '#geometry'
import { coverEmblem } from '#forming'
import type { StampBox } from '#piece'
import type { EmblemAsked, StampFace } from './emblem.ts'

/** What a stamp presses in: depths over the face, in the piece's frame, m. */
export interface PressedShape {
  readonly depths: SplineSurface
  /** Of the deepest places. */
  readonly floor: number
  /** Wavelength by which the layers under it sink. */
  readonly feature: number
  /** What it was made from. */
  readonly told: string
}

/** Of the walls of a die, against the way it is pressed: common practice, no source. */
const DRAFT = (7 * Math.PI) / 180
/** Stoned by hand: common practice. */
const EDGE_RADIUS = 1e-4
/** Cells to a wall's run: a step, softened once and laid over splines, rises over about so many. */
const CELLS_PER_WALL = 5
/** As many as a field of unevenness: more would be a load to any card, and large stamps of fine strokes come out softer. */
const MOST_CELLS = 60_000
/** Squares round the outline, so that the depth has come to nothing at the end of the grid. */
const RIM = 3

/** Shapes pressed lately: every look at the bar asks again. */
const known = new Map<string, PressedShape>()
const KEPT = 4

/**
 * The outline as large as the box holds it, pressed in to full depth; without an outline the box, to its mean depth.
 * Walls run over the rounding of the stamp's edge, the draft, and as large a rounding where the metal is drawn in, with
 * the outline at half depth: what is pressed aside is the emblem's area times the depth. `stock`: still to come off the face;
 * `share`: of that depth, how much it has been pressed in.
 */
export function pressedShape(
  asked: EmblemAsked & { readonly depth?: number; readonly edgeRadius?: number },
  { emblem, from }: StampFace,
  box: StampBox,
  { stock, share }: { readonly stock: number; readonly share: number },
): PressedShape {
  const drawn = from === 'outline'
  const pressed = asked.depth ?? box.depth + stock
  // What comes off with the face is pressed down whole; of what stays below it the box has its share.
  const stays = Math.max(0, pressed - stock) * box.share
  const floor = share * (drawn ? pressed : Math.min(pressed, stock) + stays)
  const [wide, tall] = drawn ? emblem.size : [box.length, box.width]
  const path = (drawn && asked.emblem) || `M0 0H${box.length}V${box.width}H0Z`
  const run = 2 * (asked.edgeRadius ?? EDGE_RADIUS) + floor * Math.tan(DRAFT)
  const told = JSON.stringify([path, wide, tall, box.at, floor, run, stock])
  const before = known.get(told)
  if (before) return before
  const cell = Math.max(
    Math.min(run / CELLS_PER_WALL, drawn ? emblem.thinnest / 2 : Infinity),
    Math.sqrt((wide * tall) / MOST_CELLS),
  )
  const [columns, rows] = [wide, tall].map((side) => Math.ceil(side / cell) + 2 * RIM)
  const [left, bottom] = [(-columns * cell) / 2, (-rows * cell) / 2]
  const cover = coverEmblem(path, wide, { left, bottom, cell, columns, rows })
  if (!cover.ok) throw new Error('an outline that was measured does not fill')
  const shape: PressedShape = {
    // A coefficient stands for the square its spline is the middle of: the first and last lie outside the cells.
    depths: {
      x: box.at.x + left + cell,
      y: box.at.y + bottom + cell,
      ...{ cellX: cell, cellY: cell, columns },
      values: Array.from(softened(cover.ok, columns), (share) => share * floor),
    },
    floor,
    feature: drawn ? emblem.wavelength : Math.min(box.length, box.width),
    told,
  }
  known.set(told, shape)
  if (known.size > KEPT) known.delete(known.keys().next().value as string)
  return shape
}

/** Each square taken with its neighbours by ¼ ½ ¼ both ways, so that no stairs are left of slanting edges; the rim stays. */
function softened(cover: Float64Array, columns: number): Float64Array {
  let from = cover
  for (const by of [1, columns]) {
    const to = Float64Array.from(from)
    for (let i = by; i < from.length - by; i++)
      to[i] = (from[i - by] + 2 * from[i] + from[i + by]) / 4
    from = to
  }
  return from
}
