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

/** The bar is 20 mm square when it is folded, 23 mm when it is restacked before; the stack 25.3 mm high. */
const FOLDED = 0.02
const RESTACKED = FOLDED * 1.15
export const STACK = RESTACKED * 1.1

/**
 * Twelve operations from the stack to the face: drawn; cut and restacked n3; leant over; drawn; restacked n2; drawn;
 * twisted; drawn; folded n1 times; turned on edge; drawn; laddered. In order of working; each drawing after a restack
 * brings section and length back, so that layers = sheets · n1 · n2 · n3.
 */
export function chain(n1: number, n2: number, n3: number): Warp[] {
  const flat = (n: number) => draw({ length: n, width: 1, height: 1 / n })
  const evenly = (n: number) => draw({ length: n * n, width: 1 / n, height: 1 / n })
  const early = FACE.length / 1.15 ** 2
  return [
    evenly(1.1),
    restack({ pieces: n3, length: early / n3, height: RESTACKED, kerf: 0.002 }),
    affine({
      rows: [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0.35, 1],
      ],
    }),
    flat(n3),
    restack({ pieces: n2, length: early / n2, height: RESTACKED, kerf: 0.002 }),
    flat(n2),
    twist({ pitch: 0.024, phase: 0.1 }),
    evenly(1.15),
    restack({ pieces: n1, length: FACE.length / n1, height: FOLDED, turn: 'folded' }),
    turn('quarter'),
    draw({ length: n1, width: 2 / n1, height: 0.5 }),
    ladder(),
  ]
}

/** Chains of other lengths: the middle of the twelve over and over. */
export function chainOf(operations: number): Warp[] {
  const whole = chain(2, 2, 3)
  return Array.from({ length: operations }, (_, i) => whole[i % whole.length]!)
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
