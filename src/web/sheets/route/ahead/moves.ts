import { useDesk, useWords } from '#desk'
import type { Outcome } from '#job'
import { printQuantity } from '#units'
import { numberIn } from '../../../form/number-in.ts'
import { useSay } from '../../../form/say.ts'

/** What can be watched when a number is changed, in the order in which it is shown. */
export const watched = ['steel', 'lines', 'mass', 'hands', 'cost', 'heats'] as const
export type Watched = (typeof watched)[number]

/** Less than this share of itself is rounding. */
const A_MOVE = 5e-5

/** The change of one figure; nothing where it stays, or is not there to be seen. */
export function moveOf(before: Outcome, after: Outcome, what: Watched): number {
  const [was, is] = [before[what], after[what]]
  if (was === undefined || is === undefined) return 0
  return Math.abs(is - was) <= A_MOVE * Math.abs(was) ? 0 : is - was
}

/** Prints what is watched, in the units chosen and the shop's own currency. */
export function useSayWatched(): {
  readonly figure: (what: Watched, value: number) => string
  /** With its sign; of lines the share, for their figure is too coarse to take differences of. */
  readonly move: (what: Watched, by: number, from: Outcome) => string
} {
  const say = useSay()
  const { ahead } = useWords()
  const language = useDesk((desk) => desk.language)
  const currency = useDesk(({ history, declared }) => {
    const { currency } = (history?.now.rates ?? {}) as { readonly currency?: unknown }
    return String(currency ?? declared?.rates.currency.default ?? '')
  })
  const percent = numberIn(language, { style: 'percent', maximumFractionDigits: 1 })
  const figure = (what: Watched, value: number): string => {
    switch (what) {
      case 'steel':
      case 'mass':
        return say.mass(value)
      case 'lines':
        return say.lines(value)
      case 'hands':
        return printQuantity(Math.round(value / 60) * 60, 'time')
      case 'cost':
        return `${numberIn(language, { maximumFractionDigits: 0 })(value)} ${currency}`
      case 'heats':
        return String(Math.round(value))
    }
  }
  return {
    figure,
    move: (what, by, from) => {
      if (by === 0) return ahead.stays
      const off = Math.abs(by)
      const lines = what === 'lines' && from.lines
      return `${by < 0 ? '−' : '+'}${lines ? percent(off / lines) : figure(what, off)}`
    },
  }
}
