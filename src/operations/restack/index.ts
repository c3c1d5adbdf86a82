import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import {
  type Billet,
  type Build,
  type Laid,
  barVolume,
  massesOf,
  outermost,
  peel,
  solid,
  stackAlong,
  turnBuild,
} from '#billet'
import { takeOff } from '../fire.ts'
import { layersLost } from '../forge-in-heats.ts'
import { type Loss, type Stock, operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'

const parameters = declare({
  pieces: { form: 'count', min: 2, max: 64, help: 'How many pieces the bar is cut into' },
  lay: {
    form: 'choice',
    options: {
      straight: 'every piece the same way up',
      'rolled over': 'every other piece rolled over about its length',
      'end for end': 'every other piece turned end for end',
      folded: 'as if folded: every other piece turned over its end',
    },
    default: 'straight',
    help: 'Which way up the pieces are laid',
  },
  crop: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.2,
    optional: true,
    help: "Cut off each end first; left out, the shop's",
  },
  kerf: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.01,
    optional: true,
    help: "Lost in each cut; left out, the shop's",
  },
  cleanUp: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.005,
    optional: true,
    help: "Ground off each mated face; left out, the shop's",
  },
  between: {
    form: 'steel',
    optional: true,
    help: 'An extra sheet of this steel between the pieces',
  },
  sheet: {
    form: 'quantity',
    of: 'length',
    min: 2e-5,
    max: 0.05,
    default: '1.5 mm',
    help: 'Thickness of the extra sheet',
  },
})

const rolled = {
  x: { was: 'x' },
  y: { was: 'y', reversed: true },
  z: { was: 'z', reversed: true },
} as const
const endForEnd = {
  x: { was: 'x', reversed: true },
  y: { was: 'y', reversed: true },
  z: { was: 'z' },
} as const
const folded = {
  x: { was: 'x', reversed: true },
  y: { was: 'y' },
  z: { was: 'z', reversed: true },
} as const
const laid = {
  straight: undefined,
  'rolled over': rolled,
  'end for end': endForEnd,
  folded,
} as const

/** Cuts the bar into pieces and lays them one on another, clean face to clean face. */
export const restack = operation({
  name: 'restack',
  summary:
    'Cut the bar into equal pieces, grind the faces that will meet, and lay them one on another.',
  takes: 'one',
  parameters,
  loses: ['crop', 'kerf', 'ground'],
  cautions: ['saw', 'dust', 'arc'],
  examples: [
    { values: { pieces: 3 }, before: [samplePack(240, 42, 13)] },
    {
      values: { pieces: 4, lay: 'folded', cleanUp: '0.2 mm' },
      before: [samplePack(240, 42, 13, 12)],
    },
    {
      values: {
        pieces: 5,
        lay: 'rolled over',
        between: '15N20',
        sheet: '1 mm',
        crop: '10 mm',
        kerf: '3 mm',
      },
      before: [samplePack(300, 30, 12)],
    },
    {
      values: { pieces: 64, lay: 'end for end', cleanUp: '0.05 mm', kerf: '1 mm' },
      before: [samplePack(1000, 30, 12)],
    },
  ],
  forward([before], values, { shop, densities }) {
    const n = values.pieces
    const crop = values.crop ?? shop.crop
    const kerf = values.kerf ?? shop.kerf
    const g = values.cleanUp ?? shop.cleanUp
    const cropped = takeOff(before, { x: { low: crop, high: crop } }, 'crop', densities)
    const sawn =
      cropped && takeOff(cropped.after, { x: { low: 0, high: (n - 1) * kerf } }, 'kerf', densities)
    if (!sawn) return failed(tooShort(before, n, crop, kerf))
    const { after: bar } = sawn
    const height = bar.size.height
    if (2 * g >= height) return failed(groundThrough(height, g))

    const length = bar.size.length / n
    const pieces: Laid[] = []
    let lost = 0
    for (let i = 0; i < n; i++) {
      const turn = i % 2 === 1 ? laid[values.lay] : undefined
      const build: Build = turn ? turnBuild(bar.build, turn) : bar.build
      const low = i === 0 ? 0 : g
      const high = i === n - 1 ? 0 : g
      const peeled = peel(build, 'z', low, high, height)
      lost += peeled.lost.low + peeled.lost.high
      const thickness = height - low - high
      if (i > 0 && values.between !== undefined) {
        const sheet = { length, width: bar.size.width, height: values.sheet }
        pieces.push({
          build: solid(values.between, values.sheet),
          thickness: values.sheet,
          volume: barVolume(sheet, 'rectangle'),
        })
      }
      pieces.push({
        build: sharing(peeled.build, pieces),
        thickness,
        volume: (bar.volume / n) * (thickness / height),
      })
    }
    const size = {
      length,
      width: bar.size.width,
      height: pieces.reduce((sum, p) => sum + p.thickness, 0),
    }
    const after: Billet = {
      ...bar,
      size,
      shape: bar.shape === 'cut' ? 'cut' : 'rectangle',
      volume: pieces.reduce((sum, p) => sum + p.volume, 0),
      build: stackAlong('z', pieces, `${n} pieces laid ${values.lay}`),
      bond: 'loose',
      worked: 1,
    }
    const added: Record<string, number> = {}
    const taken: Stock[] = []
    if (values.between !== undefined) {
      const sheets = { length, width: size.width, height: values.sheet * (n - 1) }
      const mass = barVolume(sheets, 'rectangle') * densities[values.between]
      added[values.between] = mass
      taken.push({
        steel: values.between,
        form: 'sheet',
        thickness: values.sheet,
        width: size.width,
        length,
        count: n - 1,
        mass,
      })
    }
    const ground = groundLoss(bar, after, added, densities)
    const thinnest = Math.min(
      ...(['low', 'high'] as const).map(
        (side) => outermost(bar.build, 'z', side)?.thickness ?? Infinity,
      ),
    )
    const warnings = lost > 0 ? [{ ...layersLost(lost, 'ground'), at: 'cleanUp' }] : []
    const notes =
      thinnest < Infinity
        ? [
            `Outer layer ${show(thinnest)} before grinding, ${show(Math.max(0, thinnest - g))} after: grind no more than that.`,
          ]
        : []
    return ok(
      step(after, { losses: [cropped.loss, sawn.loss, ground], added, taken, warnings, notes }),
    )
  },
  movement() {
    return { notYet: 'drawn with the pattern' }
  },
})

/** Like pieces share one build, so that a restack of a bar that is not flat-layered stays small. */
function sharing(build: Build, pieces: readonly Laid[]): Build {
  const before = pieces.at(-1)?.build
  return before && JSON.stringify(before) === JSON.stringify(build) ? before : build
}

function groundLoss(
  bar: Billet,
  after: Billet,
  added: Readonly<Record<string, number>>,
  densities: Readonly<Record<string, number>>,
): Loss {
  const were = massesOf(bar, densities)
  const are = massesOf(after, densities)
  const masses: Record<string, number> = {}
  for (const steel of new Set([...Object.keys(were), ...Object.keys(added)])) {
    masses[steel] = (were[steel] ?? 0) + (added[steel] ?? 0) - (are[steel] ?? 0)
  }
  return { cause: 'ground', masses }
}

function tooShort(bar: Billet, n: number, crop: number, kerf: number): Problem {
  return {
    at: 'pieces',
    what: `a bar ${show(bar.size.length)} long gives no ${n} pieces`,
    why: `crops of ${show(crop)} at each end and ${n - 1} cuts of ${show(kerf)} take it all`,
    try: ['cut fewer pieces', 'draw the bar longer first', 'start from a longer stack'],
  }
}

function groundThrough(height: number, g: number): Problem {
  return {
    at: 'cleanUp',
    what: `grinding ${show(g)} off both faces leaves nothing of a piece ${show(height)} thick`,
    why: 'both faces of a middle piece are ground clean',
    try: [`grind less than ${show(height / 4)} a face`, 'restack at a greater thickness'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
