import { type Problem, failed, ok } from '#problem'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { layered } from '#billet'
import { along, moving } from '#movement'
import { takeOff } from '../fire.ts'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'

const end = {
  form: 'quantity',
  of: 'length',
  min: 0,
  max: 0.3,
  optional: true,
} as const

const parameters = declare({
  start: {
    ...end,
    help: "Cut off the start of the bar, where the tongs or the handle held it; left out, the shop's",
  },
  end: { ...end, help: "Cut off the end of the bar; left out, the shop's" },
})

/** Cuts off the ends that did not weld, fishtailed or carried the handle. The cut itself is within. */
export const crop = operation({
  name: 'crop',
  summary: 'Cut off both ends, back to sound metal.',
  takes: 'one',
  parameters,
  loses: ['crop'],
  cautions: ['saw'],
  examples: [
    { values: {}, before: [samplePack(300, 25, 25)] },
    { values: { start: '30 mm', end: '5 mm' }, before: [samplePack(300, 25, 25)] },
    {
      values: { start: '4 mm', end: '0 mm' },
      before: [
        {
          ...samplePack(60, 25, 25),
          build: layered('x', [
            { steel: '1095', thickness: 0.003 },
            { steel: '15N20', thickness: 0.057 },
          ]),
          spare: 'y',
        },
      ],
    },
  ],
  forward([before], values, { shop, densities }) {
    const low = values.start ?? shop.crop
    const high = values.end ?? shop.crop
    const cropped = takeOff(before, { x: { low, high } }, 'crop', densities)
    if (!cropped) return failed(allGone(before.size.length, low, high))
    const gone =
      cropped.lost > 0 ? [`Lost with the cropped ends: ${printCount(cropped.lost, 'layer')}.`] : []
    return ok(
      step(cropped.after, {
        losses: [cropped.loss],
        notes: [
          ...gone,
          'Etch or look closely at the cut ends: a dark line is a weld that did not take.',
        ],
      }),
    )
  },
  movement(_before, values, _after, { shop }) {
    return moving([along(values.start ?? shop.crop)])
  },
})

function allGone(length: number, low: number, high: number): Problem {
  return {
    at: 'start',
    what: `cropping ${show(low)} and ${show(high)} leaves nothing of a bar ${show(length)} long`,
    why: 'both ends are cut off',
    try: ['crop less', 'draw the bar longer first', 'start from a longer stack'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
