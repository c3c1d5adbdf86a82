import { boundariesOf } from '#share'
import { type Origin, type Stack } from './origin.ts'
import { NOTHING, traceOrigin } from './tracer.ts'

/** What lies at a point of the metal. */
export interface Found {
  readonly bar: string
  /** The stack it was laid in, and its number among `stacksOf` the origin. */
  readonly stack: Stack
  readonly number: number
  /** Where in that stack, m. */
  readonly x: number
  readonly y: number
  readonly z: number
  /** Sheet from the bottom, 0 first; `layer` the same with how far through it. */
  readonly sheet: number
  readonly layer: number
  readonly steel: string
}

/** Pulls points back to where they were laid, in double precision; undefined where there is no metal. */
export function findSteel(
  origin: Origin,
  points: {
    readonly x: ArrayLike<number>
    readonly y: ArrayLike<number>
    readonly z: ArrayLike<number>
  },
  engine: 'kernels' | 'reference' = 'kernels',
): (Found | undefined)[] {
  const tracer = traceOrigin(origin, { precision: 'f64', weights: [], engine })
  const edges = tracer.stacks.map((s) => boundariesOf(s.layers))
  const result: (Found | undefined)[] = []
  for (let start = 0; start < points.x.length; start += tracer.tile) {
    const count = Math.min(tracer.tile, points.x.length - start)
    ;[points.x, points.y, points.z].forEach((row, k) => {
      const to = tracer.input(k)
      for (let i = 0; i < count; i++) to[i] = row[start + i]!
    })
    tracer.run(count)
    const { found } = tracer
    for (let i = 0; i < count; i++) {
      const number = found.stack[i]!
      if (number === NOTHING) {
        result.push(undefined)
        continue
      }
      const stack = tracer.stacks[number]!
      const [x, y, z] = [found.x[i]!, found.y[i]!, found.z[i]!]
      const { sheet, layer } = sheetAt(edges[number]!, z)
      result.push({
        bar: stack.bar,
        stack,
        number,
        x,
        y,
        z,
        sheet,
        layer,
        steel: stack.layers[sheet]!.steel,
      })
    }
  }
  return result
}

/** Which sheet a height lies in; beyond the outsides the outer sheets go on. */
function sheetAt(edges: readonly number[], z: number): { sheet: number; layer: number } {
  let [low, high] = [0, edges.length - 1]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (edges[middle]! <= z) low = middle
    else high = middle
  }
  const share = (z - edges[low]!) / (edges[low + 1]! - edges[low]!)
  return { sheet: low, layer: low + Math.min(1, Math.max(0, share)) }
}
