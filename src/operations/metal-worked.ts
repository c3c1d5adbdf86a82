import { type Billet, flatAxis, sharesOf } from '#billet'
import type { Metal } from '#forming'
import type { Composition } from '#steel'
import type { Heat, Smithy } from './operation.ts'

/** Reckoned with for a steel whose composition nothing states: plain, 0.8 % carbon. */
const plain: Composition = { C: 0.8, Mn: 0.7 }

/** wt% of each steel in a bar. */
export function steelsOf(bar: Billet, { compositions }: Smithy): readonly Composition[] {
  return Object.keys(sharesOf(bar.build)).map((steel) => compositions?.[steel] ?? plain)
}

/**
 * The metal under the tool: one steel, or its steels by share. Layers that lie flat lie across the
 * blow; any others stand in it and must all shorten alike, as near as twisted or dished ones do.
 */
export function metalOf(bar: Billet, { compositions }: Smithy, temperature: number): Metal {
  const layers = Object.entries(sharesOf(bar.build)).flatMap(([steel, share]) =>
    share > 0 ? [{ composition: compositions?.[steel] ?? plain, share }] : [],
  )
  const [only, ...more] = layers
  if (only && more.length === 0) return { steel: only.composition, temperature }
  return { layers, lie: flatAxis(bar.build) === 'z' ? 'flat' : 'on edge', temperature }
}

/** A bar loses about this between the fire and the last blow where no stop heat is stated, K (common practice). */
const USUAL_FALL = 100

/** Mean heat of the metal while it is worked, K: half way from the fire to the stop heat. */
export function workedAt({ temperature, stop }: Heat): number {
  const end = Math.min(temperature, stop ?? temperature - USUAL_FALL)
  return (temperature + end) / 2
}
