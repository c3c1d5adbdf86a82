import type { QuantityKind } from '#units'

interface Asked {
  /** One sentence: what the number is and what it does to the steel. */
  readonly help: string
  /** May be left out, with nothing in its place. */
  readonly optional?: boolean
}

/** A number with a unit, typed as people write it: `"12 mm"`, `"1/2 in"`. Limits are SI. */
export interface QuantityParameter extends Asked {
  readonly form: 'quantity'
  readonly of: QuantityKind
  readonly min: number
  readonly max: number
  readonly default?: string
  /**
   * May be written `"?"`: the planner works it out so that the bar after the step has the size
   * wanted. The side of that bar it sets; `true` where the parameter is named after the side.
   */
  readonly free?: true | 'length' | 'width' | 'height'
}

/** A whole number. */
export interface CountParameter extends Asked {
  readonly form: 'count'
  readonly min: number
  readonly max: number
  readonly default?: number
}

/** One of a few words; each word has its own line of help. */
export interface ChoiceParameter extends Asked {
  readonly form: 'choice'
  readonly options: Readonly<Record<string, string>>
  readonly default?: string
}

export interface FlagParameter extends Asked {
  readonly form: 'flag'
  readonly default: boolean
}

/** Free words, a steel's name or the name of another bar of the job. */
export interface WordParameter extends Asked {
  readonly form: 'text' | 'steel' | 'bar'
  readonly default?: string
  readonly longest?: number
}

/** Several of the same: each item is a group of parameters, or one bare parameter. */
export interface ListParameter extends Asked {
  readonly form: 'list'
  readonly item: Parameters | Parameter
  readonly fewest: number
  readonly most: number
  readonly default?: readonly unknown[]
}

export type Parameter =
  | QuantityParameter
  | CountParameter
  | ChoiceParameter
  | FlagParameter
  | WordParameter
  | ListParameter

/** A group of parameters by the name they have in the job file. */
export interface Parameters {
  readonly [name: string]: Parameter
}

type Plain<P> = P extends QuantityParameter | CountParameter
  ? number
  : P extends { readonly form: 'choice'; readonly options: infer O }
    ? keyof O & string
    : P extends FlagParameter
      ? boolean
      : P extends WordParameter
        ? string
        : P extends { readonly form: 'list'; readonly item: infer I }
          ? readonly (I extends Parameter ? Plain<I> : I extends Parameters ? ValuesOf<I> : never)[]
          : never

/** The values a group of parameters is read into: quantities as SI numbers. */
export type ValuesOf<P extends Parameters> = {
  readonly [K in keyof P]: P[K] extends { readonly optional: true }
    ? Plain<P[K]> | undefined
    : Plain<P[K]>
}

/** Declares a group of parameters, keeping each one's exact type. */
export function declare<const P extends Parameters>(parameters: P): P {
  return parameters
}

export function isParameter(item: Parameters | Parameter): item is Parameter {
  return typeof (item as { form?: unknown }).form === 'string'
}
