import type { Parameters } from '#parameters'
import { brightnessOf, grades } from '#steel'
import {
  cuttingParameters,
  rackItemParameters,
  rateParameters,
  shopParameters,
  toleranceParameters,
} from '#shop'
import { type Operation, operations } from '#operations'
import { presets } from '#planner'
import { measuredParameters, wishParameters } from './read-job.ts'

/** An operation as it is declared: what a form, a menu or a flag is made from. */
export type DeclaredOperation = Pick<
  Operation,
  'name' | 'summary' | 'takes' | 'parameters' | 'loses' | 'cautions'
> & {
  /** Values it is known to work with, as a job file holds them. */
  readonly example: Readonly<Record<string, unknown>>
}

/** A grade as it is chosen and drawn. */
export interface DeclaredSteel {
  readonly name: string
  readonly aliases: readonly string[]
  /** After the acid, 0 the darkest class of steel to 1 the brightest. */
  readonly bright: number
  /** Carbon, wt%. */
  readonly carbon: number
  readonly family: string
}

/** Everything a job can hold, as plain data that can be sent anywhere. */
export interface Declared {
  readonly operations: readonly DeclaredOperation[]
  readonly steels: readonly DeclaredSteel[]
  /** Patterns kept as steps, by their trade names, and what each shows. */
  readonly patterns: readonly { readonly name: string; readonly shows: string }[]
  readonly wishes: Parameters
  readonly shop: Parameters
  readonly measured: Parameters
  readonly rates: Parameters
  readonly tolerances: Parameters
  readonly rackItem: Parameters
  readonly cutting: Parameters
}

export function declared(): Declared {
  return {
    operations: operations.map(
      ({ name, summary, takes, parameters, loses, cautions, examples }) => ({
        name,
        summary,
        takes,
        parameters,
        loses,
        cautions,
        example: examples[0]?.values ?? {},
      }),
    ),
    steels: grades.map((grade) => ({
      name: grade.name,
      aliases: grade.aliases,
      bright: brightnessOf(grade),
      carbon: grade.composition.C?.value ?? 0,
      family: grade.family,
    })),
    patterns: presets.map(({ name, shows }) => ({ name, shows })),
    wishes: wishParameters,
    shop: shopParameters,
    measured: measuredParameters,
    rates: rateParameters,
    tolerances: toleranceParameters,
    rackItem: rackItemParameters,
    cutting: cuttingParameters,
  }
}
