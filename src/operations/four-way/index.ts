import { type Problem, type Result, failed, ok } from '#problem'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { tile } from '#warp'
import { type Billet, type Densities, type Turn, turnBuild, turnSize } from '#billet'
import { along, input, moving, through } from '#movement'
import { sumLosses, takeOff } from '../fire.ts'
import { takeFlats } from '../flats.ts'
import { layersLost } from '../forge-in-heats.ts'
import { layTogether, toOneSide } from '../join.ts'
import { type Loss, type Step, operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { alike, saw } from '../saw.ts'
import { cleanUp, crop, kerf } from '../usual.ts'
import { unwelded } from '../welds.ts'
import { cutDiagonally, apexOf, trianglesFrom } from './triangles.ts'

const parameters = declare({
  across: {
    form: 'count',
    min: 2,
    max: 4,
    default: 2,
    help: 'Pieces across and up the new section: 2 for four-way, 3 for nine, 4 for sixteen',
  },
  lay: {
    form: 'choice',
    options: {
      bookmatched:
        'every piece the mirror image of its neighbours, by turning it end for end or over',
      rotated: 'each piece a quarter turn on from the last, round the middle',
      plain: 'every piece the same way up',
      radial:
        'sawn lengthwise on both diagonals: four triangles with their layers running to the middle; the other four are put by',
      nested:
        'sawn lengthwise on both diagonals: four triangles with their layers running round the middle; the other four are put by',
    },
    default: 'bookmatched',
    help: 'How the pieces are turned before they are laid together',
  },
  crop,
  kerf,
  cleanUp,
})

const whole: Turn = { x: { was: 'x' }, y: { was: 'y' }, z: { was: 'z' } }
const endForEnd: Turn = {
  x: { was: 'x', reversed: true },
  y: { was: 'y', reversed: true },
  z: { was: 'z' },
}
const overItsEnd: Turn = {
  x: { was: 'x', reversed: true },
  y: { was: 'y' },
  z: { was: 'z', reversed: true },
}
const rolled: Turn = {
  x: { was: 'x' },
  y: { was: 'y', reversed: true },
  z: { was: 'z', reversed: true },
}
const quarter: Turn = { x: { was: 'x' }, y: { was: 'z' }, z: { was: 'y', reversed: true } }
const back: Turn = { x: { was: 'x' }, y: { was: 'z', reversed: true }, z: { was: 'y' } }

/** Turn of the piece in an odd or even column and row. */
const turns = {
  plain: [
    [whole, whole],
    [whole, whole],
  ],
  bookmatched: [
    [whole, endForEnd],
    [overItsEnd, rolled],
  ],
  rotated: [
    [whole, quarter],
    [back, rolled],
  ],
} as const satisfies Record<string, readonly (readonly Turn[])[]>

/** Quarter turns back of each piece laid rotated, row by row from below. */
function quarters(n: number): number[] {
  const each = [
    [0, 3],
    [1, 2],
  ]
  return Array.from({ length: n * n }, (_, i) => each[Math.floor(i / n) % 2][(i % n) % 2])
}

/** Cuts the bar into n² pieces and lays them together n across and n up: end-grain patterns multiply. */
export const fourWay = operation({
  name: 'four-way',
  summary: 'Cut the bar into pieces and lay them together two, three or four across and up.',
  takes: 'one',
  parameters,
  loses: ['crop', 'kerf', 'ground'],
  cautions: ['saw', 'dust', 'arc'],
  examples: [
    { values: {}, before: [samplePack(300, 12.7, 12.7)] },
    {
      values: { across: 4, lay: 'plain', cleanUp: '0.2 mm' },
      before: [samplePack(600, 12.7, 12.7)],
    },
    { values: { across: 3, lay: 'rotated', crop: '0 mm' }, before: [samplePack(400, 16, 15.6)] },
    { values: { lay: 'radial' }, before: [samplePack(200, 30, 30)] },
    { values: { lay: 'nested', kerf: '1 mm', cleanUp: '0 mm' }, before: [samplePack(200, 30, 30)] },
    { values: { across: 3 }, before: [sampleBar(400, 12, 12, 'W2', 'round')] },
  ],
  forward([before], values, { shop, densities }) {
    const loose = unwelded(before, 'sawing it up')
    if (loose) return failed(loose)
    const diagonal = values.lay === 'radial' || values.lay === 'nested'
    if (diagonal && (values.across !== 2 || before.shape !== 'rectangle'))
      return failed(onlySquare(values.across))
    const n = values.across
    const count = diagonal ? 2 : n * n
    const ends = values.crop ?? shop.crop
    const cut = values.kerf ?? shop.kerf
    const clean = values.cleanUp ?? shop.cleanUp
    const short = failed(tooShort(before.size.length, count, ends, cut))
    const cropped = takeOff(before, { x: { low: ends, high: ends } }, 'crop', densities)
    if (!cropped) return short
    const { length } = cropped.after.size
    const each = (length - (count - 1) * cut) / count
    const sawn = each > 0 ? saw(cropped.after, alike(count, each), cut, densities) : undefined
    if (!sawn) return short
    const turned = diagonal || values.lay === 'rotated'
    const square = turned ? makeSquare(sawn.pieces, densities) : ok(unchanged(sawn.pieces))
    if (square.problems) return square
    const { pieces, losses, warnings } = square.ok
    const before2 = [cropped.loss, sawn.kerf, ...losses]
    const laid = diagonal
      ? layTriangles(pieces, values.lay as 'radial' | 'nested', cut, clean, densities)
      : layGrid(pieces, n, turns[values.lay as keyof typeof turns], clean, densities)
    if (laid.problems) return laid
    return ok({
      ...laid.ok,
      losses: sumLosses([...before2, ...laid.ok.losses]),
      warnings: [...warnings, ...laid.ok.warnings],
      notes: [...laid.ok.notes, 'Mark one end of every piece before it leaves the saw.'],
    })
  },
  movement([before], values, after, { shop }) {
    const n = values.across
    const cut = values.kerf ?? shop.kerf
    const clean = values.cleanUp ?? shop.cleanUp
    const start = along(values.crop ?? shop.crop)
    const { width, height } = before.size
    const { lay } = values
    const square = Math.min(width, height)
    const { length } = after.size
    if (lay === 'radial' || lay === 'nested') {
      const seat = { lay, side: after.size.width, apart: length + cut, apex: apexOf(cut, clean) }
      return moving(
        [tile({ form: 'triangles', length, width: seat.side / 2, height: seat.side / 2 })],
        {
          branches: trianglesFrom(seat).map((warps) => through([...warps, start], input(0))),
        },
      )
    }
    const sizes = { across: n, high: n, length, grind: clean, kerf: cut }
    const laid =
      lay === 'rotated'
        ? tile({ form: 'quarters', ...sizes, width: square, height: square, quarters: quarters(n) })
        : tile({ form: lay === 'plain' ? 'straight' : 'bookmatched', ...sizes, width, height })
    return moving([laid, start])
  },
})

interface Squared {
  readonly pieces: readonly Billet[]
  readonly losses: readonly Loss[]
  readonly warnings: readonly Problem[]
}

function unchanged(pieces: readonly Billet[]): Squared {
  return { pieces, losses: [], warnings: [] }
}

/** Pieces that will be turned must be square: a little over is ground off, more is a problem. */
function makeSquare(pieces: readonly Billet[], densities: Densities): Result<Squared> {
  const { width, height } = pieces[0].size
  const over = Math.abs(width - height)
  const least = Math.min(width, height)
  if (over > 0.1 * least) return failed(notSquare(width, height))
  if (over === 0) return ok(unchanged(pieces))
  const axis = width > height ? 'y' : 'z'
  const losses: Loss[] = []
  const even = pieces.map((piece) => {
    const probe = { ...piece, size: { ...piece.size, width: least, height: least } }
    const { pieces: two, losses: off } = toOneSide([piece, probe], axis, densities)
    losses.push(...off)
    return two[0]
  })
  return ok({ pieces: even, losses, warnings: [] })
}

/** Rows of n pieces, then the rows one on another. */
function layGrid(
  pieces: readonly Billet[],
  n: number,
  by: readonly (readonly Turn[])[],
  cleanUp: number,
  densities: Densities,
): Result<Step> {
  const losses: Loss[] = []
  const warnings: Problem[] = []
  const rows: Billet[] = []
  const spare = pieces[0].spare
  for (let row = 0; row < n; row++) {
    const inRow: Billet[] = []
    for (const [column, piece] of pieces.slice(row * n, (row + 1) * n).entries()) {
      const turned = turnPiece(piece, by[row % 2][column % 2])
      // All faces that will meet at once: flats on a round rod do not lie side by side.
      const off = { y: mated(column, n, cleanUp), z: mated(row, n, cleanUp) }
      const clean = takeFlats(turned, off, 'ground', densities)
      if (!clean) return failed(groundThrough(turned.size, cleanUp))
      losses.push(clean.loss)
      if (clean.lost > 0) warnings.push({ ...layersLost(clean.lost, 'grinding'), at: 'cleanUp' })
      inRow.push(clean.after)
    }
    const laid = layTogether(
      inRow,
      { axis: 'y', cleanUp: 0, how: `${n} pieces across`, spare },
      densities,
    )
    if (laid.problems) return laid
    rows.push(laid.ok.after)
  }
  const up = layTogether(rows, { axis: 'z', cleanUp: 0, how: `${n} rows up`, spare }, densities)
  if (up.problems) return up
  const once = warnings.slice(0, 1)
  return ok(step(up.ok.after, { losses, warnings: once }))
}

function turnPiece(piece: Billet, turn: Turn): Billet {
  if (turn === whole) return piece
  return { ...piece, size: turnSize(piece.size, turn), build: turnBuild(piece.build, turn) }
}

/** Ground off the two sides of the i-th of n in a row: only where it meets another. */
function mated(i: number, n: number, cleanUp: number) {
  return { low: i === 0 ? 0 : cleanUp, high: i === n - 1 ? 0 : cleanUp }
}

function layTriangles(
  pieces: readonly Billet[],
  lay: 'radial' | 'nested',
  kerf: number,
  cleanUp: number,
  densities: Densities,
): Result<Step> {
  const cut = cutDiagonally(pieces[0], kerf, cleanUp, densities)
  if (!cut) return failed(sawnThrough(pieces[0].size.width, kerf, cleanUp))
  const { build } = pieces[0]
  const flat = build.form === 'layered' && build.axis !== 'x' && build.layers.length > 1
  const asLaid = { bond: 'loose', temper: 'as forged', worked: 1 } as const
  return ok(
    step(
      { ...cut[lay], ...asLaid },
      {
        losses: [cut.kerf, cut.ground],
        setAside: [{ ...cut[lay === 'radial' ? 'nested' : 'radial'], ...asLaid }],
        warnings: flat ? [] : [noFlatLayers()],
        notes: [
          'Sort the triangles: two of every four have their layers along the outside, two across it.',
          'The very middle is smeared over two or three layers when it is welded.',
        ],
      },
    ),
  )
}

function onlySquare(across: number): Problem {
  return {
    at: 'lay',
    what: 'triangles are cut from a square bar and laid as four',
    why:
      across === 2
        ? 'this bar is not square-edged'
        : 'cut on the diagonals there are four, not more',
    try: ['square the bar up first', 'state 2 across', 'lay the pieces bookmatched'],
  }
}

function notSquare(width: number, height: number): Problem {
  return {
    at: 'lay',
    what: `pieces ${show(width)} × ${show(height)} do not fit together when some are turned`,
    why: 'a quarter turn changes width for height',
    try: ['square the bar up first', 'lay the pieces bookmatched or plain'],
  }
}

function tooShort(length: number, count: number, crop: number, kerf: number): Problem {
  return {
    at: 'across',
    what: `a bar ${show(length)} long gives no ${count} pieces`,
    why: `crops of ${show(crop)} at each end and ${printCount(count - 1, 'cut')} of ${show(kerf)} take it all`,
    try: ['fewer pieces across', 'draw the bar longer first', 'start from a longer stack'],
  }
}

function sawnThrough(width: number, kerf: number, cleanUp: number): Problem {
  return {
    at: 'kerf',
    what: `nothing is left of triangles cut from a bar ${show(width)} across`,
    why: `the cut takes ${show(kerf)} and each face is ground by ${show(cleanUp)}`,
    try: ['cut a thicker bar', 'use a thinner blade'],
  }
}

function groundThrough({ width, height }: Billet['size'], cleanUp: number): Problem {
  return {
    at: 'cleanUp',
    what: `grinding ${show(cleanUp)} off each face leaves nothing of pieces ${show(width)} × ${show(height)}`,
    why: 'a piece between two others is ground clean on both faces',
    try: [`grind less than ${show(Math.min(width, height) / 4)} a face`, 'use thicker pieces'],
  }
}

function noFlatLayers(): Problem {
  return {
    at: 'lay',
    what: 'cut on the diagonals, this bar gives four triangles alike',
    why: 'only flat layers along the bar run to the middle or round it',
    try: ['cut a bar of flat layers', 'lay it bookmatched'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
