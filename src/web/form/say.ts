import { useMemo } from 'react'
import { type Say, sayIn } from '#report'
import { useDesk } from '#desk'
import { said } from '#words'
import { type Express, expressIn, setIn } from './express.ts'

/** Each word of it set for the sheet. */
function each(say: Say, set: (text: string) => string): Say {
  const spoken = Object.entries(say).map(([name, said]) => [
    name,
    typeof said === 'function'
      ? (value: never) => set((said as (v: never) => string)(value))
      : said,
  ])
  return Object.fromEntries(spoken) as Say
}

/** Prints as the card prints, in the units and the language chosen. */
export function useSay(): Say {
  const units = useDesk((desk) => desk.units)
  const language = useDesk((desk) => desk.language)
  return useMemo(() => {
    const say = sayIn(units)
    const told = { ...say, lines: (perMetre: number) => said(say.lines(perMetre), language).text }
    return each(told, (text) => setIn(language, text))
  }, [units, language])
}

/** Says sizes of fields and rows in the units and the language chosen. */
export function useExpress(): Express {
  const units = useDesk((desk) => desk.units)
  const language = useDesk((desk) => desk.language)
  return useMemo(() => expressIn(units, language), [units, language])
}
