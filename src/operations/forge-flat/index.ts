import { failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { forgeInHeats, meanHeight, type ForgingAim } from '../forge-in-heats.ts'
import { operation, type Smithy } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { judgeDrawn } from '../squeezes.ts'
import { movedInHeats } from '../movement-in-heats.ts'

const parameters = declare({
  height: {
    form: 'quantity',
    of: 'length',
    min: 5e-4,
    max: 0.3,
    free: true,
    help: 'Thickness the bar is forged flat to',
  },
  width: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 1,
    optional: true,
    help: 'Width it is kept to; left out, it spreads as the dies make it',
  },
  heats: {
    form: 'count',
    min: 1,
    max: 60,
    optional: true,
    help: 'Heats taken; left out, as many as the reduction needs',
  },
})

const grooved = (length: number, width: number, height: number, level: number) => {
  const pack = samplePack(length, width, height, 31)
  return { ...pack, shape: 'cut', volume: pack.volume * level } as const
}

/** Forges a grooved, dimpled or stamped bar flat again: the cut layers come up to the face. */
export const forgeFlat = operation({
  name: 'forge flat',
  summary:
    'Forge a grooved, dimpled or stamped bar flat again, at welding heat at first, so that what was cut comes up to the face.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: { height: '12.7 mm' }, before: [grooved(200, 32, 19.05, 0.702)] },
    {
      values: { height: '6 mm', width: '33 mm', heats: 3 },
      before: [grooved(150, 30, 9.5, 0.833)],
    },
  ],
  forward([before], values, smithy, share) {
    const level = meanHeight(before)
    if (values.height > level * 1.0001 && values.width === undefined) {
      return failed({
        at: 'height',
        what: `level, this bar stands ${show(level)} thick; it cannot be forged flat to ${show(values.height)}`,
        why: 'what was cut out is gone: the metal left fills no more than that',
        try: [
          `forge it flat to ${show(level)} or less`,
          'cut less out',
          'start from a thicker bar',
        ],
      })
    }
    const room = (values.width ?? before.size.width) * values.height
    if (room > before.size.width * level * 1.0001) {
      return failed({
        at: 'width',
        what: `the metal does not fill ${show(values.width ?? before.size.width)} × ${show(values.height)}`,
        why: `level, it is ${show(before.size.width)} × ${show(level)}`,
        try: ['forge it thinner', 'keep it narrower'],
      })
    }
    const done = forgeInHeats(before, { ...aimOf(values, smithy), share }, smithy)
    if (done.problems) return done
    const out = values.height / before.size.height
    return ok({
      ...done.ok,
      notes: [
        `The bar goes to ${Math.round(out * 100)} % of its full thickness; the pitch of what was cut grows ${(done.ok.after.size.length / before.size.length).toFixed(2)} times.`,
        'Work from one end at welding heat so that air leaves each groove; look for dark lines as it cools.',
      ],
    })
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
  values: { readonly height: number; readonly width?: number; readonly heats?: number },
  { shop }: Smithy,
): ForgingAim {
  return {
    ...values,
    section: 'rectangle',
    purpose: 'forge',
    temperature: shop.weldingHeat,
    scale: shop.forgingScale,
  }
}
