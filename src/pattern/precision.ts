import { cellsOf, heightOf } from '#share'
import { type FaceView, rasterise } from '#view'
import { type Origin, type Stack } from './origin.ts'
import { type Tracer, NOTHING, traceOrigin } from './tracer.ts'

/** Single precision tells places along a bar apart by some 10 nm: smaller pixels (m) than this are drawn in double. */
const SMALL = 2e-6
/** In pixels as large as this, m, rounding has not been seen to show: the look is spared. */
const LARGE = 0.99e-4
/** Rows and columns of places looked at. */
const ROWS = 4
const COLUMNS = 16
/** Rounding is let pass up to this share of what a place moves from pixel to pixel across the sheets. */
const ROUNDING = 0.01
/** A lesser move than this, in cells of the stack, is taken as so much: sheets that lie in the face do not count. */
const LEAST = 0.0625
/** Share of the places at which more is let pass: beside a joint single precision may find the other piece. */
const STRAYS = 0.125

/**
 * In what precision a face is to be drawn. Single, unless its rounding on the way back to the piles would show: a metal
 * drawn out far, in many fine layers, looked at closely. Told by going both ways at some places of the face.
 */
export function precisionFor(view: FaceView, origin: Origin): 'f32' | 'f64' {
  if (view.pixel > LARGE) return 'f32'
  if (view.pixel < SMALL) return 'f64'
  const places = placesOn(view)
  const count = places[0].length
  if (count === 0) return 'f32'
  const { single, double, cells } = tracersOf(origin)
  for (const tracer of [single, double]) {
    places.forEach((axis, k) => tracer.input(k).set(axis))
    tracer.run(count)
  }
  const [rough, exact] = [single.found, double.found]
  let [looked, off] = [0, 0]
  for (let i = 0; i < count; i += 3) {
    const stack = exact.stack[i]!
    if ([0, 1, 2].some((k) => exact.stack[i + k] !== stack) || stack === NOTHING) continue
    looked++
    const [z, right, up] = [0, 1, 2].map((k) => exact.z[i + k]!) as [number, number, number]
    const move = Math.max(Math.abs(right - z) + Math.abs(up - z), LEAST * cells[stack]!)
    if (rough.stack[i] !== stack || Math.abs(rough.z[i]! - z) > ROUNDING * move) off++
  }
  return off > STRAYS * looked ? 'f64' : 'f32'
}

/** Places spread over the metal of a face, each followed by those a pixel to its right and above. */
function placesOn(view: FaceView): [number[], number[], number[]] {
  const { width, height, pixel, frame } = view
  const places: [number[], number[], number[]] = [[], [], []]
  const middles = (of: number, most: number) =>
    Array.from({ length: Math.min(of, most) }, (_, i) =>
      Math.floor(((i + 0.5) / Math.min(of, most)) * of),
    )
  for (const row of middles(height, ROWS)) {
    const { alpha, facets } = rasterise(view, row, row + 1)
    for (const column of middles(width, COLUMNS)) {
      if (alpha[column] === 0) continue
      const out = facets ? facets.out[column]! : 0
      for (const [r, u] of ASIDE)
        places.forEach((axis, k) =>
          axis.push(
            frame.origin[k]! +
              (column + 0.5 + r) * pixel * frame.right[k]! +
              (height - row - 0.5 + u) * pixel * frame.up[k]! +
              (facets
                ? out + pixel * (r * facets.slopeRight[column]! + u * facets.slopeUp[column]!)
                : 0) *
                frame.out[k]!,
          ),
        )
    }
  }
  return places
}
const ASIDE = [
  [0, 0],
  [1, 0],
  [0, 1],
] as const

interface Both {
  readonly single: Tracer
  readonly double: Tracer
  /** Height of a cell of each stack, m. */
  readonly cells: readonly number[]
}
const known = new WeakMap<Origin, Both>()

function tracersOf(origin: Origin): Both {
  const seen = known.get(origin)
  if (seen) return seen
  const tracer = (precision: 'f32' | 'f64') =>
    traceOrigin(origin, { precision, weights: [], engine: 'reference', tile: 3 * ROWS * COLUMNS })
  const double = tracer('f64')
  const cellOf = ({ layers }: Stack) => heightOf(layers) / cellsOf(layers)
  const made = { single: tracer('f32'), double, cells: double.stacks.map(cellOf) }
  known.set(origin, made)
  return made
}
