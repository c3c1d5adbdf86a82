import { ok } from '#problem'
import { declare } from '#parameters'
import type { Billet } from '#billet'
import { forgeInHeats, meanHeight } from '../forge-in-heats.ts'
import { operation } from '../operation.ts'
import { loose, samplePack } from '../samples.ts'
import { straightTo } from '../straight.ts'

const parameters = declare({
  close: {
    form: 'quantity',
    of: 'ratio',
    min: 0.3,
    max: 0.99,
    default: '85 %',
    help: 'Height left after the weld, as a share of the height before (common practice: 80 to 90 % in the first heat)',
  },
  heats: { form: 'count', min: 1, max: 30, default: 2, help: 'Welding heats taken' },
  temperature: {
    form: 'quantity',
    of: 'temperature',
    min: 1073.15,
    max: 1673.15,
    optional: true,
    help: "Welding heat; left out, the shop's",
  },
  soak: {
    form: 'quantity',
    of: 'time',
    min: 0,
    max: 7200,
    default: '5 min',
    help: 'Time at heat once the colour is even (common practice: 5 min for each 25 mm of the thinnest way to the core)',
  },
})

/** Share of the closing that goes into width when a tall stack is set: the faces stick to the dies. */
const SETTING_SPREAD = 0.35

/** Forge-welds a stack: all joints become one metal, and like joints become one layer. */
export const weld = operation({
  name: 'weld',
  summary:
    'Bring the stack to welding heat right through and close it, lightly first, from the middle out.',
  takes: 'one',
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'flux', 'strike'],
  examples: [
    { values: {}, before: [loose(samplePack())] },
    {
      values: { close: '50 %', heats: 5, temperature: '2300 °F', soak: '15 min' },
      before: [loose(samplePack(90, 40, 60, 45))],
    },
  ],
  forward([before], values, smithy) {
    const done = forgeInHeats(
      before,
      {
        // Gaps between rods and in a can close first; the share is of the metal's own height.
        height: meanHeight(before) * values.close,
        purpose: 'weld',
        heats: values.heats,
        temperature: values.temperature ?? smithy.shop.weldingHeat,
        scale: smithy.shop.weldingScale,
        soak: values.soak,
        spread: () => smithy.shop.spread ?? SETTING_SPREAD,
      },
      smithy,
    )
    if (done.problems) return done
    const after: Billet = {
      ...done.ok.after,
      bond: 'welded',
      worked: values.close,
      temper: 'as forged',
    }
    return ok({
      ...done.ok,
      after,
      notes: ['A line that stays dark while the bar cools is not welded: mark it and weld again.'],
    })
  },
  movement([before], _values, after) {
    return straightTo(before, after)
  },
})
