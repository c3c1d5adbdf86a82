import { type Evaluator, compile } from '#warp'
import { meanStage } from './coverage-stage.ts'
import type { Weighing } from './weighing.ts'

type Numbers = Float64Array | Float32Array

/** Reads the means of a tile of pixels off their layer coordinates and runs. */
export interface MeanReader {
  /** Fills `means` for the first `count` of the three rows. */
  read(layer: Numbers, alongU: Numbers, alongV: Numbers, count: number): readonly Numbers[]
}

export function meanReader(
  weighings: readonly Weighing[],
  options: { precision: 'f32' | 'f64'; engine?: 'kernels' | 'reference'; tile: number },
): MeanReader {
  const made: { near?: Evaluator; far?: Evaluator } = {}
  const reader = (reach: 'near' | 'far') =>
    (made[reach] ??= compile([], {
      ...options,
      tail: meanStage(weighings, options.precision, reach),
      // Small enough to be one kernel; its parts would be written out and read back.
      groupSize: Infinity,
    }))
  const run = (reach: 'near' | 'far', rows: readonly Numbers[], count: number) => {
    const evaluator = reader(reach)
    rows.forEach((row, i) => evaluator.channel(i).set(row.subarray(0, count)))
    evaluator.run(count)
    return evaluator.program.outputs.map((o) => evaluator.channel(o.channel))
  }
  return {
    read(layer, alongU, alongV, count) {
      const near = countNear(alongU, alongV, count)
      const rows = [layer, alongU, alongV]
      if (near === count) return run('near', rows, count)
      if (near === 0) return run('far', rows, count)
      const [close, wide] = [run('near', rows, count), run('far', rows, count)]
      close.forEach((mean, k) => {
        const of = wide[k]!
        for (let i = 0; i < count; i++)
          if (Math.abs(alongU[i]!) + Math.abs(alongV[i]!) > NEAR) mean[i] = of[i]!
      })
      return close
    },
  }
}

function countNear(alongU: Numbers, alongV: Numbers, count: number): number {
  let near = 0
  for (let i = 0; i < count; i++) if (Math.abs(alongU[i]!) + Math.abs(alongV[i]!) <= NEAR) near++
  return near
}

/** g + h = 2p, cells: the near form holds to p = 1. A hair below, for the run it adds to the lesser side. */
export const NEAR = 1.99
