import { type Say, sayIn } from '#report'
import { useDesk } from '#desk'

/** The face has the thin space, not the narrow one. */
function thin(say: Say): Say {
  const set = (text: string) => text.replaceAll('\u202f', '\u2009')
  return {
    length: (m) => set(say.length(m)),
    size: (size) => set(say.size(size)),
    mass: (kg) => set(say.mass(kg)),
    temperature: (K) => set(say.temperature(K)),
    lines: (perMetre) => set(say.lines(perMetre)),
    units: say.units,
  }
}

const says: Readonly<Record<'metric' | 'inch', Say>> = {
  metric: thin(sayIn('metric')),
  inch: thin(sayIn('inch')),
}

/** Prints as the card prints, in the units chosen. */
export function useSay(): Say {
  return says[useDesk((desk) => desk.units)]
}
