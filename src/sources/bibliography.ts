import { diffusionAndTransformation } from './diffusion-and-transformation.ts'
import { etchingAndSafety } from './etching-and-safety.ts'
import { formingAndMachines } from './forming-and-machines.ts'
import { hardnessAndTempering } from './hardness-and-tempering.ts'
import { heatingAndScale } from './heating-and-scale.ts'
import { steelsAndStock } from './steels-and-stock.ts'
import { unitsAndHandbooks } from './units-and-handbooks.ts'

/**
 * Every source a figure in this project may name, kept by subject. Texts marked secondary were
 * read in another text that cites them. One line a source: enough for a reader to find it.
 */
export const bibliography = {
  practice: 'Common practice among smiths; no published source.',
  memory: 'From memory; to be checked against a text before it is relied on.',
  MEM: 'From memory; the same as memory, the key older figures carry.',
  certificate: 'The mill certificate of the bar in hand.',
  project: 'Worked out in this project from the figures and equations named beside it.',
  ...diffusionAndTransformation,
  ...hardnessAndTempering,
  ...heatingAndScale,
  ...formingAndMachines,
  ...steelsAndStock,
  ...etchingAndSafety,
  ...unitsAndHandbooks,
} as const satisfies Record<string, string>

/** A source's key, as figures name it. */
export type SourceKey = keyof typeof bibliography

/** Whether a key is in the bibliography; for figures read from a file. */
export function isSourceKey(key: string): key is SourceKey {
  return Object.hasOwn(bibliography, key)
}
