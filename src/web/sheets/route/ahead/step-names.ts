import { barNames, pathOf, useDesk, useTradeWord } from '#desk'
import { capital } from '../../../form/measure.tsx'
import type { CardRow } from '../card-rows.ts'

export interface NamedStep {
  readonly row: CardRow
  readonly number: number
  readonly name: string
}

/** Finds the row a place of the job lies in; undefined where there is none any more. */
export function useStepAt(rows: readonly CardRow[]): (at: string) => NamedStep | undefined {
  const trade = useTradeWord()
  const job = useDesk((desk) => desk.history?.now)
  return (at) => {
    const [, bar, index] = pathOf(at, barNames(job ?? {}))
    const row = rows.find((one) => one.bar === bar && one.index === index)
    return row && { row, number: row.number, name: capital(trade(String(row.step.do))) }
  }
}
