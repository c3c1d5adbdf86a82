import { type Result, failed, ok } from '#problem'
import { SAME_LENGTH, type Size } from '#geometry'
import { printQuantity } from '#units'
import { type Billet, type Densities, massesOf } from '#billet'
import { takeOff } from './fire.ts'
import type { Loss } from './operation.ts'

/** A bar sawn across. */
export interface Sawn {
  /** From the start of the bar. */
  readonly pieces: readonly Billet[]
  /** What was over, if a whole cut could be made for it. */
  readonly rest?: Billet
  readonly kerf: Loss
}

/** Length of bar that pieces of these lengths take, cuts between them included, m. */
export function sawnLength(pieces: number, each: number, kerf: number): number {
  return pieces * each + (pieces - 1) * kerf
}

/**
 * Saws pieces of these lengths off the start of a bar, one cut between each two. What is over is cut
 * off and kept; less than one cut is turned to dust. Layers that cross the bar go to the pieces they
 * lie in. Undefined where the bar is too short.
 */
export function saw(
  bar: Billet,
  lengths: readonly number[],
  kerf: number,
  densities: Densities,
): Sawn | undefined {
  const whole = bar.size.length
  const between = (from: number, to: number) =>
    takeOff(bar, { x: { low: from, high: Math.max(0, whole - to) } }, 'kerf', densities)?.after
  const pieces: Billet[] = []
  let at = 0
  for (const [i, length] of lengths.entries()) {
    if (i > 0) at += kerf
    if (at + length > whole + SAME_LENGTH) return undefined
    const piece = between(at, at + length)
    if (!piece) return undefined
    pieces.push(piece)
    at += length
  }
  const over = whole - at - kerf
  const rest = over > SAME_LENGTH ? between(at + kerf, whole) : undefined
  const masses: Record<string, number> = { ...massesOf(bar, densities) }
  for (const piece of rest ? [...pieces, rest] : pieces)
    for (const [steel, mass] of Object.entries(massesOf(piece, densities))) masses[steel] -= mass
  return { pieces, rest, kerf: { cause: 'kerf', masses } }
}

/** Lengths of `count` like pieces. */
export function alike(count: number, length: number): number[] {
  return Array.from({ length: count }, () => length)
}

/**
 * The sizes bars must have so that each is at least so long. A bar whose length does not grow with
 * its stack (it has been turned) must be long enough as it is.
 */
export function longEnough(
  before: readonly Billet[],
  needed: readonly number[],
): Result<readonly Size[]> {
  const sizes: Size[] = []
  for (const [i, bar] of before.entries()) {
    const short = needed[i] - bar.size.length
    if (bar.spare === 'x') sizes.push({ ...bar.size, length: needed[i] })
    else if (short <= SAME_LENGTH) sizes.push(bar.size)
    else {
      return failed({
        at: '',
        what: `a bar is ${printQuantity(short, 'length')} too short for this step`,
        why: 'it was turned: a longer stack makes it wider or higher, not longer',
        try: ['make the stack larger in the direction that is its length now', 'draw it out first'],
      })
    }
  }
  return ok(sizes)
}
