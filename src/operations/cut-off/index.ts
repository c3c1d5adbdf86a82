import { type Problem, failed, ok } from '#problem'
import { SAME_LENGTH } from '#geometry'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { stays } from '#movement'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { longEnough, saw } from '../saw.ts'
import { kerf } from '../usual.ts'

const parameters = declare({
  keep: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 6,
    free: 'length',
    help: 'Length kept in hand, from the start of the bar',
  },
  leave: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 6,
    optional: true,
    help: 'Length the remnant must have at least; left out, it is whatever is over',
  },
  kerf,
})

/** Cuts a length off the bar and goes on with it; the rest goes back on the rack as a remnant. */
export const cutOff = operation({
  name: 'cut off',
  summary: 'Cut the length wanted off the bar, go on with it, and put the rest by as a remnant.',
  takes: 'one',
  parameters,
  loses: ['kerf'],
  cautions: ['saw'],
  examples: [
    { values: { keep: '80 mm' }, before: [samplePack(240, 30, 12)] },
    { values: { keep: '5 in', leave: '2 in', kerf: '3 mm' }, before: [samplePack(240, 30, 12)] },
    { values: { keep: '239.5 mm' }, before: [samplePack(240, 30, 12)] },
  ],
  forward([before], values, { shop, densities }) {
    const { keep } = values
    const { length } = before.size
    const short = failed(tooShort(length, keep))
    if (keep > length + SAME_LENGTH) return short
    const cut = values.kerf ?? shop.kerf
    const sawn = saw(before, [Math.min(keep, length)], cut, densities)
    if (!sawn) return short
    const over = sawn.rest?.size.length ?? 0
    if (values.leave !== undefined && over < values.leave - SAME_LENGTH)
      return failed(tooLittleLeft(length, keep, cut, values.leave))
    return ok(
      step(sawn.pieces[0], {
        losses: [sawn.kerf],
        setAside: sawn.rest ? [sawn.rest] : [],
        notes: sawn.rest
          ? [`Mark the remnant, ${show(over)} long: pattern, layers, which face is which.`]
          : [],
      }),
    )
  },
  backward(demand, values, before, { shop }) {
    if (demand.length > values.keep + SAME_LENGTH)
      return failed(keepsTooLittle(demand.length, values.keep))
    const leave = values.leave ? (values.kerf ?? shop.kerf) + values.leave : 0
    const sizes = longEnough(before, [values.keep + leave])
    if (sizes.problems) return sizes
    const { spare } = before[0]
    const [size] = sizes.ok
    // Cutting across leaves the section as it is: what is wanted of it is wanted of the bar before.
    if (spare === 'x') return ok([size])
    return ok([
      spare === 'y' ? { ...size, width: demand.width } : { ...size, height: demand.height },
    ])
  },
  movement() {
    return stays
  },
})

function tooShort(length: number, keep: number): Problem {
  return {
    at: 'keep',
    what: `${show(keep)} cannot be cut off a bar ${show(length)} long`,
    why: 'the bar is shorter than the length to keep',
    try: [`keep ${show(length)} or less`, 'draw the bar longer first', 'start from a longer stack'],
  }
}

function tooLittleLeft(length: number, keep: number, cut: number, leave: number): Problem {
  return {
    at: 'leave',
    what: `no remnant of ${show(leave)} is over from a bar ${show(length)} long`,
    why: `${show(keep)} is kept and the cut takes ${show(cut)}`,
    try: ['ask for a shorter remnant', 'keep less', 'start from a longer stack'],
  }
}

function keepsTooLittle(wanted: number, keep: number): Problem {
  return {
    at: 'keep',
    what: `${show(keep)} is kept; the rest of the work needs ${show(wanted)}`,
    why: 'a longer bar only makes a longer remnant',
    try: [`keep ${show(wanted)}`, 'write "?" and have the length worked out'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
