import type { Composition } from '#steel'
import { type Estimate, hold } from '../estimate.ts'
import { idealDiameter } from './ideal-diameter.ts'
import { type QuenchMedium, quenches } from './quench-severity.ts'
import { type SectionShape, criticalSize } from './section.ts'

export interface Hardening {
  readonly idealDiameter: Estimate
  /** Thickness or diameter that still hardens to half martensite at its middle here, m. */
  readonly criticalSize: Estimate
  /** Martensite at the middle of this section, as a share. */
  readonly martensite: Estimate
  readonly verdict: 'through' | 'doubtful' | 'skin only'
}

/** Share of martensite at the middle, by size over the size that gives half. */
function shareAt(ratio: number): number {
  return 1 / (1 + ratio ** 6)
}

/**
 * Severities were found on bars; thin sections cool better than they say: 1095 strip hardens
 * fully in oil (MEAD, read), which the chart denies. Up to 4 mm are added, three and a half times
 * the chart for the thinnest: common practice, made to fit that strip.
 */
function thinSection(size: number): number {
  return size + 0.004 * (1 - Math.exp(-size / 0.0015))
}

/** Does this steel harden through, at this size, in this quench? */
export function hardenThrough(
  composition: Composition,
  size: number,
  shape: SectionShape,
  medium: QuenchMedium,
  grainNumber = 7,
): Hardening {
  const di = idealDiameter(composition, grainNumber)
  const q = quenches[medium] ?? quenches['oil, moved']
  const value = thinSection(criticalSize(shape, di.value, q.severity))
  const low = thinSection(criticalSize(shape, di.range[0], q.range[0]))
  const high = thinSection(criticalSize(shape, di.range[1], q.range[1]))
  const thick = hold(size, [1e-5, 2])
  const verdict = thick <= 0.75 * low ? 'through' : thick > high ? 'skin only' : 'doubtful'
  return {
    idealDiameter: di,
    criticalSize: {
      ...di,
      value,
      range: [low, high],
      standing: 'from memory',
      notes: [
        ...di.notes,
        `Severity of ${medium} from memory; constant properties, raised for thin sections: for ranking, not for promises.`,
      ],
    },
    martensite: {
      ...di,
      value: shareAt(thick / value),
      range: [shareAt(thick / low), shareAt(thick / high)],
      unit: 'share',
      source: 'practice',
      standing: 'common practice',
      notes: ['Half martensite at the critical size; how fast it falls beyond is common practice.'],
    },
    verdict,
  }
}
