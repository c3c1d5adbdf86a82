import type { PieceSolid } from '#piece'
import type { Build } from '#billet'
import type { Size } from '#geometry'
import { contentReader } from './content.ts'

/** How a bar was brought to the piece's outline before grinding, if it was. */
export const FORGED_BEVELS = 'forged to shape'
export const FORGED_OUTLINE = 'forged to outline'

/** Cells the piece is divided into, along and across. */
const ALONG = 120
const ACROSS = 48

interface Cell {
  /** Middle of the cell, in the piece's frame. */
  readonly x: number
  readonly y: number
  readonly bottom: number
  readonly top: number
  /** Greatest thickness of the section it is in. */
  readonly section: number
}

const cellsOf = new WeakMap<PieceSolid, readonly Cell[]>()

function cells(piece: PieceSolid): readonly Cell[] {
  const known = cellsOf.get(piece)
  if (known) return known
  const { length, width } = piece.size
  const stations = piece.sections(2 * ALONG)
  const found: Cell[] = []
  for (let i = 0; i < ALONG; i++) {
    const x = ((i + 0.5) / ALONG) * length
    for (let j = 0; j < ACROSS; j++) {
      const y = ((j + 0.5) / ACROSS - 0.5) * width
      if (!piece.inside(x, y)) continue
      const [bottom, top] = [piece.bottom(x, y), piece.top(x, y)]
      if (top > bottom) found.push({ x, y, bottom, top, section: stations[2 * i + 1].thickness })
    }
  }
  cellsOf.set(piece, found)
  return found
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
  const forged = build.form === 'worked' ? build.by : ''
  const of = build.form === 'worked' && isForged(build.by) ? build.of : build
  const read = contentReader(of)
  const skin = (bar.height - piece.size.height) / 2
  const sum: Record<string, number> = {}
  let whole = 0
  const dx = piece.size.length / ALONG / 2
  const dy = piece.size.width / ACROSS / 2
  const along = (x: number) => (x + (bar.length - piece.size.length) / 2) / bar.length
  const across = (y: number) => (y + bar.width / 2) / bar.width
  for (const cell of cells(piece)) {
    const [low, high] = barAt(cell, forged, bar.height, skin)
    const high01 = (z: number) => Math.min(1, Math.max(0, (z - low) / (high - low)))
    const share = read({
      x: [along(cell.x - dx), along(cell.x + dx)],
      y: [across(cell.y - dy), across(cell.y + dy)],
      z: [high01(cell.bottom - leave), high01(cell.top + leave)],
    })
    const thick = cell.top - cell.bottom + 2 * leave
    whole += thick
    for (const [steel, has] of Object.entries(share)) sum[steel] = (sum[steel] ?? 0) + has * thick
  }
  if (!(whole > 0)) return read({})
  return Object.fromEntries(Object.entries(sum).map(([steel, has]) => [steel, has / whole]))
}

export function isForged(by: string): boolean {
  return by === FORGED_BEVELS || by === FORGED_OUTLINE
}

/** The bar's two faces at a cell. */
function barAt(
  cell: Cell,
  forged: string,
  height: number,
  skin: number,
): readonly [number, number] {
  if (forged === FORGED_BEVELS) return [cell.bottom - skin, cell.top + skin]
  const half = forged === FORGED_OUTLINE ? cell.section / 2 + skin : height / 2
  return [-half, half]
}
