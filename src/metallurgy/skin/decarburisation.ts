import type { Estimate } from '../estimate.ts'
import { outOfRange } from '../estimate.ts'
import { type TemperatureHistory, integrateRate, tidyHistory } from '../history.ts'
import { agren } from '../mobility/diffusivity.ts'
import { erf, erfc, inverseErfc } from '../error-function.ts'
import { stillBelow } from '../mobility/carbon-law.ts'

export interface Decarburisation {
  /** m under the metal surface as it is left by the scale, to where carbon is 92 % of the core's. */
  readonly depth: Estimate
  /** m of metal the scale took from the same face. */
  readonly recession: number
  /** 2 sqrt(∫D dt), m: the scale length of the carbon profile. */
  readonly reach: number
}

/** ∫D dt over the part of a history above 727 °C, m²; D at half the core's carbon (Ågren). */
export function carbonSpread(history: TemperatureHistory, coreCarbon: number): number {
  const at = Math.min(Math.max(coreCarbon / 2 || 0, 0), 2)
  return integrateRate(tidyHistory(history), (t) =>
    t < stillBelow ? 0 : agren(at, Math.min(t, 1650)),
  )
}

/**
 * Carbon lost from a face open to the fire while scale eats into it. Surface carbon nought, face
 * receding as the square root of time: then C/C0 = 1 - erfc(u)/erfc(w) with u from the first
 * face and w the recession, both over 2 sqrt(∫D dt) (Carslaw & Jaeger, moving boundary). Upper
 * bound: no measured depths were read. Depth as sqrt(time) is confirmed (GCR, read abstract).
 */
export function decarburise(
  history: TemperatureHistory,
  coreCarbon: number,
  recession = 0,
): Decarburisation {
  const points = tidyHistory(history)
  const reach = 2 * Math.sqrt(carbonSpread(points, coreCarbon))
  const eaten = Math.max(recession || 0, 0)
  const depthTo = (share: number) => {
    if (reach === 0) return 0
    const w = eaten / reach
    return Math.max(0, (inverseErfc((1 - share) * erfc(w)) - w) * reach)
  }
  const value = depthTo(0.92)
  const hottest = Math.max(0, ...points.map((p) => p.temperature))
  const notes = ['Upper bound: the face is taken to hold no carbon at all.']
  // GCR: none below 700 °C, ferrite skin near 750, partial from 820, mainly partial above 900.
  if (hottest < 973.15) notes.push('Below 700 °C no decarburisation was seen (GCR).')
  else if (hottest < 1093.15) notes.push('Between 700 and 820 °C expect a thin ferrite skin (GCR).')
  else notes.push('Partial decarburisation, depth as the square root of time (GCR).')
  return {
    depth: {
      value,
      range: [0.3 * value, value],
      unit: 'm',
      source: 'project',
      standing: 'computed',
      notes,
      outOfRange:
        hottest > 1573
          ? [outOfRange('temperature', hottest, [973, 1573], 'K', 'carbon diffusivity')]
          : [],
    },
    recession: eaten,
    reach,
  }
}

/**
 * What is left of a light weld line between two like faces: both skins lost `deficit` wt% to a
 * depth `skin` (m) before they were welded; carbon then flows back in. Centre of a lamella of
 * half-width `skin` in endless metal: deficit × erf(skin / 2 sqrt(∫D dt)) (Crank 2.15).
 */
export function fadeWeldLine(
  skin: number,
  deficit: number,
  after: TemperatureHistory,
  coreCarbon: number,
): { readonly deficit: number; readonly width: number } {
  const reach = 2 * Math.sqrt(carbonSpread(after, coreCarbon))
  const h = Math.max(skin || 0, 0)
  const d = Math.max(deficit || 0, 0)
  return { deficit: reach === 0 ? d : d * erf(h / reach), width: 2 * (h + reach) }
}
