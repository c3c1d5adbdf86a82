import { failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { barVolume, worked, type Billet } from '#billet'
import { forgeInHeats, meanHeight, type ForgingAim } from '../forge-in-heats.ts'
import { operation, type Smithy } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { judgeDrawn } from '../squeezes.ts'
import { unwelded, youngOnEdge } from '../welds.ts'
import { movedInHeats } from '../movement-in-heats.ts'

const parameters = declare({
  side: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 0.3,
    optional: true,
    free: 'height',
    help: 'Side of the square the section is brought to; left out, the square of the same area',
  },
  heats: {
    form: 'count',
    min: 1,
    max: 60,
    optional: true,
    help: 'Heats taken; left out, as many as the reduction needs',
  },
})

/** Forges the section to a square. */
export const squareUp = operation({
  name: 'square up',
  summary:
    'Forge the section to a true square, quarter turn by quarter turn, so that later cuts and turns match.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: {}, before: [samplePack(120, 34, 28)] },
    { values: { side: '16 mm', heats: 5 }, before: [samplePack()] },
    { values: { side: '11 mm' }, before: [sampleBar(300, 14, 14, '1084', 'octagon')] },
  ],
  forward([before], values, smithy, share) {
    const loose = unwelded(before, 'squaring up')
    if (loose) return failed(loose)
    const area = areaOf(before)
    const side = values.side ?? Math.sqrt(area)
    if (side * side > area * 1.0001) {
      return failed({
        at: 'side',
        what: `this section makes a square of ${show(Math.sqrt(area))} at most, not ${show(side)}`,
        why: 'squaring up moves metal along the bar, never back into it',
        try: [
          `square it to ${show(Math.sqrt(area))} or less`,
          'leave the side out: the square of the same area',
          'upset the bar first',
        ],
      })
    }
    const round = before.shape === 'octagon' || before.shape === 'round'
    const bar = round ? { ...before, build: worked('squared from round', before.build) } : before
    const done = forgeInHeats(bar, { ...aimOf(before, values, smithy), share }, smithy)
    if (done.problems) return done
    return ok({ ...done.ok, warnings: [...done.ok.warnings, ...youngOnEdge(before)] })
  },
  force([before], _values, step, smithy) {
    return judgeDrawn(before, step, smithy)
  },
  movement([before], values, _after, smithy, share) {
    return movedInHeats(before, { ...aimOf(before, values, smithy), share }, smithy)
  },
})

function section(shape: 'rectangle' | 'octagon' | 'round' | 'cut') {
  return shape === 'cut' ? 'rectangle' : shape
}

const show = (m: number) => printQuantity(m, 'length')

function aimOf(
  before: Billet,
  { side = Math.sqrt(areaOf(before)), heats }: { readonly side?: number; readonly heats?: number },
  { shop }: Smithy,
): ForgingAim {
  return {
    height: side,
    width: side,
    section: 'rectangle',
    purpose: 'forge',
    heats,
    temperature: shop.forgingHeat,
    scale: shop.forgingScale,
  }
}

/** Of the section, level. */
function areaOf(before: Billet): number {
  return barVolume({ ...before.size, length: 1, height: meanHeight(before) }, section(before.shape))
}
