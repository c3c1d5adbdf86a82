import { type Problem, failed, ok } from '#problem'
import { SAME_LENGTH } from '#geometry'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { turn } from '#warp'
import { type Billet, type Densities, type Turn, barVolume, solid, turnBuild } from '#billet'
import { along, input, laid, meeting, through } from '#movement'
import { sumLosses } from '../fire.ts'
import { takeFlats } from '../flats.ts'
import { layTogether } from '../join.ts'
import { lengthenToMeet } from '../lengthen.ts'
import { THIS, barsByName, nothingInHand, othersIn } from '../named-bars.ts'
import { type Loss, type Operation, type Stock, operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { alike, longEnough, saw, sawnLength } from '../saw.ts'
import { cleanUp, kerf } from '../usual.ts'
import { unwelded } from '../welds.ts'

const thickness = { form: 'quantity', of: 'length', min: 2e-5, max: 0.1 } as const

const parameters = declare({
  layers: {
    form: 'choice',
    options: {
      three: 'san mai: a core between two jackets',
      five: 'go mai: another layer between the core and each jacket',
    },
    default: 'three',
    help: 'How many thick layers there are',
  },
  core: {
    form: 'bar',
    optional: true,
    help: 'Name of the core, where this step begins a bar; left out, the bar in hand',
  },
  jacket: {
    form: 'bar',
    optional: true,
    help: 'Name of the bar that is cut in two for the outsides',
  },
  jacketSteel: { form: 'steel', optional: true, help: 'Or a plain sheet of this steel outside' },
  jacketThickness: {
    ...thickness,
    default: '5 mm',
    help: 'Thickness of each plain sheet outside',
  },
  between: {
    form: 'bar',
    optional: true,
    help: 'Name of the bar that is cut in two and laid next to the core, of five layers',
  },
  betweenSteel: {
    form: 'steel',
    optional: true,
    help: 'Or a plain sheet of this steel next to the core, of five layers',
  },
  betweenThickness: {
    ...thickness,
    default: '1 mm',
    help: 'Thickness of each plain sheet next to the core',
  },
  kerf,
  cleanUp,
})

const over: Turn = {
  x: { was: 'x' },
  y: { was: 'y', reversed: true },
  z: { was: 'z', reversed: true },
}

/** Lays jackets on both faces of a core, the same outside out on both. */
export const clad: Operation = operation({
  name: 'clad',
  summary: 'Lay jackets on both faces of the core, alike, so that the core comes out at the edge.',
  takes: 'others',
  parameters,
  loses: ['kerf', 'trim', 'ground'],
  cautions: ['saw', 'dust', 'arc'],
  examples: [
    {
      values: { jacketSteel: '304', jacketThickness: '3/8 in' },
      before: [sampleBar(150, 40, 6.35, '52100')],
    },
    {
      values: { jacket: 'outside', cleanUp: '0.5 mm' },
      before: [sampleBar(160, 38, 6, 'W2'), samplePack(340, 40, 9)],
    },
    {
      values: {
        layers: 'five',
        core: 'middle',
        jacket: 'outside',
        betweenSteel: '15N20',
        kerf: '1 mm',
      },
      before: [sampleBar(150, 40, 6, 'W2'), samplePack(301, 40, 9)],
    },
    {
      values: { layers: 'five', jacketSteel: '1018', between: 'thin' },
      before: [samplePack(150, 40, 6), sampleBar(310, 40, 2, 'L6')],
    },
  ],
  bars: (values) => othersIn([values.core, values.jacket, inner(values).bar]),
  forward(before, values, { shop, densities }) {
    const named = barsByName(before, othersIn([values.core, values.jacket, inner(values).bar]))
    const core = named.get(values.core ?? THIS)
    if (!core || before.length !== named.size) return nothingInHand('core')
    for (const bar of before) {
      const loose = unwelded(bar, 'cutting it to length')
      if (loose) return failed(loose)
      if (bar.shape === 'round' || bar.shape === 'octagon') return failed(notFlat())
    }
    const unclear = [...stated('jacket', outer(values)), ...stated('between', inner(values))]
    if (values.layers === 'five' ? unclear.length > 0 : unclear.some((p) => p.at === 'jacket'))
      return { problems: unclear }
    const cut = values.kerf ?? shop.kerf
    const clean = values.cleanUp ?? shop.cleanUp
    const bars = [...named.values()]
    const length = Math.min(
      ...bars.map((bar) => (bar === core ? bar.size.length : (bar.size.length - cut) / 2)),
    )
    const width = Math.min(...bars.map((bar) => bar.size.width))
    if (!(length > 0)) return failed(tooShort(cut))

    const losses: Loss[] = []
    const setAside: Billet[] = []
    const added: Record<string, number> = {}
    const taken: Stock[] = []
    const bright = new Set<Billet>()
    /** Like pieces cut to the common length and width. */
    const pieces = (bar: Billet, count: number): Billet[] => {
      const sawn = saw(bar, alike(count, length), cut, densities)
      if (!sawn) return []
      losses.push(sawn.kerf)
      if (sawn.rest) setAside.push(sawn.rest)
      return sawn.pieces.map((piece) => {
        const side = (piece.size.width - width) / 2
        const flat = takeFlats(piece, { y: { low: side, high: side } }, 'trim', densities)
        if (flat) losses.push(flat.loss)
        const after = flat?.after ?? piece
        return { ...after, size: { ...after.size, length, width } }
      })
    }
    const pair = (layer: Cladding): Billet[] => {
      if (layer.bar !== undefined) return pieces(named.get(layer.bar) as Billet, 2)
      const steel = layer.steel as string
      const { sheet, stock } = sheets(steel, { length, width, height: layer.thickness }, densities)
      added[steel] = (added[steel] ?? 0) + stock.mass
      taken.push(stock)
      bright.add(sheet)
      return [sheet, sheet]
    }
    const [middle] = pieces(core, 1)
    const outside = pair(outer(values))
    const next = values.layers === 'five' ? pair(inner(values)) : []
    const upper = [...next.slice(1), outside[1]]
    const lower = [outside[0], ...next.slice(0, 1)].map((bar) =>
      bright.has(bar) ? bar : { ...bar, build: turnBuild(bar.build, over) },
    )
    if (!middle || !outside[1]) return failed(tooShort(cut))
    const row = [...lower, middle, ...upper]
    const together = layTogether(
      row,
      {
        axis: 'z',
        cleanUp: clean,
        how: `${row.length} layers clad`,
        spare: core.spare,
        bright,
      },
      densities,
    )
    if (together.problems) return together
    return ok(
      step(together.ok.after, {
        losses: sumLosses([...losses, together.ok.ground]),
        added,
        taken,
        setAside,
        warnings: together.ok.warnings,
        notes: [
          'Turn it over at every heat; dip an end in acid each time its thickness has halved: the core must stay in the middle.',
          `Core ${printQuantity(middle.size.height / together.ok.after.size.height, 'ratio')} of the thickness.`,
        ],
      }),
    )
  },
  backward(demand, values, before, smithy) {
    if (before[0].spare !== 'x') {
      const first = lengthenToMeet(demand, before[0], (bar) =>
        clad.forward([bar, ...before.slice(1)], values as never, smithy),
      )
      return first.problems ? first : ok([first.ok[0], ...before.slice(1).map((bar) => bar.size)])
    }
    const now = clad.forward(before, values as never, smithy).ok?.after.size
    const short = (['width', 'height'] as const).find(
      (s) => now && now[s] < demand[s] - SAME_LENGTH,
    )
    if (short) return failed(tooSlight(short, demand[short]))
    const named = barsByName(before, othersIn([values.core, values.jacket, inner(values).bar]))
    const cut = values.kerf ?? smithy.shop.kerf
    return longEnough(
      before,
      [...named.keys()].map((name) =>
        name === (values.core ?? THIS) ? demand.length : sawnLength(2, demand.length, cut),
      ),
    )
  },
  movement(before, values, after, { shop }) {
    const names = [
      ...barsByName(before, othersIn([values.core, values.jacket, inner(values).bar])).keys(),
    ]
    const apart = after.size.length + (values.kerf ?? shop.kerf)
    const piece = (layer: Cladding, k: number) => {
      const { bar, steel, thickness } = layer
      if (bar === undefined)
        return {
          side: thickness,
          from: { layers: [{ steel: steel ?? '', thickness }] },
          bright: true,
        }
      const which = names.indexOf(bar)
      const warps = [k === 0 ? turn('over') : undefined, along(k * apart)]
      return { side: before[which].size.height, from: through(warps, input(which)) }
    }
    const which = names.indexOf(values.core ?? THIS)
    const core = { side: before[which].size.height, from: input(which) }
    const five = values.layers === 'five'
    const row = [
      piece(outer(values), 0),
      ...(five ? [piece(inner(values), 0)] : []),
      core,
      ...(five ? [piece(inner(values), 1)] : []),
      piece(outer(values), 1),
    ]
    return laid('z', meeting(row, values.cleanUp ?? shop.cleanUp))
  },
})

/** One layer of cladding: a bar, or a plain sheet. */
interface Cladding {
  readonly bar?: string
  readonly steel?: string
  readonly thickness: number
}

interface Stated {
  readonly layers: string
  readonly jacket?: string
  readonly jacketSteel?: string
  readonly jacketThickness: number
  readonly between?: string
  readonly betweenSteel?: string
  readonly betweenThickness: number
}

function outer({ jacket, jacketSteel, jacketThickness }: Stated): Cladding {
  return { bar: jacket, steel: jacketSteel, thickness: jacketThickness }
}

/** Of three layers there is none. */
function inner({ layers, between, betweenSteel, betweenThickness }: Stated): Cladding {
  if (layers !== 'five') return { thickness: betweenThickness }
  return { bar: between, steel: betweenSteel, thickness: betweenThickness }
}

function stated(at: 'jacket' | 'between', { bar, steel }: Cladding): Problem[] {
  if ((bar === undefined) !== (steel === undefined)) return []
  const both = bar !== undefined
  const steelOf = `${at}Steel`
  return [
    {
      at,
      what: both
        ? 'a bar and a plain steel are both stated'
        : 'neither a bar nor a plain steel is stated',
      why: `the layer is one or the other`,
      try: [both ? `state "${at}" or "${steelOf}", not both` : `state "${at}" or "${steelOf}"`],
    },
  ]
}

function sheets(steel: string, size: Billet['size'], densities: Densities) {
  const sheet: Billet = {
    size,
    shape: 'rectangle',
    volume: barVolume(size, 'rectangle'),
    build: solid(steel, size.height),
    bond: 'welded',
    temper: 'annealed',
    worked: 1,
    spare: 'x',
  }
  const stock: Stock = {
    steel,
    form: 'sheet',
    thickness: size.height,
    width: size.width,
    length: size.length,
    count: 2,
    mass: 2 * sheet.volume * densities[steel],
  }
  return { sheet, stock }
}

function notFlat(): Problem {
  return {
    at: '',
    what: 'a round or eight-sided bar has no face to lay a jacket on',
    why: 'core and jackets meet along flats',
    try: ['square the bar up first'],
  }
}

function tooShort(kerf: number): Problem {
  return {
    at: 'jacket',
    what: 'a jacket bar is too short to be cut in two',
    why: `the cut alone takes ${printQuantity(kerf, 'length')}`,
    try: ['make the jacket bar longer'],
  }
}

function tooSlight(side: string, wanted: number): Problem {
  return {
    at: '',
    what: `core and jackets together do not make ${printQuantity(wanted, 'length')} in ${side}`,
    why: `longer bars make it longer; the ${side} is theirs`,
    try: ['use thicker or wider bars', 'draw out less after'],
  }
}
