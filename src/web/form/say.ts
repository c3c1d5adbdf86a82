import { type Say, sayIn } from '#report'
import { useDesk } from '#desk'

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

/** Prints as the card prints, in the units chosen. */
export function useSay(): Say {
  return says[useDesk((desk) => desk.units)]
}
