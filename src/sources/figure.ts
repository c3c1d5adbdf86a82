import type { SourceKey } from './bibliography.ts'

/**
 * How far a figure can be trusted.
 * - `read`: read in the source named
 * - `read secondary`: read in a text that cites the source named
 * - `computed`: worked out from figures that were read
 * - `from memory`: not yet found in a text
 * - `common practice`: what people do; no published source
 */
export type Standing = 'read' | 'read secondary' | 'computed' | 'from memory' | 'common practice'

/** A number with the unit it was printed in, where it comes from and how far to trust it. */
export interface Figure {
  readonly value: number
  /** Lowest and highest the source allows, in the same unit. */
  readonly range?: readonly [number, number]
  /** As printed in the source: `wt%`, `°C`, `HRC`, `g/cm³`. */
  readonly unit: string
  readonly source: SourceKey
  readonly standing: Standing
  readonly note?: string
}

/** The line printed beside a figure: `AZO-W (read)`, `common practice, no source`. */
export function cite(figure: Pick<Figure, 'source' | 'standing'>): string {
  if (figure.standing === 'common practice') return 'common practice, no source'
  if (figure.standing === 'from memory') return 'from memory'
  return `${figure.source} (${figure.standing})`
}
