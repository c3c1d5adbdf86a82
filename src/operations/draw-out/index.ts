import { failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { forgeInHeats, type ForgingAim } from '../forge-in-heats.ts'
import { operation, type Smithy } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { judgeDrawn } from '../squeezes.ts'
import { youngOnEdge } from '../welds.ts'
import { movedInHeats } from '../movement-in-heats.ts'

const parameters = declare({
  height: {
    form: 'quantity',
    of: 'length',
    min: 5e-4,
    max: 0.5,
    free: true,
    help: 'Thickness the bar is drawn to',
  },
  width: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 1,
    optional: true,
    help: 'Width the bar is kept to by turning it on edge between blows; left out, it spreads as the dies make it',
  },
  heats: {
    form: 'count',
    min: 1,
    max: 60,
    optional: true,
    help: 'Heats taken; left out, as many as the reduction needs',
  },
  temperature: {
    form: 'quantity',
    of: 'temperature',
    min: 973.15,
    max: 1573.15,
    optional: true,
    help: "Forging heat; left out, the shop's",
  },
})

/** Draws the bar longer and thinner. */
export const drawOut = operation({
  name: 'draw out',
  summary: 'Draw the bar longer and thinner, evenly, and stop at the stop heat.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: { height: '12 mm', heats: 4 }, before: [samplePack()] },
    { values: { height: '16 mm', width: '16 mm' }, before: [samplePack()] },
    {
      values: { height: '29 mm', heats: 1, temperature: '2000 °F' },
      before: [samplePack(200, 40, 30, 169)],
    },
  ],
  forward([before], values, smithy, share) {
    const to = { width: values.width ?? before.size.width, height: values.height }
    if (
      values.width !== undefined &&
      to.width * to.height > before.size.width * before.size.height * 1.0001
    ) {
      return failed({
        at: 'height',
        what: `a bar of ${show(before.size.width)} × ${show(before.size.height)} cannot be drawn to ${show(to.width)} × ${show(to.height)}`,
        why: 'drawing out makes the section smaller, never larger',
        try: ['draw to a smaller section', 'upset the bar first', 'start from a larger stack'],
      })
    }
    if (values.height > before.size.height * 1.0001 && values.width === undefined) {
      return failed({
        at: 'height',
        what: `the bar is ${show(before.size.height)} thick already; it cannot be drawn to ${show(values.height)}`,
        why: 'drawing out makes the bar thinner',
        try: [`draw to less than ${show(before.size.height)}`, 'turn the bar on edge first'],
      })
    }
    const done = forgeInHeats(before, { ...aimOf(values, smithy), share }, smithy)
    if (done.problems) return done
    return ok({ ...done.ok, warnings: [...done.ok.warnings, ...youngOnEdge(before)] })
  },
  force([before], { width }, step, smithy) {
    return judgeDrawn(before, step, smithy, { free: width === undefined })
  },
  movement([before], values, _after, smithy, share) {
    return movedInHeats(before, { ...aimOf(values, smithy), share }, smithy)
  },
})

const show = (m: number) => printQuantity(m, 'length')

function aimOf(
  values: {
    readonly height: number
    readonly width?: number
    readonly heats?: number
    readonly temperature?: number
  },
  { shop }: Smithy,
): ForgingAim {
  return {
    ...values,
    purpose: 'forge',
    temperature: values.temperature ?? shop.forgingHeat,
    scale: shop.forgingScale,
  }
}
