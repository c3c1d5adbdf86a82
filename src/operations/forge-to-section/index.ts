import { failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { filled, worked } from '#billet'
import { forgeInHeats, meanHeight } from '../forge-in-heats.ts'
import { judgeSqueezing } from '../judge.ts'
import { operation } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { corners } from '../squeezes.ts'
import { unwelded, youngWelds } from '../welds.ts'

const parameters = declare({
  section: {
    form: 'choice',
    options: {
      octagon: 'eight flats: what a bar is forged to before it is twisted',
      round: 'round, over the octagon',
    },
    default: 'octagon',
    help: 'Section the bar is forged to',
  },
  across: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 0.3,
    optional: true,
    free: 'height',
    help: 'Across the flats, or diameter; left out, of the same area as the bar has',
  },
  heats: {
    form: 'count',
    min: 1,
    max: 60,
    optional: true,
    help: 'Heats taken; left out, as many as the reduction needs',
  },
})

/** Forges the corners down to an octagon, or on to a round. */
export const forgeToSection = operation({
  name: 'forge to section',
  summary:
    'Forge the corners down to an octagon, or on to a round: a bar to be twisted tightly has no corners.',
  takes: 'one',
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: {}, before: [samplePack(300, 12, 12, 9)] },
    { values: { section: 'round', across: '10 mm' }, before: [samplePack(300, 12, 12, 9)] },
    { values: { section: 'round' }, before: [sampleBar(200, 14, 14, '1084', 'octagon')] },
  ],
  forward([before], values, smithy) {
    const loose = unwelded(before, 'forging the corners down')
    if (loose) return failed(loose)
    const had = before.shape === 'cut' ? 1 : filled[before.shape]
    const area = before.size.width * meanHeight(before) * had
    const most = Math.sqrt(area / filled[values.section])
    const across = values.across ?? most
    if (across > most * 1.0001) {
      return failed({
        at: 'across',
        what: `this section makes ${values.section === 'round' ? 'a round' : 'an octagon'} of ${show(most)} at most, not ${show(across)}`,
        why: 'forging the corners down moves metal along the bar, never back into it',
        try: [`ask for ${show(most)} or less`, 'start from a larger bar'],
      })
    }
    const { shop } = smithy
    const name = values.section === 'round' ? 'forged round' : 'forged to an octagon'
    const done = forgeInHeats(
      { ...before, build: worked(name, before.build) },
      {
        height: across,
        width: across,
        section: values.section,
        purpose: 'forge',
        heats: values.heats,
        temperature: shop.forgingHeat,
        scale: shop.forgingScale,
      },
      smithy,
    )
    if (done.problems) return done
    const flat = across * Math.tan(Math.PI / 8)
    return ok({
      ...done.ok,
      warnings: [...done.ok.warnings, ...youngWelds(before, 'on edge', 'forging the corners down')],
      notes:
        values.section === 'octagon'
          ? [`Each flat is ${show(flat)} wide; even flats keep the twist even.`]
          : [],
    })
  },
  force([before], values, step, smithy) {
    const to = step.after.size.height
    // What an eight-sided bar measures over its corners, across its flats being 1.
    const over = 1 / Math.cos(Math.PI / 8)
    const square = before.shape === 'rectangle' || before.shape === 'cut'
    const octagon = square ? Math.sqrt((to * to * filled[values.section]) / filled.octagon) : 0
    return judgeSqueezing(
      {
        before,
        step,
        passes: () =>
          corners(before, step, [
            ...(square
              ? [{ from: Math.hypot(before.size.width, meanHeight(before)), to: octagon, count: 2 }]
              : []),
            ...(values.section === 'round'
              ? [{ from: over * (square ? octagon : before.size.height), to, count: 4 }]
              : square
                ? []
                : [{ from: before.size.height, to, count: 4 }]),
          ]),
      },
      smithy,
    )
  },
  movement() {
    return { notYet: 'drawn with the pattern' }
  },
})

const show = (m: number) => printQuantity(m, 'length')
