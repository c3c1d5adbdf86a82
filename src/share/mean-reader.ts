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
      const counts = countReaches(alongU, alongV, count, alone)
      const rows = [layer, alongU, alongV]
      const met = REACHES.filter((reach) => counts[reach] > 0)
      const [first = 'near', ...others] = met
      const means = run(first, rows, count)
      for (const reach of others)
        run(reach, rows, count).forEach((of, k) => {
          const mean = means[k]!
          for (let i = 0; i < count; i++)
            if (reachOf(alongU[i]!, alongV[i]!, alone) === reach) mean[i] = of[i]!
        })
      return means
    },
  }
}

const REACHES: readonly Reach[] = ['near', 'alone', 'far']

function reachOf(u: number, v: number, alone: number): Reach {
  const reach = Math.abs(u) + Math.abs(v)
  return reach <= NEAR ? 'near' : reach <= alone ? 'alone' : 'far'
}

function countReaches(alongU: Numbers, alongV: Numbers, count: number, alone: number) {
  const counts = { near: 0, alone: 0, far: 0 }
  for (let i = 0; i < count; i++) counts[reachOf(alongU[i]!, alongV[i]!, alone)]++
  return counts
}

/** g + h = 2p, cells: the near form holds to p = 1. A hair below, for the run it adds to the lesser side. */
export const NEAR = 1.99
