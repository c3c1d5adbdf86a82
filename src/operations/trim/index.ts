import { type Problem, failed, ok } from '#problem'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { stays } from '#movement'
import { takeFlats } from '../flats.ts'
import { operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'

const parameters = declare({
  sides: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.05,
    optional: true,
    help: "Taken off each of the two sides; left out, the shop's",
  },
  faces: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.05,
    default: '0 mm',
    help: 'Taken off top and bottom as well',
  },
})

/** Saws or grinds the sides back to where the sheets are welded right out to the edge. */
export const trim = operation({
  name: 'trim',
  summary: 'Take the sides back to sound metal, and the tacks with them.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['trim'],
  cautions: ['saw', 'dust'],
  examples: [
    { values: {}, before: [samplePack()] },
    { values: { sides: '5 mm', faces: '3 mm' }, before: [samplePack(140, 50, 40, 21)] },
    { values: { sides: '1 mm', faces: '1 mm' }, before: [sampleBar(200, 20, 20, '1084', 'round')] },
  ],
  forward([before], values, { shop, densities }, share = 1) {
    const sides = (values.sides ?? shop.trim) * share
    const faces = values.faces * share
    if (2 * sides >= before.size.width) return failed(allGone('sides', before.size.width, sides))
    const off = { y: { low: sides, high: sides }, z: { low: faces, high: faces } }
    const trimmed = takeFlats(before, off, 'trim', densities)
    if (!trimmed) return failed(allGone('faces', before.size.height, faces))
    const { after, loss, lost } = trimmed
    return ok(
      step(after, {
        losses: [loss],
        notes: lost > 0 ? [`Lost with the trimmed sides: ${printCount(lost, 'layer')}.`] : [],
      }),
    )
  },
  movement() {
    return stays
  },
})

function allGone(at: string, across: number, each: number): Problem {
  return {
    at,
    what: `taking ${show(each)} off both ${at} leaves nothing of ${show(across)}`,
    why: 'it comes off both',
    try: [`take less than ${show(across / 4)} off each`, 'start from a larger stack'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
