import type { SourceKey, Standing } from '#sources'

export interface Quench {
  /** Grossmann severity, 1/m: h/(2k), h taken at 705 °C (TOTTEN, HB, read). */
  readonly severity: number
  readonly range: readonly [number, number]
  readonly source: SourceKey
  readonly standing: Standing
  readonly note: string
}

const perInch = 1 / 0.0254
const remembered = (low: number, high: number, note: string): Quench => ({
  severity: ((low + high) / 2) * perInch,
  range: [low * perInch, high * perInch],
  source: 'memory',
  standing: 'from memory',
  note,
})

/** Severities of the Grossmann table: all from memory, none read. */
export const quenches = {
  air: remembered(0.02, 0.02, 'Still air.'),
  'oil, still': remembered(0.25, 0.3, 'Piece held still.'),
  'oil, moved': remembered(0.35, 0.5, 'Piece moved by hand, as most smiths do.'),
  'oil, fast': remembered(0.5, 0.8, 'Fast quenching oil, strongly moved.'),
  'water, still': remembered(0.9, 1, 'Piece held still.'),
  'water, moved': remembered(1.2, 1.6, 'Piece moved by hand.'),
  brine: remembered(2, 5, 'Salt water; cracks thin and grooved work.'),
} as const satisfies Record<string, Quench>

export type QuenchMedium = keyof typeof quenches
