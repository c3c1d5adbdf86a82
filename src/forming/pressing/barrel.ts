import type { Problem } from '#problem'
import { type Estimate, type Span, clamp, outsideRange } from '../estimate.ts'
import table from './check/bulge.json' with { type: 'json' }

/** Range of the table: L/h of the block and friction factor m. */
export const barrelRange = {
  ratio: [table.ratios[0]!, table.ratios.at(-1)!] as Span,
  friction: [0, 1] as Span,
}

/** Place of a value between two neighbours of a rising list: index of the lower, share of the upper. */
function between(list: readonly number[], value: number): readonly [number, number] {
  let i = 0
  while (i < list.length - 2 && value > list[i + 1]!) i++
  return [i, clamp((value - list[i]!) / (list[i + 1]! - list[i]!), [0, 1])]
}

function bulgePerStrain(ratio: number, m: number): number {
  const frictions = [0, ...table.frictions]
  const [i, s] = between(table.ratios.map(Math.log), Math.log(clamp(ratio, barrelRange.ratio)))
  const [j, t] = between(frictions, clamp(m, [0, 1]))
  const row = (n: number) => [0, ...table.bulgePerStrain[n]!]
  const along = (n: number) => (1 - t) * row(n)[j]! + t * row(n)[j + 1]!
  return (1 - s) * along(i) + s * along(i + 1)
}

/**
 * The barrel of a block pressed flat from height h0 to h1 (m), as the number b of the map
 * f(ζ) = β(1 + b(1 − 3ζ²)/2), ζ from −1 to 1 over the height: half-width over what it was.
 * Read between values a finite-element program computed for rigid-viscous blocks
 * (check/upset.edp); checked there against runs between the table's places.
 */
export function barrel(length: number, from: number, to: number, m: number): Estimate {
  const ratio = length / from
  const strain = Math.log(Math.max(1, from / to))
  const value = clamp(bulgePerStrain(ratio, m) * strain, [0, 1])
  const cautions: Problem[] = [
    ...outsideRange(
      'ratio',
      'the bulge table',
      ratio,
      barrelRange.ratio,
      (x) => `L/h ${x.toFixed(2)}`,
    ),
    ...outsideRange(
      'reduction',
      'the bulge table',
      strain,
      [0, 0.36],
      (x) => `strain ${x.toFixed(2)}`,
    ),
  ]
  const band = cautions.length > 0 ? 0.5 : 0.15
  return {
    value,
    low: value * (1 - band),
    high: value * (1 + band),
    basis: [
      {
        law: 'bulge of a rigid-viscous block, finite elements',
        sources: ['project'],
        standing: 'computed',
      },
    ],
    cautions,
  }
}
