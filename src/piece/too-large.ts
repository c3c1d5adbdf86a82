import type { Problem } from '#problem'
import { printQuantity } from '#units'

/** A length as people read it in a sentence. */
export function say(m: number): string {
  return printQuantity(m, 'length')
}

/** A size that may not pass another; the cure names the most it can be. */
export function tooLarge(
  at: string,
  value: number,
  most: number,
  why: string,
  otherCure?: string,
): Problem[] {
  if (value <= most + 1e-12) return []
  const cures = most > 0 ? [`${at} at most ${say(most)}`] : []
  return [
    {
      at,
      what: `${say(value)} is more than there is room for`,
      why,
      try: otherCure ? [...cures, otherCure] : cures.length > 0 ? cures : [`leave ${at} out`],
    },
  ]
}
