import { type Result, ok } from '#problem'
import type { Billet, Temper } from '#billet'
import type { HeatPurpose, Smithy, Step } from './operation.ts'
import { step } from './operation.ts'
import { stockBurnt } from './shaped.ts'
import { warm } from './warm.ts'

/** Heat at which iron and carbon first turn to austenite, K: the eutectoid, 726.6 °C (OC-TDB, computed). */
export const EUTECTOID = 726.6 + 273.15

/** One heat treatment: heats of one purpose, and what it leaves the steel as. */
export interface Treatment {
  readonly purpose: HeatPurpose
  /** Each heat in order, K. */
  readonly temperatures: readonly number[]
  readonly soak: number
  readonly medium: string
  /** Steel burnt off each face in each heat, m. */
  readonly scale: number
  readonly leaves: Temper
}

/** Heats and cools the bar or the piece; only its skin and its state change. */
export function treat(before: Billet, treatment: Treatment, smithy: Smithy): Result<Step> {
  const { temperatures, purpose, soak, medium, scale } = treatment
  const count = temperatures.length
  const warmed = warm(
    before,
    { purpose, count, temperature: temperatures[0], scale: scale * count, soak, medium },
    smithy,
  )
  if (warmed.problems) return warmed
  const { bar, losses, warnings } = warmed.ok
  const after: Billet = { ...bar, temper: treatment.leaves }
  const heats = temperatures.map((temperature) => ({
    purpose,
    count: 1,
    temperature,
    soak,
    medium,
  }))
  const alike = new Set(temperatures).size === 1
  return ok(
    step(after, {
      losses: losses.filter((loss) => Object.values(loss.masses).some((mass) => mass > 0)),
      heats: alike ? [{ ...heats[0], count }] : heats,
      warnings: [...warnings, ...stockBurnt(after, smithy.piece)],
    }),
  )
}
