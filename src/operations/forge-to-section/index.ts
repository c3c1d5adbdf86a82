import { failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { filled, worked } from '#billet'
import { forgeInHeats, meanHeight } from '../forge-in-heats.ts'
import { operation } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
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
      warnings: [...done.ok.warnings, ...youngWelds(before, 'forging the corners down')],
      notes:
        values.section === 'octagon'
          ? [`Each flat is ${show(flat)} wide; even flats keep the twist even.`]
          : [],
    })
  },
  movement() {
    return { notYet: 'drawn with the pattern' }
  },
})

const show = (m: number) => printQuantity(m, 'length')
