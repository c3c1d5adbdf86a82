import { type Problem, type Result, failed, ok } from '#problem'
import { printQuantity } from '#units'
import type { Billet } from '#billet'
import { burn } from './fire.ts'
import { layersLost } from './forge-in-heats.ts'
import type { Heat, HeatPurpose, Loss, Smithy } from './operation.ts'
import { isFixed, skin } from './shaped.ts'

/** One run of like heats in which the bar keeps its section. */
export interface Warming {
  readonly purpose: HeatPurpose
  readonly count: number
  readonly temperature: number
  /** Steel burnt off each face in all of them together, m. */
  readonly scale: number
  readonly soak?: number
  readonly stop?: number
  readonly medium?: string
}

export interface Warmed {
  readonly bar: Billet
  readonly losses: readonly Loss[]
  readonly heats: readonly Heat[]
  readonly warnings: readonly Problem[]
}

/** Burns the skin of some heats off the bar; what is then done to it at heat is the step's own. */
export function warm(before: Billet, warming: Warming, smithy: Smithy): Result<Warmed> {
  const { scale, count } = warming
  const heat: Heat = {
    purpose: warming.purpose,
    count,
    temperature: warming.temperature,
    stop: warming.stop,
    soak: warming.soak ?? 0,
    medium: warming.medium ?? 'air',
  }
  const burnt = isFixed(before)
    ? skin(before, scale, 'scale', smithy)
    : burn(before, scale, smithy.densities)
  if (!burnt) {
    return failed({
      at: '',
      what: 'nothing of the bar would be left',
      why:
        count === 1
          ? `the heat burns ${printQuantity(scale, 'length')} off every face`
          : `${count} heats burn ${printQuantity(scale, 'length')} off every face`,
      try: ['take fewer heats', 'start from a thicker bar'],
    })
  }
  const warnings = burnt.lost > 0 ? [layersLost(burnt.lost, 'scale')] : []
  return ok({ bar: burnt.after, losses: [burnt.loss], heats: [heat], warnings })
}
