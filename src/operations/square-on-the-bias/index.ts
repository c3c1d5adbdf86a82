import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { worked, type Billet } from '#billet'
import { forgeInHeats, heatsFor, type ForgingAim } from '../forge-in-heats.ts'
import { judgeSqueezing } from '../judge.ts'
import { operation, type Smithy } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { corners } from '../squeezes.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { movedInHeats } from '../movement-in-heats.ts'

const parameters = declare({
  side: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 0.3,
    optional: true,
    free: 'height',
    help: 'Side of the new square, across the old corners; left out, the square of the same area',
  },
  heats: {
    form: 'count',
    min: 1,
    max: 60,
    optional: true,
    help: 'Heats taken; left out, as many as bringing the diagonal down to the new side needs',
  },
})

/** Presses the corners of a square bar flat, so that its layers run from corner to corner. */
export const squareOnBias = operation({
  name: 'square on the bias',
  summary:
    'Stand the bar on its corner and forge the corners flat: the layers then run from corner to corner, bent to a C.',
  takes: 'one',
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: {}, before: [samplePack(150, 25, 25)] },
    { values: { side: '14 mm', heats: 6 }, before: [samplePack(200, 20, 19, 25)] },
  ],
  forward([before], values, smithy) {
    const loose = unwelded(before, 'forging on the corner')
    if (loose) return failed(loose)
    const { width, height } = before.size
    if (before.shape !== 'rectangle' || Math.max(width, height) > 1.5 * Math.min(width, height)) {
      return failed({
        at: '',
        what: `a ${before.shape === 'rectangle' ? 'flat' : before.shape} section of ${show(width)} × ${show(height)} has no square diagonal`,
        why: 'the corners of a square are pressed flat; a section flatter than 3 to 2 lies over on its side',
        try: ['square up first'],
      })
    }
    const same = Math.sqrt(width * height)
    const side = values.side ?? same
    if (side > same * 1.0001) {
      return failed({
        at: 'side',
        what: `this section makes a square of ${show(same)} at most, not ${show(side)}`,
        why: 'forging moves metal along the bar, never back into it',
        try: [`ask for ${show(same)} or less`, 'start from a larger bar'],
      })
    }
    const done = forgeInHeats(
      { ...before, build: worked('squared on the bias', before.build) },
      aimOf(before, values, smithy),
      smithy,
    )
    if (done.problems) return done
    return ok({
      ...done.ok,
      warnings: [
        ...done.ok.warnings,
        ...uneven(width, height),
        ...youngWelds(before, 'on edge', 'forging on the corner'),
      ],
      notes: [
        'Strike the corners hot and little by little: a corner struck cold folds over and makes a lap.',
        `Mark the end of the bar: the old diagonal of ${show(Math.hypot(width, height))} now lies square to the face.`,
      ],
    })
  },
  force([before], _values, step, smithy) {
    const from = Math.hypot(before.size.width, before.size.height)
    const to = step.after.size.height
    return judgeSqueezing(
      { before, step, passes: () => corners(before, step, [{ from, to, count: 2 }]) },
      smithy,
    )
  },
  movement([before], values, _after, smithy) {
    return movedInHeats(before, aimOf(before, values, smithy), smithy, { onCorner: true })
  },
})

function uneven(width: number, height: number): Problem[] {
  const ratio = Math.max(width, height) / Math.min(width, height)
  if (ratio <= 1.1) return []
  return [
    {
      at: '',
      what: `the bar is ${Math.round((ratio - 1) * 100)} % off square before it is turned on its corner`,
      why: 'its layers will not run from corner to corner but beside it, and the two diagonals differ',
      try: ['square up first'],
    },
  ]
}

const show = (m: number) => printQuantity(m, 'length')

function aimOf(
  { size: { width, height } }: Billet,
  values: { readonly side?: number; readonly heats?: number },
  smithy: Smithy,
): ForgingAim {
  const side = values.side ?? Math.sqrt(width * height)
  return {
    height: side,
    width: side,
    purpose: 'forge',
    heats: values.heats ?? heatsFor(Math.hypot(width, height) / side, smithy),
    temperature: smithy.shop.forgingHeat,
    scale: smithy.shop.forgingScale,
  }
}
