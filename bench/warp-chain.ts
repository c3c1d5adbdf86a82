import { affine, column, draw, restack, turn, twist, type TailStage, type Warp } from '#warp'

/** Face 200 × 40 mm with a bevel, z = 5 mm − 0.1·|y|, as rows of points. */
export const FACE = { length: 0.2, width: 0.04, spine: 0.005, slope: 0.1 }

export function faceRow(row: number, rows: number) {
  const y = ((row + 0.5) / rows - 0.5) * FACE.width
  return { y, z: FACE.spine - FACE.slope * Math.abs(y) }
}

export function faceRamp(columns: number): Float64Array {
  return Float64Array.from({ length: columns }, (_, i) => ((i + 0.5) / columns) * FACE.length)
}

/** Grooves across, flattened: the ladder's column map. */
function ladder(): Warp {
  const columns = Array.from({ length: 2001 }, (_, i) => {
    const groove = 0.2 * Math.max(0, Math.cos((i / 2000) * 2 * Math.PI * 20)) ** 2
    return { shortening: (1 - groove) * 1.1, middle: -0.0005 * groove }
  })
  return column({ axis: 'x', before: [0, 0.21], from: 0, columns }).warp
}

/**
 * Twelve operations from the stack to the face: draw, restack, turn on the bias, draw, restack, draw, twist, draw,
 * fold and restack, quarter turn, draw, ladder. In order of working; layers = sheets · n1 · n2 · n3.
 */
export function chain(n1: number, n2: number, n3: number): Warp[] {
  const size = { length: 0.05, height: 0.02 }
  const back = (factor: number) =>
    draw({ length: factor, width: Math.sqrt(1 / factor), height: Math.sqrt(1 / factor) })
  return [
    back(2),
    restack({ pieces: n1, ...size, kerf: 0.002 }),
    affine({
      rows: [
        [1, 0, 0],
        [0, 0.8, 0.6],
        [0, -0.6, 0.8],
      ],
    }),
    back(1.5),
    restack({ pieces: n2, ...size }),
    back(3),
    twist({ pitch: 0.04, phase: 0.1 }),
    back(1.2),
    restack({ pieces: n3, length: 0.25, height: 0.011, turn: 'folded' }),
    turn('quarter'),
    back(1.6),
    ladder(),
  ]
}

/** Which of two steels, from the height in a stack of alternate sheets. */
export function readSteel(sheets: number, stackHeight: number): TailStage {
  return {
    numbers: { perMetre: sheets / stackHeight, half: sheets / 2 },
    tables: { steels: Array.from({ length: sheets }, (_, i) => i % 2) },
    outputs: ['steel'],
    read(g, place, at) {
      const { table, length } = at.table('steels')
      const layer = g.add(g.mul(place.z, at.number('perMetre')), at.number('half'))
      return [g.fetch(table, g.clamp(g.floor(layer), 0, length - 1))]
    },
  }
}
