import { type Problem, failed, ok } from '#problem'
import { type Size, SAME_LENGTH, axisLength } from '#geometry'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import type { PieceSolid } from '#piece'
import type { Shop } from '#shop'
import {
  type Billet,
  type Build,
  type Densities,
  UNWEIGHED,
  peel,
  volumesOf,
  worked,
} from '#billet'
import { skinned, stays } from '#movement'
import { lossBetween } from '../fire.ts'
import { groundShares } from '../ground-shares.ts'
import { type Loss, operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { saw } from '../saw.ts'
import { featuresToCome, isOutlined, isShaped, noPiece, stockVolume } from '../shaped.ts'

const parameters = declare({
  leave: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 5e-3,
    optional: true,
    help: "Left on every face for hardening scale and polish; left out, the shop's polish stock",
  },
  stock: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.01,
    optional: true,
    help: "Ground off every face of a straight bar at the least, so that the forging skin goes; left out, the shop's grinding stock",
  },
})

/** A remnant shorter than this is not worth a cut. */
const WORTH_KEEPING = 0.02

/** Grinds the finished piece out of the bar, with a little left on every face. */
export const grindToShape = operation({
  name: 'grind to shape',
  summary:
    'Grind the piece out of the bar: outline, bevels and tapers, leaving a little on every face for hardening and polish.',
  takes: 'one',
  parameters,
  loses: ['ground', 'kerf'],
  cautions: ['dust', 'saw'],
  examples: [
    {
      values: {},
      before: [samplePack(260, 66, 11, 25)],
      piece: {
        kind: 'plaque',
        length: '140 mm',
        width: '60 mm',
        thickness: '8 mm',
        holes: 'corners',
      },
    },
    {
      values: { leave: '0.3 mm', stock: '0.5 mm' },
      before: [{ ...samplePack(145, 66, 11, 25), spare: 'x' }],
      piece: {
        kind: 'plaque',
        length: '140 mm',
        width: '60 mm',
        thickness: '8 mm',
        edge: 'radius',
        edgeSize: '1 mm',
      },
    },
  ],
  forward([before], values, { shop, densities, piece }) {
    if (!piece) return failed(noPiece('to grind to'))
    if (before.bond !== 'welded') return failed(notWelded(before))
    const leave = values.leave ?? shop.polishStock
    const wants = blankFor(before, piece, values, shop)
    const short = missing(before, wants, piece)
    if (short.length > 0) return failed(...short)

    const size: Size = {
      length: piece.size.length + 2 * leave,
      width: piece.size.width + 2 * leave,
      height: piece.size.height + 2 * leave,
    }
    const cut = cutOff(before, wants.length, shop.kerf, densities)
    const bar = cut.bar
    const volume = piece.volume + featuresToCome(bar, piece) + stockVolume(piece, leave)
    if (volume > bar.volume || isShaped(before)) return failed(tooLittle(before, volume))
    const flat = bar.build.form === 'layered' ? bar.build.axis : undefined
    const side = flat && axisLength[flat]
    const off = side ? (bar.size[side] - size[side]) / 2 : 0
    const peeled = flat && side ? peel(bar.build, flat, off, off, bar.size[side]).build : bar.build
    const after = sound(
      {
        ...bar,
        size,
        shape: 'cut',
        volume,
        build: groundBuild(peeled, bar, piece, leave, densities),
        made: [...(bar.made ?? []), 'shape'],
        hollow: undefined,
        groundFrom: blankOf(bar),
      },
      bar,
    )
    const ground = lossBetween(bar, after, 'ground', densities)
    return ok(
      step(after, {
        losses: [...cut.losses, ground],
        setAside: cut.remnant,
        notes: [
          `${show(leave)} is left on every face; stop there.`,
          `Grinding takes ${figure((100 * (bar.volume - volume)) / bar.volume)} % of the bar.`,
        ],
      }),
    )
  },
  backward(demand, values, [before], { shop, piece }) {
    if (!piece) return failed(noPiece('to grind to'))
    const leave = values.leave ?? shop.polishStock
    for (const side of ['length', 'width', 'height'] as const) {
      const more = (demand[side] - piece.size[side]) / 2
      if (more > leave + SAME_LENGTH) return failed(leaveMore(side, more, leave))
    }
    return ok([blankFor(before, piece, values, shop)])
  },
  movement([before], values, after, { shop, piece }) {
    if (!piece) return stays
    const { bar } = cutOff(
      before,
      blankFor(before, piece, values, shop).length,
      shop.kerf,
      UNWEIGHED,
    )
    return skinned(bar, after)
  },
})

/** Where only sizes are wanted its steels are not counted cell by cell. */
function groundBuild(
  peeled: Build,
  bar: Billet,
  piece: PieceSolid,
  leave: number,
  densities: Densities,
): Build {
  const ground = worked('ground to shape', peeled)
  if (densities === UNWEIGHED) return ground
  const { build, size } = blankOf(bar)
  return { ...ground, shares: groundShares(build, size, piece, leave) }
}

/** The bar as it was forged to the piece's outline, else as it lies. */
function blankOf(bar: Billet): NonNullable<Billet['groundFrom']> {
  return bar.groundFrom ?? { build: bar.build, size: bar.size }
}

/** The least bar the piece can be ground from. One forged or bent to its outline needs only its skin. */
function blankFor(
  bar: Billet,
  piece: PieceSolid,
  values: { readonly leave?: number; readonly stock?: number },
  shop: Shop,
): Size {
  const leave = values.leave ?? shop.polishStock
  const near = isOutlined(bar)
  const off = near ? leave : leave + (values.stock ?? shop.grindStock)
  const { length, width, height } = near || piece.blank.bent ? piece.size : piece.blank.size
  return { length: length + 2 * off, width: width + 2 * off, height: height + 2 * off }
}

/** Whether the bar would hold the piece if it lay another way. */
function holdsTurned(bar: Billet, wants: Size): boolean {
  const rising = ({ length, width, height }: Size) => [length, width, height].sort((a, b) => a - b)
  const has = rising(bar.size)
  return rising(wants).every((side, i) => has[i] >= side - SAME_LENGTH)
}

function missing(bar: Billet, wants: Size, piece: PieceSolid): Problem[] {
  const turn = holdsTurned(bar, wants)
    ? ['turn the bar first: lying another way it holds the piece']
    : []
  return (['length', 'width', 'height'] as const).flatMap((side) => {
    const less = wants[side] - bar.size[side]
    if (less <= SAME_LENGTH) return []
    const measured = (m: number) =>
      ({ length: `${show(m)} long`, width: `${show(m)} wide`, height: `${show(m)} thick` })[side]
    return [
      {
        at: '',
        what: `the bar is ${show(less)} too small in ${side} for the piece`,
        why: `it is ${measured(bar.size[side])}; the piece with its stock is ${measured(wants[side])} (${piece.blank.bent ? 'ground out of a slice, not bent' : piece.blank.note})`,
        try: [
          ...turn,
          side === 'length'
            ? 'start from a longer stack, or leave its length free'
            : `leave the bar ${measured(wants[side])} in the step before`,
          'leave less stock on the faces',
          'make the piece smaller',
        ],
      },
    ]
  })
}

function leaveMore(side: keyof Size, more: number, leave: number): Problem {
  return {
    at: 'leave',
    what: `${show(leave)} is left on every face; the next steps take ${show(more)}`,
    why: `the piece would come out too small in ${side}`,
    try: [`leave ${show(more)} on every face`],
  }
}

/** What the bar is longer than need be is cut off and kept, where it is worth it. */
function cutOff(
  bar: Billet,
  length: number,
  kerf: number,
  densities: Densities,
): { bar: Billet; losses: readonly Loss[]; remnant: readonly Billet[] } {
  const whole = { bar, losses: [], remnant: [] }
  if (bar.size.length - length - kerf < WORTH_KEEPING || isOutlined(bar)) return whole
  const sawn = saw(bar, [length], kerf, densities)
  if (!sawn?.rest) return whole
  return { bar: sawn.pieces[0], losses: [sawn.kerf], remnant: [sawn.rest] }
}

/** Shares of the grid that ask for more of a steel than the bar holds give way to the bar's own. */
function sound(after: Billet, bar: Billet): Billet {
  const [are, were] = [volumesOf(after), volumesOf(bar)]
  const over = Object.keys(are).some((steel) => are[steel] > (were[steel] ?? 0))
  if (!over || after.build.form !== 'worked') return after
  const whole = bar.volume
  const shares = Object.fromEntries(Object.entries(were).map(([steel, v]) => [steel, v / whole]))
  return { ...after, build: { ...after.build, shares } }
}

function notWelded(bar: Billet): Problem {
  return {
    at: '',
    what: `the stack is only ${bar.bond}; it would fall apart on the grinder`,
    why: 'the pieces are not one metal until they are welded',
    try: ['weld the stack first'],
  }
}

function tooLittle(bar: Billet, volume: number): Problem {
  if (isShaped(bar)) {
    return {
      at: '',
      what: 'the bar has been ground to shape already',
      why: 'a piece is ground to shape once; what is left comes off in polishing',
      try: ['leave this step out'],
    }
  }
  return {
    at: '',
    what: `the bar holds ${printQuantity(bar.volume, 'volume')}; the piece with its stock needs ${printQuantity(volume, 'volume')}`,
    why: 'there is less metal than the piece',
    try: ['start from a larger bar', 'leave less stock on the faces'],
  }
}

const figure = (n: number) => String(Number(n.toPrecision(3)))
const show = (m: number) => printQuantity(m, 'length')
