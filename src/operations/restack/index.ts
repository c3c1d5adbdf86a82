import { type Problem, failed, ok } from '#problem'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { restack as restackWarp } from '#warp'
import { type Billet, type Turn, barVolume, layered, outermost, solid, turnBuild } from '#billet'
import { along, input, moving } from '#movement'
import { takeOff } from '../fire.ts'
import { layTogether } from '../join.ts'
import { type Stock, operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { alike, saw } from '../saw.ts'
import { cleanUp, crop, kerf } from '../usual.ts'
import { unwelded } from '../welds.ts'

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
  crop,
  kerf,
  cleanUp,
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

/** Turn of every other piece. */
const turns: Readonly<Record<string, Turn | undefined>> = {
  straight: undefined,
  'rolled over': {
    x: { was: 'x' },
    y: { was: 'y', reversed: true },
    z: { was: 'z', reversed: true },
  },
  'end for end': {
    x: { was: 'x', reversed: true },
    y: { was: 'y', reversed: true },
    z: { was: 'z' },
  },
  folded: {
    x: { was: 'x', reversed: true },
    y: { was: 'y' },
    z: { was: 'z', reversed: true },
  },
}

/** The same as the map of a restack calls them. */
const words = {
  straight: 'straight',
  'rolled over': 'over',
  'end for end': 'ends',
  folded: 'folded',
} as const

/** Five layers that cross a bar of this length, mm. */
function acrossTheBar(length: number) {
  const sheets = Array.from({ length: 5 }, (_, i) => ({
    steel: i % 2 === 0 ? '1095' : '15N20',
    thickness: length / 5000,
  }))
  return layered('x', sheets)
}

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
    {
      values: { pieces: 2, lay: 'folded' },
      before: [{ ...samplePack(120, 30, 20), build: acrossTheBar(120) }],
    },
    { values: { pieces: 2 }, before: [sampleBar(200, 12, 12, 'W2', 'round')] },
  ],
  forward([before], values, { shop, densities }) {
    const loose = unwelded(before, 'sawing it up')
    if (loose) return failed(loose)
    const n = values.pieces
    const ends = values.crop ?? shop.crop
    const cut = values.kerf ?? shop.kerf
    const clean = values.cleanUp ?? shop.cleanUp
    const short = failed(tooShort(before, n, ends, cut))
    const cropped = takeOff(before, { x: { low: ends, high: ends } }, 'crop', densities)
    if (!cropped) return short
    const { after: bar } = cropped
    const length = (bar.size.length - (n - 1) * cut) / n
    const sawn = length > 0 ? saw(bar, alike(n, length), cut, densities) : undefined
    if (!sawn) return short

    const row: Billet[] = []
    const bright = new Set<Billet>()
    const added: Record<string, number> = {}
    const taken: Stock[] = []
    const sheet =
      values.between === undefined ? undefined : sheetOf(values.between, values.sheet, bar, length)
    if (sheet) bright.add(sheet)
    for (const [i, piece] of sawn.pieces.entries()) {
      const turn = i % 2 === 1 ? turns[values.lay] : undefined
      if (sheet && i > 0) row.push(sheet)
      row.push(turn ? { ...piece, build: turnBuild(piece.build, turn) } : piece)
    }
    const laid = layTogether(
      row,
      {
        axis: 'z',
        cleanUp: clean,
        how: `${n} pieces laid ${values.lay}`,
        spare: bar.spare,
        bright,
      },
      densities,
    )
    if (laid.problems) return laid
    if (sheet && values.between !== undefined) {
      const mass = sheet.volume * (n - 1) * densities[values.between]
      added[values.between] = mass
      const { width } = sheet.size
      taken.push({
        steel: values.between,
        form: 'sheet',
        thickness: values.sheet,
        width,
        length,
        count: n - 1,
        mass,
      })
    }
    const { after, ground, warnings } = laid.ok
    const thinnest = Math.min(
      ...(['low', 'high'] as const).map(
        (side) => outermost(bar.build, 'z', side)?.thickness ?? Infinity,
      ),
    )
    const notes =
      thinnest < Infinity
        ? [
            `Outer layer ${show(thinnest)} before grinding, ${show(Math.max(0, thinnest - clean))} after: grind no more than that.`,
          ]
        : []
    return ok(
      step(after, { losses: [cropped.loss, sawn.kerf, ground], added, taken, warnings, notes }),
    )
  },
  movement([before], values, after, { shop }) {
    const n = values.pieces
    const { between } = values
    const stacked = restackWarp({
      pieces: n,
      length: after.size.length,
      height: before.size.height,
      kerf: values.kerf ?? shop.kerf,
      grind: values.cleanUp ?? shop.cleanUp,
      extra: between === undefined ? 0 : values.sheet,
      turn: words[values.lay],
    })
    const sheet =
      between === undefined ? [] : [{ layers: [{ steel: between, thickness: values.sheet }] }]
    const pieces = Array.from({ length: n }, () => input(0))
    return moving([stacked, along(values.crop ?? shop.crop)], { branches: [...pieces, ...sheet] })
  },
})

/** The extra sheet, as long and as wide as the pieces. */
function sheetOf(steel: string, thickness: number, bar: Billet, length: number): Billet {
  const size = { length, width: bar.size.width, height: thickness }
  return {
    ...bar,
    size,
    shape: 'rectangle',
    volume: barVolume(size, 'rectangle'),
    build: solid(steel, thickness),
  }
}

function tooShort(bar: Billet, n: number, crop: number, kerf: number): Problem {
  return {
    at: 'pieces',
    what: `a bar ${show(bar.size.length)} long gives no ${n} pieces`,
    why: `crops of ${show(crop)} at each end and ${printCount(n - 1, 'cut')} of ${show(kerf)} take it all`,
    try: ['cut fewer pieces', 'draw the bar longer first', 'start from a longer stack'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
