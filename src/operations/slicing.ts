import { type Problem, type Result, failed, ok } from '#problem'
import { SAME_LENGTH, type Size } from '#geometry'
import { printCount, printQuantity } from '#units'
import type { Billet } from '#billet'
import { lengthenToMeet, withSpare } from './lengthen.ts'
import type { Step } from './operation.ts'
import { longEnough, sawnLength } from './saw.ts'

/** What is asked for: how many slices, how thick each; either follows from the other and the bar. */
export interface Slicing {
  readonly count?: number
  readonly thickness?: number
  readonly crop: number
  readonly kerf: number
}

export const slicingParameters = {
  count: {
    form: 'count',
    min: 2,
    max: 400,
    optional: true,
    help: 'How many there are; left out, as many of the stated thickness as the bar gives',
  },
  thickness: {
    form: 'quantity',
    of: 'length',
    min: 5e-4,
    max: 0.2,
    optional: true,
    help: 'Length of bar in each: the thickness it has when it lies on its side; left out, the bar is shared out evenly',
  },
} as const

/** Slices a bar of this length gives. */
export function planSlices(
  length: number,
  { count, thickness, crop, kerf }: Slicing,
): Result<{ readonly count: number; readonly thickness: number }> {
  const sound = length - 2 * crop
  if (thickness === undefined) {
    if (count === undefined) return failed(nothingStated())
    const each = (sound - (count - 1) * kerf) / count
    return each > 0 ? ok({ count, thickness: each }) : failed(tooShort(length, count, kerf))
  }
  const most = Math.floor((sound + kerf + SAME_LENGTH) / (thickness + kerf))
  if (most < (count ?? 2)) return failed(tooShort(length, count ?? 2, thickness + kerf))
  return ok({ count: count ?? most, thickness })
}

/**
 * The bar needed before it is cut up. Slices of a stated thickness come whole: the fewest that meet
 * the demand are counted out; otherwise the bar in hand is lengthened until it does.
 */
export function workBackSlices(
  demand: Size,
  before: Billet,
  asked: Slicing,
  forward: (bar: Billet) => Result<Step>,
): Result<readonly Size[]> {
  const { thickness, count, crop, kerf } = asked
  if (thickness === undefined || before.spare !== 'x')
    return lengthenToMeet(demand, before, forward)
  const lengthFor = (n: number) => 2 * crop + sawnLength(n, thickness, kerf)
  const meets = (n: number) => {
    const done = forward(withSpare(before, lengthFor(n)))
    return done.ok && done.ok.after.size.length >= demand.length - SAME_LENGTH ? done.ok : undefined
  }
  let most = count ?? 2
  while (count === undefined && !meets(most) && most < 4096) most *= 2
  let least = count ?? Math.max(2, most / 2)
  while (least < most) {
    const middle = Math.floor((least + most) / 2)
    if (meets(middle)) most = middle
    else least = middle + 1
  }
  const step = meets(most)
  const short = step
    ? (['width', 'height'] as const).find((s) => step.after.size[s] < demand[s] - SAME_LENGTH)
    : 'length'
  if (short) return failed(doesNotMeet(short, demand[short]))
  return longEnough([before], [lengthFor(most)])
}

function nothingStated(): Problem {
  return {
    at: 'count',
    what: 'neither how many nor how thick is stated',
    why: 'one of them follows from the other and the length of the bar',
    try: ['state "count"', 'state "thickness"'],
  }
}

function tooShort(length: number, count: number, each: number): Problem {
  return {
    at: 'count',
    what: `a bar ${show(length)} long does not give ${printCount(count, 'slice')}`,
    why: `each takes ${show(each)} with its cut, and the ends are cropped`,
    try: ['fewer or thinner slices', 'draw the bar longer first', 'start from a longer stack'],
  }
}

function doesNotMeet(side: string, wanted: number): Problem {
  return {
    at: 'thickness',
    what: `these slices do not make a bar ${show(wanted)} in ${side}`,
    why: 'their number and thickness are stated, and their other sides are those of the bar',
    try: ['leave "count" or "thickness" out', 'cut a larger bar'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
