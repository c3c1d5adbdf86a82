import type { Result } from '#problem'
import { type Parameters, type Reading, type ValuesOf, readValues } from '#parameters'
import { shopParameters } from './declaration.ts'
import { cuttingParameters, type rackItemParameters } from './rack.ts'
import { rateParameters } from './rates.ts'
import { toleranceParameters } from './tolerances.ts'

/** What the smith has and what is lost there, SI. */
export type Shop = ValuesOf<typeof shopParameters>
/** What hours, fire and steel cost, in the shop's own money. */
export type Rates = ValuesOf<typeof rateParameters>
/** How far things turn out from what was meant, SI. */
export type Tolerances = ValuesOf<typeof toleranceParameters>
/** One kind of bar on the rack, SI. */
export type RackItem = ValuesOf<typeof rackItemParameters>
export type Cutting = ValuesOf<typeof cuttingParameters>

/** Reads a shop as a job file states it; what is left out is common practice. */
export function readShop(raw: unknown): Result<Reading<Shop>> {
  return readValues(shopParameters, raw ?? {})
}

/** A shop of which nothing is known: common practice throughout. */
export function usualShop(): Shop {
  return usual(shopParameters)
}

export function usualRates(): Rates {
  return usual(rateParameters)
}

export function usualTolerances(): Tolerances {
  return usual(toleranceParameters)
}

export function usualCutting(): Cutting {
  return usual(cuttingParameters)
}

function usual<P extends Parameters>(parameters: P): ValuesOf<P> {
  const read = readValues(parameters, {})
  if (!read.ok) throw new Error('the usual shop does not read')
  return read.ok.values
}
