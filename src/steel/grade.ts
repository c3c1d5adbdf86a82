import type { Figure, SourceKey, Standing } from '#sources'
import type { Composition, Element } from './composition.ts'

/** What a grade is bought as. */
export const families = [
  'carbon',
  'tool',
  'spring',
  'nickel',
  'structural',
  'iron',
  'stainless',
] as const

export type Family = (typeof families)[number]

/** How a layer stands out after the acid. */
export const etchClasses = ['dark', 'mid', 'bright'] as const

export type EtchClass = (typeof etchClasses)[number]

/** A word about a steel, with where it comes from. */
export interface Sourced {
  readonly source: SourceKey
  readonly standing: Standing
  readonly note?: string
}

/**
 * A grade as its sources print it: wt%, °C, HRC, g/cm³. A field no source states is left out, and
 * what can be worked out is a model elsewhere, never stored as if measured.
 */
export interface Grade {
  readonly name: string
  /** Other names of the same grade. */
  readonly aliases: readonly string[]
  /** Names of grades that are like it and not the same. */
  readonly near?: readonly string[]
  readonly standard: string
  readonly family: Family
  /** wt%: `range` as the limits are printed, `value` what is reckoned with; iron is the rest. */
  readonly composition: Readonly<Partial<Record<Element, Figure>>>
  /** wt%, of wrought iron. */
  readonly slag?: Figure
  /** °C: where to start, never over, not below. */
  readonly forging?: { readonly start?: Figure; readonly max?: Figure; readonly stop?: Figure }
  /** °C */
  readonly austenitise?: Figure
  readonly quench?: Sourced & { readonly text: string }
  /** HRC */
  readonly asQuenched?: Figure
  /** °C, where a magnet lets go on heating, as measured. */
  readonly nonmagnetic?: Figure
  /** g/cm³ at 20 °C, where it is stated because it cannot be worked out. */
  readonly density?: Figure
  readonly etch: Sourced & { readonly class: EtchClass }
  readonly notes?: readonly string[]
}

/** Mass per cent of each element the grade names: what is reckoned with when no certificate is. */
export function compositionOf(grade: Grade): Composition {
  return Object.fromEntries(
    Object.entries(grade.composition).map(([element, figure]) => [element, figure.value]),
  )
}

/** For drawing only; common practice, no source. */
const brightness: Readonly<Record<EtchClass, number>> = { dark: 0, mid: 0.467, bright: 1 }

/**
 * How bright a steel comes out of the acid, 0 the darkest class to 1 the brightest: what every picture weighs with.
 * Steel is told by lightness, never by hue alone.
 */
export function brightnessOf(grade: Grade): number {
  return brightness[grade.etch.class]
}
