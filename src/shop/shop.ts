import type { Result } from '#problem'
import { type Reading, type ValuesOf, readValues } from '#parameters'
import { shopParameters } from './declaration.ts'

/** What the smith has and what is lost there, SI. */
export type Shop = ValuesOf<typeof shopParameters>

/** Reads a shop as a job file states it; what is left out is common practice. */
export function readShop(raw: unknown): Result<Reading<Shop>> {
  return readValues(shopParameters, raw ?? {})
}

/** A shop of which nothing is known: common practice throughout. */
export function usualShop(): Shop {
  const read = readShop({})
  if (!read.ok) throw new Error('the usual shop does not read')
  return read.ok.values
}
