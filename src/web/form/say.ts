import { useMemo } from 'react'
import { type Say, sayIn } from '#report'
import { useDesk } from '#desk'
import { said } from '#words'

/** The face has the thin space, not the narrow one. */
function thin(say: Say): Say {
  const set = (text: string) => text.replaceAll('\u202f', '\u2009')
  const spoken = Object.entries(say).map(([name, said]) => [
    name,
    typeof said === 'function'
      ? (value: never) => set((said as (v: never) => string)(value))
      : said,
  ])
  return Object.fromEntries(spoken) as Say
}

const says: Readonly<Record<'metric' | 'inch', Say>> = {
  metric: thin(sayIn('metric')),
  inch: thin(sayIn('inch')),
}

/** Prints as the card prints, in the units and the language chosen. */
export function useSay(): Say {
  const units = useDesk((desk) => desk.units)
  const language = useDesk((desk) => desk.language)
  return useMemo(() => {
    const say = says[units]
    return { ...say, lines: (perMetre) => said(say.lines(perMetre), language).text }
  }, [units, language])
}
