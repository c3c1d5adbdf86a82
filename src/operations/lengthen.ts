import { type Result, failed, ok } from '#problem'
import { SAME_LENGTH, type Size, axisLength } from '#geometry'
import { printQuantity } from '#units'
import { type Billet, stretch } from '#billet'
import { volumeAt } from './fire.ts'
import { isFixed } from './shaped.ts'
import type { Operation, Smithy, Step } from './operation.ts'

/** The same bar, had its first stack been cut so that its spare side is this long, m. */
export function withSpare(billet: Billet, side: number): Billet {
  const name = axisLength[billet.spare]
  const by = { x: 1, y: 1, z: 1, [billet.spare]: side / billet.size[name] }
  const size = { ...billet.size, [name]: side }
  return { ...billet, size, volume: volumeAt(billet, size), build: stretch(billet.build, by) }
}

/**
 * What is held to while a bar is worked back. `all`: every side of the bar after the step must meet
 * the demand. `spare`: only the side that grows with the stack; the other sides are those of a plan
 * still under way, whose bar spreads differently at its present length.
 */
export type Held = 'all' | 'spare'

/**
 * The size each bar must have before a step, so that the bar after it is at least `demand`:
 * the operation's own way back if it has one, else by lengthening the bar in hand.
 */
export function workBack(
  operation: Operation,
  demand: Size,
  values: Readonly<Record<string, unknown>>,
  before: readonly Billet[],
  smithy: Smithy,
  held: Held = 'all',
): Result<readonly Size[]> {
  if (operation.backward) return operation.backward(demand, values as never, before, smithy)
  const forward = (bar: Billet) => operation.forward([bar], values as never, smithy)
  return isFixed(before[0])
    ? asItLies(demand, before[0], forward)
    : lengthenToMeet(demand, before[0], forward, held)
}

/** Short of the piece by less than this, a shaped bar is still ground on: the step that burnt it warns, m. */
const WARNED_OF = 1e-3

/** A bar already ground to the piece gives nothing: it is as it must be, or the stock left is too little. */
function asItLies(
  demand: Size,
  before: Billet,
  forward: (bar: Billet) => Result<Step>,
): Result<readonly Size[]> {
  const done = forward(before)
  if (done.problems) return done
  const { size } = done.ok.after
  for (const name of ['length', 'width', 'height'] as const) {
    const less = demand[name] - size[name]
    if (less <= WARNED_OF) continue
    return failed({
      at: '',
      what: `the piece leaves this step ${printQuantity(less, 'length')} too small in ${name}`,
      why: 'more comes off its faces than was left on them when it was ground to shape',
      try: [
        `leave ${printQuantity(less / 2, 'length')} more on each face when grinding to shape`,
        'burn less: a shorter soak, a coated blade',
      ],
    })
  }
  return ok([before.size])
}

/** The least bar that can be worked is found to this share of it. */
const LEAST_WITHIN = 1e-11
const MOST_TRIES = 120

/**
 * Works one bar back through a step: how long its spare side must be so that the bar after the step
 * meets the demand. The step itself is the only account of its losses, so the way back can never
 * disagree with the way forward; the after-side grows steadily with the before-side, so a secant
 * walk finds it to 1e-12. Where a bar short enough cannot be worked so at all, the least that can is
 * the answer: it leaves more than was asked for.
 */
export function lengthenToMeet(
  demand: Size,
  before: Billet,
  forward: (bar: Billet) => Result<Step>,
  held: Held = 'all',
): Result<readonly Size[]> {
  const side = axisLength[before.spare]
  let s0 = before.size[side]
  const first = measure(forward, before, demand, s0, held)
  if (first.problems) {
    // Too short for the step's own crops: start from a bar that surely is long enough.
    s0 = Math.max(s0 * 4, demand.length, demand.width, demand.height) * 2
  }
  const start = first.problems ? measure(forward, before, demand, s0, held) : first
  if (start.problems) return start
  let e0 = start.ok
  if (Math.abs(e0) <= 1e-13) return ok([{ ...before.size, [side]: s0 }])
  if (e0 > 0 && measure(forward, before, demand, s0 * (1 - LEAST_WITHIN), held).problems)
    return ok([{ ...before.size, [side]: s0 }])
  let s1 = s0 * 1.01
  /** The longest found so far that cannot be worked. */
  let floor = 0
  for (let i = 0; i < MOST_TRIES; i++) {
    if (s1 <= floor) s1 = (s0 + floor) / 2
    const next = measure(forward, before, demand, s1, held)
    if (next.problems) {
      if (s1 < s0) floor = s1
      if (e0 > 0 && s0 - floor <= LEAST_WITHIN * s0) return ok([{ ...before.size, [side]: s0 }])
      s1 = (s0 + s1) / 2
      continue
    }
    const e1 = next.ok
    if (Math.abs(e1) <= 1e-13 || Math.abs(s1 - s0) <= 1e-15)
      return ok([{ ...before.size, [side]: s1 }])
    const slope = (e1 - e0) / (s1 - s0)
    if (!(slope > 0)) break
    const s2 = Math.max(s1 - e1 / slope, s1 / 20)
    ;[s0, e0, s1] = [s1, e1, s2]
  }
  return failed({
    at: '',
    what: 'no length of bar brings this step to the size wanted',
    why: 'the size after the step does not grow with the bar',
    try: ['state the size this step should leave'],
  })
}

/** How much too long the bar after the step is on its spare side; a side that cannot give is a problem. */
function measure(
  forward: (bar: Billet) => Result<Step>,
  before: Billet,
  demand: Size,
  spare: number,
  held: Held,
): Result<number> {
  const done = forward(withSpare(before, spare))
  if (done.problems) return done
  const { size, spare: axis } = done.ok.after
  const gives = axisLength[axis]
  for (const name of ['length', 'width', 'height'] as const) {
    if (held === 'spare' || name === gives || size[name] >= demand[name] - SAME_LENGTH) continue
    const has = printQuantity(size[name], 'length')
    const wants = printQuantity(demand[name], 'length')
    return failed({
      at: '',
      what: `the bar leaves this step ${has} in ${name}; ${wants} is wanted`,
      why: `a longer bar does not help: the ${name} is set by this step or by the stack`,
      try: [
        `leave at least ${wants} here`,
        `make the stack larger in the direction that becomes the ${name}`,
      ],
    })
  }
  return ok(size[gives] - demand[gives])
}
