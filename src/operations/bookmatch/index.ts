import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { shift, turn } from '#warp'
import { type Billet, type Turn, turnBuild } from '#billet'
import { input, laid, meeting, through } from '#movement'
import { lossBetween, sumLosses } from '../fire.ts'
import { takeFlats } from '../flats.ts'
import { layTogether } from '../join.ts'
import { operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { cleanUp, kerf } from '../usual.ts'
import { unwelded } from '../welds.ts'

const parameters = declare({ kerf, cleanUp })

const over: Turn = {
  x: { was: 'x' },
  y: { was: 'y', reversed: true },
  z: { was: 'z', reversed: true },
}

/** Saws the bar lengthwise through its thickness and opens the two leaves like a book. */
export const bookmatch = operation({
  name: 'bookmatch',
  summary:
    'Saw the bar lengthwise through its thickness and lay the two leaves open side by side, cut faces up.',
  takes: 'one',
  parameters,
  loses: ['kerf', 'ground'],
  cautions: ['saw', 'dust', 'arc'],
  examples: [
    { values: {}, before: [samplePack(200, 30, 30)] },
    { values: { kerf: '1 mm', cleanUp: '1 mm' }, before: [samplePack(200, 24, 16, 12)] },
    { values: { cleanUp: '0 mm' }, before: [sampleBar(200, 20, 20, 'W2')] },
  ],
  forward([before], values, { shop, densities }) {
    const loose = unwelded(before, 'sawing it through')
    if (loose) return failed(loose)
    if (before.shape === 'round' || before.shape === 'octagon') return failed(notFlat())
    const cut = values.kerf ?? shop.kerf
    const leaf = (before.size.height - cut) / 2
    const rest = before.size.height - leaf
    const lower =
      leaf > 0 ? takeFlats(before, { z: { low: 0, high: rest } }, 'kerf', densities) : undefined
    const upper =
      leaf > 0 ? takeFlats(before, { z: { low: rest, high: 0 } }, 'kerf', densities) : undefined
    if (!lower || !upper) return failed(tooThin(before.size.height, cut))
    const opened: Billet = {
      ...upper.after,
      size: lower.after.size,
      build: turnBuild(upper.after.build, over),
    }
    const kerfLoss = twoFromOne(before, lower.after, upper.after, densities)
    const laid = layTogether(
      [lower.after, opened],
      {
        axis: 'y',
        cleanUp: values.cleanUp ?? shop.cleanUp,
        how: 'two leaves opened like a book',
        spare: before.spare,
      },
      densities,
    )
    if (laid.problems) return laid
    const { after, ground, warnings } = laid.ok
    return ok(
      step(after, {
        losses: sumLosses([kerfLoss, ground]),
        warnings,
        notes: ['The cut faces are the matched pair: grind them as little as they allow.'],
      }),
    )
  },
  movement([before], values, _after, { shop }) {
    const { width, height } = before.size
    const leaf = (height - (values.kerf ?? shop.kerf)) / 2
    const away = (height - leaf) / 2
    const leaves = [
      through([shift({ z: -away })], input(0)),
      through([turn('over'), shift({ z: away })], input(0)),
    ].map((from) => ({ side: width, from }))
    return laid('y', meeting(leaves, values.cleanUp ?? shop.cleanUp))
  },
})

/** What the saw turned to dust between two leaves. */
function twoFromOne(
  whole: Billet,
  lower: Billet,
  upper: Billet,
  densities: Readonly<Record<string, number>>,
) {
  const off = lossBetween(whole, lower, 'kerf', densities)
  const leaf = lossBetween(upper, { ...upper, volume: 0 }, 'kerf', densities).masses
  const masses = Object.fromEntries(
    Object.entries(off.masses).map(([steel, mass]) => [steel, mass - (leaf[steel] ?? 0)]),
  )
  return { cause: 'kerf', masses } as const
}

function notFlat(): Problem {
  return {
    at: '',
    what: 'only a square or flat bar opens into two leaves that lie flush',
    why: 'halves of a round bar meet along a line',
    try: ['square the bar up first'],
  }
}

function tooThin(height: number, kerf: number): Problem {
  return {
    at: 'kerf',
    what: `a cut of ${printQuantity(kerf, 'length')} leaves nothing of a bar ${printQuantity(height, 'length')} thick`,
    why: 'the saw goes through the middle of its thickness',
    try: ['use a thinner blade', 'start from a thicker bar'],
  }
}
