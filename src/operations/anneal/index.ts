import { ok } from '#problem'
import { declare } from '#parameters'
import { skinned } from '#movement'
import { operation } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { treat } from '../treat.ts'

const parameters = declare({
  temperature: {
    form: 'quantity',
    of: 'temperature',
    min: 823.15,
    max: 1173.15,
    default: '740 °C',
    help: 'Heat it is cooled from (from memory: just over the critical point, or 650 to 700 °C held below it)',
  },
  soak: {
    form: 'quantity',
    of: 'time',
    min: 0,
    max: 86400,
    default: '30 min',
    help: 'Time at heat once the core is hot',
  },
  cool: {
    form: 'choice',
    options: {
      vermiculite: 'buried in vermiculite or ash',
      furnace: 'left in the fire or kiln as it cools',
    },
    default: 'vermiculite',
    help: 'How it cools slowly',
  },
})

/** Heats and cools slowly: soft for sawing, drilling and cold bending. */
export const anneal = operation({
  name: 'anneal',
  summary: 'Heat through and cool slowly, so that the steel is soft to saw, drill and file.',
  takes: 'one',
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'gas'],
  examples: [
    { values: {}, before: [sampleBar(200, 30, 5)] },
    {
      values: { temperature: '690 °C', soak: '2 h', cool: 'furnace' },
      before: [samplePack(300, 25, 25)],
    },
  ],
  forward([before], values, smithy) {
    const done = treat(
      before,
      {
        purpose: 'anneal',
        temperatures: [values.temperature],
        soak: values.soak,
        medium: values.cool,
        scale: smithy.shop.treatingScale,
        leaves: 'annealed',
      },
      smithy,
    )
    if (done.problems) return done
    return ok({
      ...done.ok,
      notes: ['Put it in before the fire has cooled it: what goes in black stays hard.'],
    })
  },
  movement([before], _values, after) {
    return skinned(before, after)
  },
})
