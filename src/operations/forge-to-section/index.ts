import { failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { filled, worked, type Billet } from '#billet'
import { forgeInHeats, meanHeight, type ForgingAim } from '../forge-in-heats.ts'
import { cornerLoad, movedShare } from '#forming'
import { judgeLoaded } from '../judge.ts'
import { operation, type Smithy } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { biteOn } from '../spread.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { movedInHeats } from '../movement-in-heats.ts'

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

/** Mean strain of the metal in a corner that is forged down (worked out here: the corner's height halved over its base). */
const CORNER_STRAIN = 0.3

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
    const most = widest(before, values.section)
    const across = values.across ?? most
    if (across > most * 1.0001) {
      return failed({
        at: 'across',
        what: `this section makes ${values.section === 'round' ? 'a round' : 'an octagon'} of ${show(most)} at most, not ${show(across)}`,
        why: 'forging the corners down moves metal along the bar, never back into it',
        try: [`ask for ${show(most)} or less`, 'start from a larger bar'],
      })
    }
    const name = values.section === 'round' ? 'forged round' : 'forged to an octagon'
    const done = forgeInHeats(
      { ...before, build: worked(name, before.build) },
      aimOf(before, values, smithy),
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
    const { height: to, length } = step.after.size
    const bite = biteOn(before, smithy.shop)
    const from = before.shape === 'octagon' || before.shape === 'round' ? before.shape : 'square'
    const moved = movedShare(from, values.section)
    const flat = to * Math.tan(Math.PI / (values.section === 'round' ? 16 : 8))
    const pairs = (values.section === 'round' ? 4 : 0) + (from === 'square' ? 2 : 0)
    return judgeLoaded(
      before,
      step,
      CORNER_STRAIN,
      (stress) => cornerLoad(stress, moved * step.after.volume, flat * bite),
      smithy,
      Math.max(1, pairs) * Math.max(1, Math.ceil(length / bite - 1e-9)),
    )
  },
  movement([before], values, _after, smithy) {
    return movedInHeats(before, aimOf(before, values, smithy), smithy)
  },
})

const show = (m: number) => printQuantity(m, 'length')

function aimOf(
  before: Billet,
  {
    section,
    across = widest(before, section),
    heats,
  }: {
    readonly section: 'octagon' | 'round'
    readonly across?: number
    readonly heats?: number
  },
  { shop }: Smithy,
): ForgingAim {
  return {
    height: across,
    width: across,
    section,
    purpose: 'forge',
    heats,
    temperature: shop.forgingHeat,
    scale: shop.forgingScale,
  }
}

/** Across a section of the same area as the bar has. */
function widest(before: Billet, section: 'octagon' | 'round'): number {
  const had = before.shape === 'cut' ? 1 : filled[before.shape]
  return Math.sqrt((before.size.width * meanHeight(before) * had) / filled[section])
}
