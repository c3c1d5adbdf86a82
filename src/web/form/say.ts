import { type Say, sayIn } from '#report'
import { useDesk } from '#desk'

const says: Readonly<Record<'metric' | 'inch', Say>> = {
  metric: sayIn('metric'),
  inch: sayIn('inch'),
}

/** Prints as the card prints, in the units chosen. */
export function useSay(): Say {
  return says[useDesk((desk) => desk.units)]
}
