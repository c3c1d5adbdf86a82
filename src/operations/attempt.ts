import type { Result } from '#problem'
import { readValues } from '#parameters'
import type { PieceSolid } from '#piece'
import { type Shop, usualShop } from '#shop'
import { type Billet, massOf } from '#billet'
import type { Operation, Step } from './operation.ts'

/** All steels as heavy as the worked examples take steel to be: 7.85 g/cm³. */
export const densities: Readonly<Record<string, number>> = {
  '1084': 7850,
  '1095': 7850,
  '15N20': 7850,
}

export interface Bench {
  readonly shop?: Partial<Shop>
  readonly piece?: PieceSolid
}

/** Does one step with values as a job file writes them, in the usual shop but for what is stated. */
export function attempt(
  operation: Operation,
  raw: Readonly<Record<string, unknown>>,
  before: Billet,
  bench: Bench = {},
): Result<Step> {
  const read = readValues(operation.parameters, raw)
  if (read.problems) return read
  const shop = { ...usualShop(), ...bench.shop }
  return operation.forward([before], read.ok.values as never, {
    shop,
    densities,
    piece: bench.piece,
  })
}

/** The same where it must work. */
export function stepOf(...given: Parameters<typeof attempt>): Step {
  const done = attempt(...given)
  if (!done.ok) throw new Error(done.problems.map((p) => `${p.at}: ${p.what}`).join('; '))
  return done.ok
}

/** Whole loss to one cause, kg. */
export function lostTo(step: Step, cause: string): number {
  return step.losses
    .filter((loss) => loss.cause === cause)
    .flatMap((loss) => Object.values(loss.masses))
    .reduce((sum, mass) => sum + mass, 0)
}

export function mass(bar: Billet): number {
  return massOf(bar, densities)
}

/** No metal burns: for checks of geometry alone. */
export const coldFire = { forgingScale: 0, weldingScale: 0, treatingScale: 0 } as const
