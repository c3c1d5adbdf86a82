import { type Problem, ok } from '#problem'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { steelsIn, volumesOf } from '#billet'
import { stays } from '#movement'
import { lossBetween } from '../fire.ts'
import { withVolumes } from '../cut-out.ts'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { plaqueWithHoles, shapedPlaque } from '../sample-pieces.ts'
import { boxSurface, isFixed } from '../shaped.ts'

const parameters = declare({
  acid: {
    form: 'choice',
    options: {
      'ferric chloride': 'ferric chloride, 40 % stock, in water',
      'hydrochloric acid': 'hydrochloric (muriatic) acid in water, for stainless pairs',
      coffee: 'strong instant coffee, after a light etch: colour more than depth',
    },
    default: 'ferric chloride',
    help: 'What it is etched in',
  },
  water: {
    form: 'count',
    min: 0,
    max: 40,
    default: 3,
    help: 'Parts of water to one of acid (practice read: 3)',
  },
  dip: {
    form: 'quantity',
    of: 'time',
    min: 5,
    max: 36000,
    default: '5 min',
    help: 'Time in the bath, each time (common practice: 5 to 15 min in all; practice read: up to three times 15 min)',
  },
  times: {
    form: 'count',
    min: 1,
    max: 60,
    default: 3,
    help: 'How often it is dipped, the smut wiped off between',
  },
  depth: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 3e-4,
    optional: true,
    help: "How far the dark steel is etched below the bright; left out, the shop's",
  },
  dark: {
    form: 'list',
    item: { form: 'steel', help: 'A steel the acid takes' },
    fewest: 0,
    most: 12,
    default: [],
    help: 'Steels that etch dark: only they lose metal; left out, every steel is taken alike',
  },
})

/** Still bath at room heat, m/s: 0.5 to 4 µm a minute (from memory, low confidence; no published rate for knife steels). */
const RATE = [0.5e-6 / 60, 4e-6 / 60] as const

/** Etches the polished piece: the pattern shows. */
export const etch = operation({
  name: 'etch',
  summary:
    'Etch the polished piece, wipe, repeat, neutralise and oil: the dark steel goes down and the pattern shows.',
  takes: 'one',
  parameters,
  loses: ['etched'],
  cautions: ['acid'],
  examples: [
    {
      values: { dark: ['1095'] },
      get before() {
        return [shapedPlaque(0, ['hole', 'polish'])]
      },
      piece: plaqueWithHoles,
    },
    {
      values: { times: 10, dip: '3 min', depth: '50 µm', water: 4 },
      before: [{ ...samplePack(150, 30, 6, 61), temper: 'tempered' }],
    },
  ],
  forward([before], values, { shop, densities, piece }) {
    const depth = values.depth ?? shop.etchDepth
    const surface = piece && isFixed(before) ? piece.surface : boxSurface(before)
    const have = volumesOf(before)
    const dark = values.dark.length > 0 ? values.dark : steelsIn(before.build)
    const left = Object.fromEntries(
      Object.entries(have).map(([steel, volume]) => {
        const share = volume / before.volume
        const taken = dark.includes(steel) ? surface * depth * share : 0
        return [steel, Math.max(volume / 2, volume - taken)]
      }),
    )
    const after = { ...withVolumes(before, left, 'etched'), shape: 'cut' as const }
    return ok(
      step(after, {
        losses: [lossBetween(before, after, 'etched', densities)],
        warnings: [...warnings(values, depth), ...soft(before.temper)],
        notes: [
          values.acid === 'coffee'
            ? `${printCount(values.times, 'dip')} of ${printQuantity(values.dip, 'time')} in coffee: wipe the smut off between.`
            : `${printCount(values.times, 'dip')} of ${printQuantity(values.dip, 'time')} in ${values.acid}, one part to ${values.water} of water: wipe the smut off between.`,
          'Rinse, neutralise in soda and water, rinse until no chloride is left, dry warm, oil.',
        ],
      }),
    )
  },
  movement() {
    return stays
  },
})

function warnings(
  { acid, dip, times }: { readonly acid: string; readonly dip: number; readonly times: number },
  depth: number,
): Problem[] {
  const time = dip * times
  const [least, most] = [RATE[0] * time, RATE[1] * time]
  if (acid !== 'ferric chloride' || (depth >= least * 0.99 && depth <= most * 1.01)) return []
  return [
    {
      at: 'depth',
      what: `${printQuantity(time, 'time')} in the bath for ${printQuantity(depth, 'length')}`,
      why: `a still bath takes 0.5 to 4 µm a minute (from memory): ${printQuantity(least, 'length')} to ${printQuantity(most, 'length')} in that time`,
      try: [
        depth > most ? 'more or longer dips' : 'fewer or shorter dips',
        'try a piece of the same bar first and measure it',
      ],
    },
  ]
}

function soft(temper: string): Problem[] {
  if (temper === 'hardened' || temper === 'tempered') return []
  return [
    {
      at: '',
      what: `it is etched ${temper}, not hardened`,
      why: 'hardened and tempered steel etches with more contrast (common practice)',
      try: ['harden and temper it first', 'accept a paler face'],
    },
  ]
}
