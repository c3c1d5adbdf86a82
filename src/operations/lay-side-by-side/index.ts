import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { type Billet, type Hollow } from '#billet'
import { along, input, laid, meeting, through } from '#movement'
import { sumLosses } from '../fire.ts'
import { layTogether, toOneSide } from '../join.ts'
import { lengthenToMeet } from '../lengthen.ts'
import { THIS, barsByName, nothingInHand, othersIn } from '../named-bars.ts'
import { type Loss, type Operation, operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { alike, longEnough, saw, sawnLength } from '../saw.ts'
import { cleanUp, kerf } from '../usual.ts'
import { unwelded } from '../welds.ts'

const parameters = declare({
  row: {
    form: 'list',
    item: { form: 'bar', help: 'Name of a bar of the job, or "this" for the bar in hand' },
    fewest: 1,
    most: 40,
    help: 'The bars from one side to the other; a bar named twice is cut in two. The bar in hand comes first unless "this" says where',
  },
  kerf,
  cleanUp,
})

/** The row with the bar in hand in it. */
function rowOf(row: readonly string[], before: readonly Billet[]): readonly string[] {
  const inHand = before.length > othersIn(row).length
  return inHand && !row.includes(THIS) ? [THIS, ...row] : row
}

/** Lays bars beside one another, each pair of faces that meet ground flat and bright. */
export const laySideBySide: Operation = operation({
  name: 'lay side by side',
  summary:
    'Lay bars beside one another, cut to one length, the faces that meet ground flat and bright.',
  takes: 'others',
  parameters,
  loses: ['kerf', 'ground'],
  cautions: ['saw', 'dust', 'arc'],
  examples: [
    {
      values: { row: ['left', 'this', 'left'] },
      before: [samplePack(500, 12, 12, 11), { ...samplePack(620, 12, 12, 9), spare: 'x' }],
    },
    {
      values: { row: ['right', 'left', 'right', 'left'], cleanUp: '0.5 mm', kerf: '1 mm' },
      before: [samplePack(600, 12, 12, 11), samplePack(601.2, 12, 12.5, 11)],
    },
    {
      values: { row: ['rod'] },
      before: [sampleBar(300, 10, 10, 'W2', 'round'), sampleBar(280, 10, 10, 'L6', 'octagon')],
    },
  ],
  bars: ({ row }) => othersIn(row),
  forward(before, values, { shop, densities }) {
    const row = rowOf(values.row, before)
    const named = barsByName(before, othersIn(values.row))
    if (row.includes(THIS) && !named.has(THIS)) return nothingInHand('row')
    if (row.length < 2) return failed(onlyOne())
    for (const bar of before) {
      const loose = unwelded(bar, 'cutting it to length')
      if (loose) return failed(loose)
    }
    const cut = values.kerf ?? shop.kerf
    const often = (name: string) => row.filter((one) => one === name).length
    const length = Math.min(
      ...[...named].map(([name, bar]) => (bar.size.length - (often(name) - 1) * cut) / often(name)),
    )
    if (!(length > 0)) return failed(tooShort(row.length, cut))
    const losses: Loss[] = []
    const setAside: Billet[] = []
    const waiting = new Map<string, Billet[]>()
    for (const [name, bar] of named) {
      const sawn = saw(bar, alike(often(name), length), cut, densities)
      if (!sawn) return failed(tooShort(row.length, cut))
      losses.push(sawn.kerf)
      if (sawn.rest) setAside.push(sawn.rest)
      waiting.set(name, [...sawn.pieces])
    }
    const inOrder = row.map((name) => {
      const piece = waiting.get(name)?.shift() as Billet
      return { ...piece, size: { ...piece.size, length } }
    })
    const level = toOneSide(inOrder, 'z', densities)
    const together = layTogether(
      level.pieces,
      {
        axis: 'y',
        cleanUp: values.cleanUp ?? shop.cleanUp,
        how: `${row.length} bars side by side`,
        spare: before.every((bar) => bar.spare === 'x') ? 'x' : before[0].spare,
      },
      densities,
    )
    if (together.problems) return together
    const round = inOrder.some((bar) => bar.shape === 'round' || bar.shape === 'octagon')
    return ok(
      step(round ? { ...together.ok.after, hollow: rodsIn(level.pieces) } : together.ok.after, {
        losses: sumLosses([...losses, ...level.losses, together.ok.ground]),
        setAside,
        warnings: [
          ...level.warnings,
          ...together.ok.warnings,
          ...(round ? [gaps(together.ok.after)] : []),
        ],
        notes: ['Lay mark to mark: one bar turned the wrong way makes another pattern.'],
      }),
    )
  },
  backward(demand, values, before, smithy) {
    if (before.some((bar) => bar.spare !== 'x') && before[0].spare !== 'x') {
      const rest = before.slice(1)
      const first = lengthenToMeet(demand, before[0], (bar) =>
        laySideBySide.forward([bar, ...rest], values as never, smithy),
      )
      return first.problems ? first : ok([first.ok[0], ...rest.map((bar) => bar.size)])
    }
    const row = rowOf(values.row, before)
    const cut = values.kerf ?? smithy.shop.kerf
    const names = [...barsByName(before, othersIn(values.row)).keys()]
    const needed = names.map((name) => {
      const often = row.filter((one) => one === name).length
      return often === 0 ? 0 : sawnLength(often, demand.length, cut)
    })
    const short = sidesShort(
      demand,
      laySideBySide.forward(before, values as never, smithy).ok?.after,
    )
    return short ? failed(short) : longEnough(before, needed)
  },
  movement(before, values, after, { shop }) {
    const names = [...barsByName(before, othersIn(values.row)).keys()]
    const apart = after.size.length + (values.kerf ?? shop.kerf)
    const cut = new Map<string, number>()
    const pieces = rowOf(values.row, before).map((name) => {
      const which = names.indexOf(name)
      const k = cut.get(name) ?? 0
      cut.set(name, k + 1)
      return { side: before[which].size.width, from: through([along(k * apart)], input(which)) }
    })
    return laid('y', meeting(pieces, values.cleanUp ?? shop.cleanUp))
  },
})

/** Where each rod lies in the row: what its box leaves open. */
function rodsIn(pieces: readonly Billet[]): Hollow {
  const whole = pieces.reduce((sum, piece) => sum + piece.size.width, 0)
  let at = 0
  const rods = pieces.map(({ size, shape }) => {
    const from = at
    at += size.width / whole
    return { from, to: at, section: shape === 'cut' ? 'rectangle' : shape } as const
  })
  return { form: 'rods', rods }
}

/** A width or height that more length cannot bring. */
function sidesShort(
  demand: { readonly width: number; readonly height: number },
  after: Billet | undefined,
): Problem | undefined {
  const side = (['width', 'height'] as const).find((s) => after && after.size[s] < demand[s] - 1e-9)
  if (!side || !after) return undefined
  return {
    at: 'row',
    what: `the row is ${printQuantity(after.size[side], 'length')} in ${side}; ${printQuantity(demand[side], 'length')} is wanted`,
    why: `the ${side} is that of the bars laid together`,
    try: [side === 'width' ? 'lay more or wider bars' : 'use thicker bars', 'draw out less after'],
  }
}

function onlyOne(): Problem {
  return {
    at: 'row',
    what: 'one bar alone makes no row',
    why: 'at least two pieces lie side by side',
    try: ['name another bar', 'name the same bar twice: it is cut in two'],
  }
}

function tooShort(pieces: number, kerf: number): Problem {
  return {
    at: 'row',
    what: 'a bar is too short to be cut up as often as it is named',
    why: `${pieces} pieces lie in the row and each cut takes ${printQuantity(kerf, 'length')}`,
    try: ['name it less often', 'make the bar longer'],
  }
}

function gaps(after: Billet): Problem {
  const { length, width, height } = after.size
  const empty = 1 - after.volume / (length * width * height)
  return {
    at: 'row',
    what: `${printQuantity(empty, 'ratio')} of the row is gaps between rounded corners`,
    why: 'gaps must be closed at welding heat or ground out; one eighth of a bundle was lost to them (common practice)',
    try: ['square the bars up first', 'grind deeper flats where they meet'],
  }
}
