import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { draw, taper as taperWarp } from '#warp'
import { type Billet, stretch, worked } from '#billet'
import { along, moving } from '#movement'
import { heatsFor } from '../forge-in-heats.ts'
import { judgeSqueezing } from '../judge.ts'
import { operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { upsets } from '../squeezes.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { warm } from '../warm.ts'

const parameters = declare({
  by: {
    form: 'quantity',
    of: 'length',
    min: 5e-4,
    max: 0.5,
    help: 'How much shorter the bar becomes',
  },
  over: {
    form: 'quantity',
    of: 'length',
    min: 2e-3,
    max: 1,
    optional: true,
    help: 'Length of the end that is heated and upset, before; left out, the whole bar',
  },
  heats: {
    form: 'count',
    min: 1,
    max: 40,
    optional: true,
    help: 'Heats taken; left out, as many as the gain in section needs',
  },
})

/** Free length over thickness beyond which a bar buckles before it upsets (common practice: 2½). */
const BUCKLES = 2.5

/** Drives the bar shorter and thicker, whole or at one end. */
export const upset = operation({
  name: 'upset',
  summary: 'Drive the bar shorter and thicker, whole or at one end, for metal where it is wanted.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: { by: '10 mm' }, before: [samplePack(50, 30, 30)] },
    { values: { by: '15 mm', over: '40 mm', heats: 3 }, before: [sampleBar(200, 20, 20)] },
  ],
  forward([before], values, smithy, share = 1) {
    const by = values.by * share
    const loose = unwelded(before, 'upsetting')
    if (loose) return failed(loose)
    const { shop } = smithy
    const worksOn = values.over ?? before.size.length
    const problem = cannot(before.size.length, worksOn, values.by)
    if (problem) return failed(problem)
    const count = values.heats ?? heatsFor(worksOn / (worksOn - values.by), smithy)
    const warmed = warm(
      before,
      {
        purpose: 'forge',
        count,
        temperature: shop.forgingHeat,
        scale: shop.forgingScale * count,
        stop: shop.stopHeat,
      },
      smithy,
    )
    if (warmed.problems) return warmed
    const { bar, losses, heats, warnings } = warmed.ok
    const over = values.over ?? bar.size.length
    if (over <= by) return failed(nothingLeft(over, by))
    const grows = Math.sqrt(over / (over - by))
    const size = {
      length: bar.size.length - by,
      width: bar.size.width * grows,
      height: bar.size.height * grows,
    }
    const whole = values.over === undefined
    const stretched = whole
      ? { x: size.length / bar.size.length, y: grows, z: grows }
      : { x: 1, y: 1, z: 1 }
    const build = stretch(bar.build, stretched)
    const after: Billet = {
      ...bar,
      size,
      shape: whole ? bar.shape : 'cut',
      temper: 'as forged',
      build: whole ? build : worked('upset at its end', build),
      spare: 'x',
    }
    const thin = Math.min(bar.size.width, bar.size.height)
    return ok(
      step(after, {
        losses,
        heats,
        warnings: [
          ...warnings,
          ...youngWelds(before, 'upset', 'upsetting'),
          ...(over > BUCKLES * thin ? [buckles(over, thin)] : []),
        ],
        notes: [
          `The section grows ${grows.toFixed(2)} times each way, to ${show(size.width)} × ${show(size.height)}.`,
        ],
      }),
    )
  },
  force([before], values, step, smithy) {
    const over = values.over ?? before.size.length
    const passes = () => upsets(over, values.by, before.size)
    return judgeSqueezing({ before, step, passes, whole: true }, smithy)
  },
  movement([before], values, after, _smithy, share = 1) {
    const by = values.by * share
    const burnt = (before.size.length - by - after.size.length) / 2
    const { length, width, height } = after.size
    const was = length + by
    const over = values.over ?? was
    const grows = Math.sqrt(over / (over - by))
    if (values.over === undefined)
      return moving([draw({ length: length / was, width: grows, height: grows }), along(burnt)])
    const from = length - (over - by)
    const sides = Array.from({ length: 1601 }, (_, i) => {
      const into = ((i / 1600) * length - from) / (length / 1600)
      return 1 / grows + (1 - 1 / grows) * Math.min(1, Math.max(0, into + 0.5))
    })
    const gathered = taperWarp({
      ...{ width: width / grows, height: height / grows, length },
      widths: sides.map((s) => s * width),
      heights: sides.map((s) => s * height),
    })
    // Where the thick part begins the table has a slope a cell long.
    return moving([gathered, along(burnt)], { beyond: (length / 1600) * 0.5 })
  },
})

function cannot(length: number, over: number, by: number): Problem | undefined {
  if (over > length) {
    return {
      at: 'over',
      what: `the bar is ${show(length)} long; ${show(over)} of it cannot be upset`,
      why: 'the end worked is part of the bar',
      try: ['a shorter end', 'leave it out to upset the whole bar'],
    }
  }
  return by >= over ? nothingLeft(over, by) : undefined
}

function nothingLeft(over: number, by: number): Problem {
  return {
    at: 'by',
    what: `${show(over)} of bar cannot become ${show(by)} shorter`,
    why: 'something must be left of it',
    try: [`${show(over / 2)} or less`, 'heat a longer end'],
  }
}

function buckles(over: number, thin: number): Problem {
  return {
    at: 'over',
    what: `${show(over)} of hot bar ${show(thin)} thick will buckle`,
    why: 'free length over 2½ times the thickness bends before it upsets (common practice)',
    try: [
      `heat ${show(BUCKLES * thin)} or less at a time`,
      'straighten after each blow, or upset in a block',
    ],
  }
}

const show = (m: number) => printQuantity(m, 'length')
