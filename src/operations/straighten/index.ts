import { ok } from '#problem'
import { declare } from '#parameters'
import { skinned } from '#movement'
import { operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { stockBurnt } from '../shaped.ts'
import { warm } from '../warm.ts'

const parameters = declare({
  when: {
    form: 'choice',
    options: {
      hot: 'at a dull red, before hardening',
      'from the quench': 'in the seconds after the quench, before it is hard',
      'after tempering':
        'clamped against its bend at tempering heat, or little by little when cold',
    },
    default: 'hot',
    help: 'When it is straightened',
  },
  temperature: {
    form: 'quantity',
    of: 'temperature',
    min: 673.15,
    max: 1273.15,
    default: '700 °C',
    help: 'Heat it is straightened at, where it is straightened hot',
  },
})

/** Takes warp out. No size changes. */
export const straighten = operation({
  name: 'straighten',
  summary: 'Take the warp out, hot, from the quench or after tempering.',
  takes: 'one',
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'gas', 'spring'],
  examples: [
    { values: {}, before: [samplePack(300, 32, 6, 61)] },
    {
      values: { when: 'after tempering' },
      before: [{ ...sampleBar(250, 30, 4), temper: 'tempered' }],
    },
    {
      values: { when: 'from the quench' },
      before: [{ ...sampleBar(250, 30, 4), temper: 'hardened' }],
    },
  ],
  forward([before], values, smithy) {
    if (values.when !== 'hot') {
      const brittle = values.when === 'after tempering' && before.temper === 'hardened'
      const late = values.when === 'from the quench' && before.temper !== 'hardened'
      return ok(
        step(before, {
          warnings: [...(brittle ? [untempered()] : []), ...(late ? [notQuenched()] : [])],
          notes: [
            'Look along it both ways, mark the high place, and move it a little past straight.',
          ],
        }),
      )
    }
    const warmed = warm(
      before,
      {
        purpose: 'straighten',
        count: 1,
        temperature: values.temperature,
        scale: smithy.shop.treatingScale,
      },
      smithy,
    )
    if (warmed.problems) return warmed
    const { bar, losses, heats, warnings } = warmed.ok
    const hard = before.temper === 'hardened' || before.temper === 'tempered'
    const after = hard ? { ...bar, temper: 'annealed' as const } : bar
    return ok(
      step(after, {
        losses,
        heats,
        warnings: [
          ...warnings,
          ...(hard ? [drawsTemper()] : []),
          ...stockBurnt(after, smithy.piece),
        ],
      }),
    )
  },
  movement([before], _values, after) {
    return skinned(before, after)
  },
})

function untempered() {
  return {
    at: 'when',
    what: 'it is hard and not yet tempered',
    why: 'a hard blade breaks when it is bent cold, and the pieces fly',
    try: ['temper it first', 'straighten it from the quench'],
  }
}

function notQuenched() {
  return {
    at: 'when',
    what: 'it does not come from the quench here',
    why: 'the seconds in which a quenched blade can be moved come right after hardening',
    try: ['put this step right after hardening', 'straighten it hot'],
  }
}

function drawsTemper() {
  return {
    at: 'when',
    what: 'straightening at red heat takes the hardness out again',
    why: 'above tempering heat hardened steel goes soft',
    try: [
      'straighten it after tempering, clamped, at tempering heat',
      'harden and temper it again',
    ],
  }
}
