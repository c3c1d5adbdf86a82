import { type Section, filled } from '#billet'
import { type Warp, boxOutline, closeDies, discOutline, draw, squaringClosings, turn } from '#warp'

/** A section one in area brought to another of one in area, in a frame scaled to that. */
export interface SectionMap {
  /** In pull-back order. */
  readonly warps: readonly Warp[]
  /** How far outside the old section corners of the new box may come from, per side of the square of that area. */
  readonly beyond: number
}

type Outline = ReturnType<typeof boxOutline>
type Closings = Parameters<typeof closeDies>[1]

/** Side, distance across flats, diameter of a section of area one. */
export function acrossOf(section: Section): number {
  return 1 / Math.sqrt(filled[section])
}

function outlineOf(section: Section): Outline {
  const across = acrossOf(section)
  if (section === 'round') return discOutline(across / 2)
  if (section === 'rectangle') return boxOutline(across, across)
  const radius = across / 2 / Math.cos(Math.PI / 8)
  return Array.from({ length: 8 }, (_, i) => {
    const angle = ((i + 0.5) * Math.PI) / 4
    return { y: radius * Math.cos(angle), z: radius * Math.sin(angle) }
  })
}

/** Half-steps in which a round or an octagon is squared: 16 close the corners to a few per cent. */
const SQUARING = 16

/**
 * Dies with stoned edges and blows that lap leave no line where their print ends: the print's edge is
 * spread over the whole of each light squeeze (common practice, no source).
 */
const EDGE = 1

/** The closings of the dies by which a smith gets from one section to the other. */
function closings(from: Section, to: Section, onCorner: boolean): Closings {
  const across = acrossOf(to)
  if (to === 'rectangle') {
    const start = onCorner ? Math.SQRT2 : acrossOf(from)
    return squaringClosings(start, across, onCorner ? 24 : SQUARING, onCorner ? 0.125 : 0)
  }
  const corners = from === 'rectangle' ? squaringClosings(Math.SQRT2, across, 8, 0.125) : []
  const flats = squaringClosings(1.06 * across, across, 4)
  if (to === 'octagon')
    return [...corners, ...flats, ...squaringClosings(across * 1.02, across, 2, 0.125)]
  // Round over the octagon: its eight corners down, then a light pass all round.
  const eight = [1, 3, 5, 7].map((k) => ({ turns: k / 16, gap: across * 1.005 }))
  const all = [0, 1, 2, 3].map((k) => ({ turns: k / 8, gap: across * 1.002 }))
  return [...corners, ...flats, ...eight, ...all, ...eight]
}

const known = new Map<string, SectionMap>()

/**
 * Brings one section to another by closing flat dies on it from several sides, columns standing and
 * slipping (trade: square up, octagon, round; `onCorner`: set on its corner first, the bias). The
 * section comes out of the size of a true one, its corners a little round: volume is kept exactly.
 */
export function sectionMap(from: Section, to: Section, onCorner = false): SectionMap {
  const key = `${from} ${to} ${onCorner}`
  const seen = known.get(key)
  if (seen) return seen
  const start = outlineOf(from)
  const closed = closeDies(start, closings(from, to, onCorner), { edge: EDGE })
  // Set on its corner, the new flats become the faces.
  const lies = onCorner ? [turn('angle', { turns: 0.125 })] : []
  const { width, height } = boxOf(onCorner ? eighthTurned(closed.outline) : closed.outline)
  // To the mean size of the section it should be; what is over on one side is drawn into the other.
  const ratio = Math.sqrt(width / height)
  const even = draw({ length: 1, width: 1 / ratio, height: ratio })
  const map = {
    warps: [even, ...lies, ...closed.warps.toReversed()],
    beyond: Math.max(width, height) - acrossOf(to) + 0.05,
  }
  known.set(key, map)
  return map
}

function eighthTurned(outline: Outline): Outline {
  return outline.map(({ y, z }) => ({ y: (y - z) * Math.SQRT1_2, z: (y + z) * Math.SQRT1_2 }))
}

function boxOf(outline: Outline) {
  const range = (values: readonly number[]) => Math.max(...values) - Math.min(...values)
  return { width: range(outline.map((p) => p.y)), height: range(outline.map((p) => p.z)) }
}
