import { ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { stays } from '#movement'
import { operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'

const parameters = declare({
  temperature: {
    form: 'quantity',
    of: 'temperature',
    min: 373.15,
    max: 973.15,
    default: '200 °C',
    help: 'Tempering heat: higher is tougher and softer',
  },
  hold: {
    form: 'quantity',
    of: 'time',
    min: 60,
    max: 86400,
    default: '2 h',
    help: 'Time at heat, each time (common practice: one to two hours)',
  },
  times: { form: 'count', min: 1, max: 6, default: 2, help: 'How often (common practice: twice)' },
})

/** Warms the hardened piece: some hardness is given up for toughness. No metal is lost. */
export const temper = operation({
  name: 'temper',
  summary: 'Warm the hardened piece and hold it, twice, so that it is tough and keeps an edge.',
  takes: 'one',
  parameters,
  loses: [],
  cautions: ['heat'],
  examples: [
    { values: {}, before: [{ ...sampleBar(200, 30, 4), temper: 'hardened' }] },
    {
      values: { temperature: '540 °F', hold: '1 h', times: 3 },
      before: [{ ...samplePack(700, 40, 6, 25), temper: 'hardened' }],
    },
  ],
  forward([before], values) {
    const hard = before.temper === 'hardened' || before.temper === 'tempered'
    return ok(
      step(hard ? { ...before, temper: 'tempered' } : before, {
        heats: [
          {
            purpose: 'temper',
            count: values.times,
            temperature: values.temperature,
            soak: values.hold,
            medium: 'air',
          },
        ],
        warnings: hard
          ? []
          : [
              {
                at: '',
                what: `it is ${before.temper}, not hardened`,
                why: 'tempering only softens what the quench has made hard',
                try: ['harden it first', 'leave this step out'],
              },
            ],
        notes: [
          `Go by a thermometer at the blade, not by the dial: ${printQuantity(values.temperature, 'temperature')} is wanted, and nickel steel colours later than carbon steel.`,
        ],
      }),
    )
  },
  movement() {
    return stays
  },
})
