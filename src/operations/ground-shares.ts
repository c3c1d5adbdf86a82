import type { PieceSolid } from '#piece'
import { type Build, sharesOf } from '#billet'
import type { Size } from '#geometry'
import { type ForgedSection, forgedSection } from '#movement'
import { contentMeter } from './content.ts'

/** How a bar was brought to the piece's outline before grinding, if it was. */
export const FORGED_BEVELS = 'forged to shape'
export const FORGED_OUTLINE = 'forged to outline'

/** Cells the piece is divided into, along and across. */
const ALONG = 120
const ACROSS = 48

/** The cells of a piece that hold metal: their middles in the piece's frame, m. */
interface Cells {
  readonly count: number
  readonly x: Float64Array
  readonly y: Float64Array
  readonly bottom: Float64Array
  readonly top: Float64Array
  /** Greatest thickness of the section each is in. */
  readonly section: Float64Array
}

const cellsOf = new WeakMap<PieceSolid, Cells>()

function cells(piece: PieceSolid): Cells {
  const known = cellsOf.get(piece)
  if (known) return known
  const { length, width } = piece.size
  const stations = piece.sections(2 * ALONG)
  const column = () => new Float64Array(ALONG * ACROSS)
  const found = { x: column(), y: column(), bottom: column(), top: column(), section: column() }
  let count = 0
  for (let i = 0; i < ALONG; i++) {
    const x = ((i + 0.5) / ALONG) * length
    for (let j = 0; j < ACROSS; j++) {
      const y = ((j + 0.5) / ACROSS - 0.5) * width
      if (!piece.inside(x, y)) continue
      const [bottom, top] = [piece.bottom(x, y), piece.top(x, y)]
      if (!(top > bottom)) continue
      found.x[count] = x
      found.y[count] = y
      found.bottom[count] = bottom
      found.top[count] = top
      found.section[count++] = stations[2 * i + 1].thickness
    }
  }
  const made = { count, ...found }
  cellsOf.set(piece, made)
  return made
}

/**
 * Steels of the piece as it lies in the bar it is ground from, as shares, when `leave` is left on
 * its faces. In a straight bar layers lie where they lay, so a bevel cuts the outer ones away; in a
 * forged one they follow the faces and only the skin goes. Sums over a grid: good to 1e-3 or better.
 */
export function groundShares(
  build: Build,
  bar: Size,
  piece: PieceSolid,
  leave: number,
): Record<string, number> {
  const forged = build.form === 'worked' && isForged(build.by) ? build.by : ''
  const of = build.form === 'worked' && forged ? build.of : build
  const { steels, meter } = contentMeter(of)
  const skin = (bar.height - piece.size.height) / 2
  const sums = new Float64Array(steels.length)
  const box = new Float64Array(6)
  let whole = 0
  const dx = piece.size.length / ALONG / 2
  const dy = piece.size.width / ACROSS / 2
  const before = (bar.length - piece.size.length) / 2
  const { count, x, y, bottom, top, section } = cells(piece)
  const across = forged ? sectionsOf(piece, skin, forged === FORGED_BEVELS) : undefined
  for (let i = 0; i < count; i++) {
    const half = forged === FORGED_OUTLINE ? section[i] / 2 + skin : bar.height / 2
    const low = forged === FORGED_BEVELS ? bottom[i] - skin : -half
    const high = forged === FORGED_BEVELS ? top[i] + skin : half
    box[0] = (x[i] - dx + before) / bar.length
    box[1] = (x[i] + dx + before) / bar.length
    const forgedTo = across?.[Math.floor(x[i] / (2 * dx))]
    box[2] = forgedTo ? forgedTo.shareBelow(y[i] - dy) : (y[i] - dy) / bar.width + 0.5
    box[3] = forgedTo ? forgedTo.shareBelow(y[i] + dy) : (y[i] + dy) / bar.width + 0.5
    box[4] = (bottom[i] - leave - low) / (high - low)
    box[5] = (top[i] + leave - low) / (high - low)
    const thick = top[i] - bottom[i] + 2 * leave
    whole += thick
    meter(box, thick, sums)
  }
  if (!(whole > 0)) return { ...sharesOf(of) }
  return Object.fromEntries(steels.map((steel, s) => [steel, sums[s] / whole]))
}

const sections = new WeakMap<PieceSolid, Map<string, readonly ForgedSection[]>>()

/** The forged sections at the cells along a piece: what lay across the bar is narrowed with its outline. */
function sectionsOf(piece: PieceSolid, stock: number, bevels: boolean): readonly ForgedSection[] {
  const known = sections.get(piece) ?? new Map<string, readonly ForgedSection[]>()
  sections.set(piece, known)
  const key = `${stock} ${bevels}`
  const seen = known.get(key)
  if (seen) return seen
  const { length } = piece.size
  const made = Array.from({ length: ALONG }, (_, i) =>
    forgedSection(piece, ((i + 0.5) / ALONG) * length, stock, bevels),
  )
  if (known.size >= KEPT) known.clear()
  known.set(key, made)
  return made
}
/** A job leaves two or three stocks on a piece. */
const KEPT = 8

export function isForged(by: string): boolean {
  return by === FORGED_BEVELS || by === FORGED_OUTLINE
}
