import { type Problem, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import type { Billet } from '#billet'
import { skinned } from '#movement'
import { operation } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { EUTECTOID, treat } from '../treat.ts'

const parameters = declare({
  temperature: {
    form: 'quantity',
    of: 'temperature',
    min: 973.15,
    max: 1423.15,
    default: '800 °C',
    help: 'Heat it is quenched from; it must suit both steels (from memory: 790 to 815 °C for plain carbon and nickel blade steels)',
  },
  soak: {
    form: 'quantity',
    of: 'time',
    min: 0,
    max: 7200,
    default: '5 min',
    help: 'Time at heat once the core is hot',
  },
  medium: {
    form: 'choice',
    options: {
      'fast oil': 'fast quenching oil, for 1084, 1095, 15N20 and their like',
      'medium oil': 'medium oil, for O1, 5160, 52100 and their like',
      water: 'water: shallow-hardening steels only, and it cracks layered ones',
      brine: 'brine, faster than water',
      plates: 'between cold plates, for air-hardening steels',
      air: 'still air, for air-hardening steels',
    },
    default: 'fast oil',
    help: 'What it is quenched in',
  },
  interrupt: {
    form: 'quantity',
    of: 'temperature',
    min: 323.15,
    max: 773.15,
    optional: true,
    help: 'Taken out of the quench at this heat and straightened while it is not yet hard; left out, it cools in the quench',
  },
})

/** Heats above the critical point and quenches: hard, brittle, and to be tempered at once. */
export const harden = operation({
  name: 'harden',
  summary:
    'Heat evenly above the critical point of both steels and quench; temper it the same hour.',
  takes: 'one',
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'gas', 'quench'],
  examples: [
    { values: {}, before: [{ ...sampleBar(200, 30, 4), temper: 'normalised' }] },
    {
      values: { temperature: '1500 °F', soak: '10 min', medium: 'medium oil', interrupt: '220 °C' },
      before: [{ ...samplePack(300, 40, 5, 61), temper: 'normalised' }],
    },
  ],
  forward([before], values, smithy) {
    const done = treat(
      before,
      {
        purpose: 'harden',
        temperatures: [values.temperature],
        soak: values.soak,
        medium: values.medium,
        scale: smithy.shop.treatingScale,
        leaves: values.temperature > EUTECTOID ? 'hardened' : before.temper,
      },
      smithy,
    )
    if (done.problems) return done
    const straight =
      values.interrupt === undefined
        ? 'Look along it as it comes out: it can be straightened for a few seconds, before it is hard.'
        : `Take it out at ${printQuantity(values.interrupt, 'temperature')}, straighten it, and let it cool in air between plates.`
    return ok({
      ...done.ok,
      warnings: [...done.ok.warnings, ...warnings(before, values)],
      ...(dry(values.medium) && { cautions: ['heat', 'gas'] as const }),
      notes: [straight, 'Try an edge or a corner with a file, then temper it the same hour.'],
    })
  },
  movement([before], _values, after) {
    return skinned(before, after)
  },
})

/** Nothing flares or erupts between plates or in air. */
const dry = (medium: string) => medium === 'plates' || medium === 'air'

function warnings(
  before: Billet,
  { temperature, medium }: { readonly temperature: number; readonly medium: string },
): Problem[] {
  const found: Problem[] = []
  if (temperature <= EUTECTOID) {
    found.push({
      at: 'temperature',
      what: `nothing hardens from ${printQuantity(temperature, 'temperature')}`,
      why: 'below about 727 °C no steel of iron and carbon turns to austenite',
      try: ['quench from 790 to 815 °C', 'go by the magnet: it lets go near 770 °C'],
    })
  }
  if (before.temper === 'as forged') {
    found.push({
      at: '',
      what: 'it is hardened as it was forged',
      why: 'welding heats leave the grain coarse and the steel under stress: it warps more and breaks sooner (common practice)',
      try: ['normalise it first'],
    })
  }
  if (medium === 'water' || medium === 'brine') {
    found.push({
      at: 'medium',
      what: `layered steel quenched in ${medium}`,
      why: 'the two steels harden at different moments and the weld between them is strained; cracks start at groove floors and stamps (common practice)',
      try: ['fast oil', 'leave the edge thicker and break every corner before the quench'],
    })
  }
  return found
}
