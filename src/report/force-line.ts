import { printCount } from '#units'
import type { Bracket, Working } from '#job'
import type { Say } from './say.ts'

/** A number with the least and most it may be, each printed alike. */
export function ranged(
  { value, low, high }: Bracket,
  print: (n: number) => string,
  unit = '',
): string {
  const [is, least, most] = [print(value), print(low), print(high)]
  return least === most ? `${is}${unit}` : `${is}${unit} (${least} to ${most})`
}

/** Blows as a smith counts them: whole, and no finer than two figures past a hundred. */
export function countOf(blows: number): string {
  return String(blows < 100 ? Math.max(1, Math.round(blows)) : Number(blows.toPrecision(2)))
}

/** `7 blows (3 to 32)`. */
export function blowsOf(blows: Bracket): string {
  return ranged(blows, countOf, countOf(blows.value) === '1' ? ' blow' : ' blows')
}

/** What a step asks of the shop's tool, whether it can, and how the bar comes out: one line of the card. */
export function forceLine(w: Working, say: Say): string {
  const heats = printCount(w.heats, 'heat')
  const asks =
    w.way === 'press'
      ? `${ranged(w.force, say.force)}, ${printCount(countOf(w.blows.value), 'squeeze')}`
      : blowsOf(w.blows)
  const { low, high } = w.size
  const free = high.width - low.width > 5e-5
  const range = free
    ? `; comes out ${say.length(low.width)} to ${say.length(high.width)} wide, ${say.length(low.length)} to ${say.length(high.length)} long`
    : ''
  return `force: ${w.tool}, ${asks}, ${heats}; ${Math.round(w.flowStress.value / 1e6)} MPa at ${say.temperature(w.temperature)}; ${w.verdict}${range}`
}
