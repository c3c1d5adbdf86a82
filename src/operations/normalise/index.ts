import { ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { skinned } from '#movement'
import { operation } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { EUTECTOID, treat } from '../treat.ts'

const parameters = declare({
  cycles: {
    form: 'count',
    min: 1,
    max: 6,
    default: 3,
    help: 'How often it is heated and cooled in still air (common practice: three)',
  },
  first: {
    form: 'quantity',
    of: 'temperature',
    min: 923.15,
    max: 1323.15,
    default: '870 °C',
    help: 'Heat of the first cycle (from memory, for plain carbon blade steels)',
  },
  last: {
    form: 'quantity',
    of: 'temperature',
    min: 923.15,
    max: 1323.15,
    default: '790 °C',
    help: 'Heat of the last cycle; those between step evenly',
  },
  soak: {
    form: 'quantity',
    of: 'time',
    min: 0,
    max: 7200,
    default: '3 min',
    help: 'Time at heat once the core is hot',
  },
})

/** Heats above the critical point and cools in air: the coarse grain of the welding heats goes. */
export const normalise = operation({
  name: 'normalise',
  summary:
    'Heat through and cool in still air, each time a little cooler, so that the grain grown at welding heat is fine again.',
  takes: 'one',
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'gas'],
  examples: [
    { values: {}, before: [sampleBar(200, 30, 5)] },
    {
      values: { cycles: 1, first: '900 °C', soak: '10 min' },
      before: [samplePack(180, 32, 6, 61)],
    },
  ],
  forward([before], values, smithy) {
    const { cycles, first, last, soak } = values
    const temperatures = Array.from({ length: cycles }, (_, i) =>
      cycles === 1 ? first : first + ((last - first) * i) / (cycles - 1),
    )
    const done = treat(
      before,
      {
        purpose: 'normalise',
        temperatures,
        soak,
        medium: 'air',
        scale: smithy.shop.treatingScale,
        leaves: 'normalised',
      },
      smithy,
    )
    if (done.problems) return done
    const cold = Math.max(...temperatures) <= EUTECTOID
    return ok({
      ...done.ok,
      warnings: cold ? [...done.ok.warnings, tooCold(Math.max(...temperatures))] : done.ok.warnings,
      notes: ['Hang it straight in still air; let it go black before the next heat.'],
    })
  },
  movement([before], _values, after) {
    return skinned(before, after)
  },
})

function tooCold(hottest: number) {
  return {
    at: 'first',
    what: `no cycle is hotter than ${printQuantity(hottest, 'temperature')}`,
    why: 'below about 727 °C the old grain stays as it is',
    try: ['make the first cycle 870 °C', 'call it an anneal, if softness is all that is wanted'],
  }
}
