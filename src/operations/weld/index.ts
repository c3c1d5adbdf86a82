import { ok } from '#problem'
import { declare } from '#parameters'
import type { Billet } from '#billet'
import { adviseWeld, weldingRules } from '#forming'
import { asTold } from '../as-told.ts'
import { forgeInHeats, meanHeight, type ForgingAim } from '../forge-in-heats.ts'
import { steelsOf } from '../metal-worked.ts'
import { operation, type Smithy } from '../operation.ts'
import { loose, samplePack } from '../samples.ts'
import { judgeDrawn } from '../squeezes.ts'
import { movedInHeats } from '../movement-in-heats.ts'

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
    optional: true,
    help: 'Time at heat once the colour is even; left out, 5 min for each 25 mm of the thinnest way through, and 10 min at least while the joints are open (common practice)',
  },
})

/** Mean reduction of a heat up to which a smith can still take the first one lightly (common practice, no source). */
const UNEVEN = 0.2

const thinnestWay = ({ size }: Billet) => Math.min(size.length, size.width, size.height)

function usualSoak(bar: Billet): number {
  const even = weldingRules.soakPerThickness * thinnestWay(bar)
  const soak = bar.bond === 'welded' ? even : Math.max(even, weldingRules.firstSoak[0])
  return Math.ceil(soak / 60 - 1e-9) * 60
}

const celsius = (kelvin: number) => Math.round(kelvin - 273.15)

/** Forge-welds a stack: all joints become one metal, and like joints become one layer. */
export const weld = operation({
  name: 'weld',
  summary:
    'Bring the stack to welding heat right through and close it, lightly first, from the middle out.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'sealed', 'flux', 'strike'],
  examples: [
    { values: {}, before: [loose(samplePack())] },
    {
      values: { close: '50 %', heats: 5, temperature: '2300 °F', soak: '15 min' },
      before: [loose(samplePack(90, 40, 60, 45))],
    },
  ],
  forward([before], values, smithy, share) {
    const done = forgeInHeats(before, { ...aimOf(before, values, smithy), share }, smithy)
    if (done.problems) return done
    const after: Billet = {
      ...done.ok.after,
      bond: 'welded',
      worked: values.close,
      temper: 'as forged',
      // It closes by a share of the height: a side that was to give still gives.
      spare: before.spare,
    }
    return ok({
      ...done.ok,
      after,
      // Sealed metal is welded dry, and what it holds can burst it; open joints may be fluxed.
      cautions: ['heat', 'glare', 'gas', before.bond === 'sealed' ? 'sealed' : 'flux', 'strike'],
      notes: ['A line that stays dark while the bar cools is not welded: mark it and weld again.'],
    })
  },
  force([before], values, step, smithy) {
    const judged = judgeDrawn(before, step, smithy, { free: true })
    const [heat] = step.heats
    if (!judged || !heat) return judged
    const each = 1 - values.close ** (1 / values.heats)
    const advice = adviseWeld({
      steels: steelsOf(before, smithy),
      temperature: heat.temperature,
      thinnest: thinnestWay(before),
      soak: heat.soak,
      first: before.bond !== 'welded',
      // Heats need not be alike: the first may be lighter than the mean of them, within reason.
      reduction: each <= UNEVEN ? Math.min(each, weldingRules.firstReduction[1]) : each,
    })
    const [least, most] = advice.reduction
    const percent = (share: number) => Math.round(100 * share)
    return {
      ...judged,
      warnings: [...judged.warnings, ...advice.cautions.map((p) => asTold(p))],
      notes: [
        `These steels weld at ${celsius(advice.heat[0])} to ${celsius(advice.heat[1])} °C: soak ${Math.ceil(heat.soak / 60)} min once the colour is even, and take off ${percent(least)} to ${percent(most)} % in the first heat (common practice).`,
        ...judged.notes,
      ],
    }
  },
  movement([before], values, _after, smithy, share) {
    return movedInHeats(before, { ...aimOf(before, values, smithy), share }, smithy)
  },
})

function aimOf(
  before: Billet,
  values: {
    readonly close: number
    readonly heats: number
    readonly temperature?: number
    readonly soak?: number
  },
  { shop }: Smithy,
): ForgingAim {
  return {
    // Gaps between rods and in a can close first; the share is of the metal's own height.
    height: meanHeight(before) * values.close,
    purpose: 'weld',
    heats: values.heats,
    temperature: values.temperature ?? shop.weldingHeat,
    scale: shop.weldingScale,
    soak: values.soak ?? usualSoak(before),
  }
}
