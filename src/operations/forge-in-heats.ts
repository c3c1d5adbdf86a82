import { type Problem, type Result, failed, ok } from '#problem'
import { printQuantity } from '#units'
import type { Billet, Section } from '#billet'
import { burn, shapeTo, sumLosses } from './fire.ts'
import type { Heat, HeatPurpose, Loss, Smithy, Step } from './operation.ts'
import { step } from './operation.ts'
import { meanHeight } from './mean-height.ts'
import { widthAt } from './spread.ts'

export { meanHeight }

/** What a run of heats is to bring the bar to. */
export interface ForgingAim {
  /** Left out, the bar spreads as the dies make it. */
  readonly width?: number
  readonly height: number
  readonly section?: Section
  readonly purpose: HeatPurpose
  /** Heats to take; left out, as many as the reduction needs. */
  readonly heats?: number
  readonly temperature: number
  /** Steel burnt off each face in each heat, m. */
  readonly scale: number
  readonly soak?: number
}

/**
 * Area ratio a bar is usually drawn by in one heat: by hand about 1.25, under a power hammer or a
 * press about 1.6 (common practice, no source; the bench of force and cooling replaces it where known).
 */
export function heatsFor(ratio: number, smithy: Smithy): number {
  const byMachine = smithy.shop.hammer === 'power' || smithy.shop.pressForce !== undefined
  return Math.max(
    1,
    Math.ceil(Math.log(Math.max(ratio, 1)) / Math.log(byMachine ? 1.6 : 1.25) - 1e-9),
  )
}

/** Forges a bar to a section over some heats: each heat burns a skin, then the bar is worked on. */
export function forgeInHeats(before: Billet, aim: ForgingAim, smithy: Smithy): Result<Step> {
  const { densities } = smithy
  const ratio = meanHeight(before) / aim.height
  const n = aim.heats ?? heatsFor(Math.max(ratio, 1 / ratio), smithy)
  const losses: Loss[] = []
  const warnings: Problem[] = []
  let bar = before
  let lost = 0
  for (let i = 1; i <= n; i++) {
    const burnt = burn(bar, aim.scale, densities)
    if (!burnt) return failed(burntAway(aim.scale))
    losses.push(burnt.loss)
    lost += burnt.lost
    const from = burnt.after
    const left = n - i + 1
    const toward = (now: number, end: number) =>
      left === 1 ? end : now * (end / now) ** (1 / left)
    const thick = meanHeight(from)
    const height = toward(thick, aim.height)
    const width =
      aim.width !== undefined
        ? toward(from.size.width, aim.width)
        : widthAt(from, thick, height, smithy.shop)
    bar = shapeTo(from, { width, height, section: left === 1 ? aim.section : undefined })
  }
  if (lost > 0) warnings.push(layersLost(lost, 'scale'))
  const heat: Heat = {
    purpose: aim.purpose,
    count: n,
    temperature: aim.temperature,
    stop: aim.purpose === 'weld' ? undefined : smithy.shop.stopHeat,
    soak: aim.soak ?? 0,
    medium: 'air',
  }
  const after: Billet = { ...bar, temper: 'as forged' }
  return ok(step(after, { losses: sumLosses(losses), heats: [heat], warnings }))
}

export function layersLost(lost: number, cause: string): Problem {
  return {
    at: '',
    what: `${lost} outer ${lost === 1 ? 'layer goes' : 'layers go'} altogether as ${cause}`,
    why: 'the outer layer is thinner than what comes off',
    try: ['lay a thicker outside sheet', 'take less off', 'count on the fewer layers'],
  }
}

function burntAway(scale: number): Problem {
  return {
    at: '',
    what: 'nothing of the bar would be left',
    why: `each heat burns ${printQuantity(scale, 'length')} off every face`,
    try: ['take fewer heats', 'start from a thicker bar'],
  }
}
