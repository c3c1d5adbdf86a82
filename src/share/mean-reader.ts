import { type Evaluator, compile } from '#warp'
import { type Reach, meanStage } from './coverage-stage.ts'
import { type Weighing, aloneTo } from './weighing.ts'

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
  const made: Partial<Record<Reach, Evaluator>> = {}
  const alone = aloneTo(weighings[0]!)
  const reader = (reach: Reach) =>
    (made[reach] ??= compile([], {
      ...options,
      tail: meanStage(weighings, options.precision, reach),
      // Small enough to be one kernel; its parts would be written out and read back.
      groupSize: Infinity,
    }))
  const run = (reach: Reach, rows: readonly Numbers[], count: number) => {
    const evaluator = reader(reach)
    rows.forEach((row, i) => evaluator.channel(i).set(row.subarray(0, count)))
    evaluator.run(count)
    return evaluator.program.outputs.map((o) => evaluator.channel(o.channel))
  }
  return {
    read(layer, alongU, alongV, count) {
      const near = countTo(NEAR, alongU, alongV, count)
      const close = alone > NEAR ? countTo(alone, alongU, alongV, count) : near
      const rows = [layer, alongU, alongV]
      if (near === count) return run('near', rows, count)
      if (close === 0) return run('far', rows, count)
      const means = run(near > 0 ? 'near' : 'alone', rows, count)
      const put = (reach: Reach, beyond: number) =>
        run(reach, rows, count).forEach((of, k) => {
          const mean = means[k]!
          for (let i = 0; i < count; i++)
            if (Math.abs(alongU[i]!) + Math.abs(alongV[i]!) > beyond) mean[i] = of[i]!
        })
      if (near > 0 && close > near) put('alone', NEAR)
      if (close < count) put('far', Math.max(NEAR, alone))
      return means
    },
  }
}

/** Pixels whose run is no more than so many cells. */
function countTo(most: number, alongU: Numbers, alongV: Numbers, count: number): number {
  let met = 0
  for (let i = 0; i < count; i++) if (Math.abs(alongU[i]!) + Math.abs(alongV[i]!) <= most) met++
  return met
}

/** g + h = 2p, cells: the near form holds to p = 1. A hair below, for the run it adds to the lesser side. */
export const NEAR = 1.99
