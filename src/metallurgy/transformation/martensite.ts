import { type Composition, percent } from '#steel'
import { type Estimate, hold } from '../estimate.ts'
import { martensiteStart } from './critical-points.ts'

/** Koistinen and Marburger's coefficient, 1/K (CPART-KM, read). */
export const koistinen = 0.011

/** Van Bohemen's own coefficient by composition, 1/K (TD-PY, read). */
export function vanBohemenCoefficient(composition: Composition): number {
  const w = (e: 'C' | 'Mn' | 'Si' | 'Cr' | 'Ni' | 'Mo') => hold(percent(composition, e), [0, 10])
  return (
    1e-3 *
    (27.2 -
      0.14 * w('Mn') -
      0.21 * w('Si') -
      0.11 * w('Cr') -
      0.08 * w('Ni') -
      0.05 * w('Mo') -
      19.8 * (1 - Math.exp(-1.56 * w('C'))))
  )
}

/** Share of austenite left after cooling to `to` (K) from above Ms. */
export function keepAustenite(start: number, to: number, coefficient = koistinen): number {
  const under = start - to
  return under > 0 ? Math.exp(-coefficient * under) : 1
}

/** Austenite left, as a share, once the steel is at `to` (K, default 20 °C). */
export function retainedAustenite(composition: Composition, to = 293.15): Estimate {
  const ms = martensiteStart(composition)
  const at = hold(to, [4, 1500])
  const value = keepAustenite(ms.value, at)
  const other = keepAustenite(ms.value, at, vanBohemenCoefficient(composition))
  const ends = [keepAustenite(ms.range[0], at), keepAustenite(ms.range[1], at), other, value]
  return {
    value,
    range: [Math.min(...ends), Math.max(...ends)],
    unit: 'share',
    source: 'CPART-KM',
    standing: 'read',
    notes: [
      'Koistinen and Marburger over Ms of van Bohemen; for the carbon dissolved at hardening heat.',
    ],
    outOfRange: ms.outOfRange,
  }
}

/** Where 99 in a hundred of the austenite is gone, K: Ms less ln(100)/0.011. */
export function martensiteFinish(composition: Composition): Estimate {
  const ms = martensiteStart(composition)
  const drop = Math.log(100) / koistinen
  const slow = Math.log(100) / vanBohemenCoefficient(composition)
  const low = Math.max(1, Math.min(ms.range[0] - drop, ms.range[0] - slow))
  return {
    ...ms,
    value: Math.max(1, ms.value - drop),
    range: [low, Math.max(1, ms.range[1] - Math.min(drop, slow))],
    source: 'CPART-KM',
    notes: ['99 % martensite by Koistinen and Marburger; the last few per cent have no sharp end.'],
  }
}
