import type { Point } from '#geometry'
import { type Wanted, DESIGN_DENSITY, buildPiece } from '#job'
import type { PieceSolid } from '#piece'
import type { PieceDrawing } from './messages.ts'

/** Points along the long edge, and across it to find its highest metal. */
const ALONG = 160
const ACROSS = 24
const OVER_SECTION = 320

/** The lines of the piece's drawing; undefined while its sizes do not make a piece. */
export function drawPiece(wanted: Wanted, density = DESIGN_DENSITY): PieceDrawing | undefined {
  const built = buildPiece(wanted)
  if (!built.ok) return undefined
  const solid = built.ok
  const { edges, size } = solid
  return {
    kind: solid.kind,
    size,
    mass: solid.volume * density,
    outline: edges.outline,
    lines: edges.lines,
    grooves: edges.grooves.map(({ path, width, face }) => ({ path, width, face })),
    ...(edges.stamp && {
      stamp: { at: edges.stamp.at, length: edges.stamp.length, width: edges.stamp.width },
    }),
    edge: edgeOf(solid),
    section: sectionOf(solid),
    overall: overallOf(wanted, solid),
  }
}

function edgeOf(solid: PieceSolid): PieceDrawing['edge'] {
  const { length, width } = solid.size
  const top: Point[] = []
  const bottom: Point[] = []
  for (let i = 0; i <= ALONG; i++) {
    // Ends a hair inside, where there is metal.
    const x = Math.min(Math.max((i / ALONG) * length, length * 1e-6), length * (1 - 1e-6))
    let [high, low] = [-Infinity, Infinity]
    for (let j = 0; j < ACROSS; j++) {
      const y = ((j + 0.5) / ACROSS - 0.5) * width
      if (!solid.inside(x, y)) continue
      high = Math.max(high, solid.top(x, y))
      low = Math.min(low, solid.bottom(x, y))
    }
    if (high < low) continue
    top.push({ x, y: high })
    bottom.push({ x, y: low })
  }
  return { top, bottom }
}

/** Where a section says most: through a fuller, else at a quarter, clear of what sits in the middle. */
function sectionOf(solid: PieceSolid): PieceDrawing['section'] {
  const [groove] = solid.edges.grooves
  const along = groove?.path.map((point) => point.x) ?? []
  const [from, to] = [Math.min(...along), Math.max(...along)]
  const runs = groove?.face !== 'back' && to - from > solid.size.length / 5
  const x = runs ? (from + to) / 2 : solid.size.length * 0.75
  const top: Point[] = []
  const bottom: Point[] = []
  for (let j = 0; j <= OVER_SECTION; j++) {
    const y = (j / OVER_SECTION - 0.5) * solid.size.width * (1 - 1e-9)
    if (!solid.inside(x, y)) continue
    top.push({ x: y, y: solid.top(x, y) })
    bottom.push({ x: y, y: solid.bottom(x, y) })
  }
  return { x, top, bottom }
}

/** The parameters whose value is the piece's whole length, width or height: dimensions one can type. */
function overallOf({ kind, values }: Wanted, solid: PieceSolid): PieceDrawing['overall'] {
  const overall: Partial<Record<'length' | 'width' | 'height', string>> = {}
  for (const [name, p] of Object.entries(kind.parameters)) {
    if (p.form !== 'quantity' || p.of !== 'length') continue
    for (const side of ['length', 'width', 'height'] as const) {
      const same = Math.abs((values[name] as number) - solid.size[side]) < 1e-9
      if (same && overall[side] === undefined) overall[side] = name
    }
  }
  return overall
}
