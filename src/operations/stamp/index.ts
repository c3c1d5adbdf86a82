import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import type { Billet } from '#billet'
import { along, moving, pressedMark, stays } from '#movement'
import { takeFeatures } from '../features.ts'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { plaqueWithStamp, shapedPlaque } from '../sample-pieces.ts'
import { isShaped, noPiece, stockBurnt, withMade } from '../shaped.ts'
import { warm } from '../warm.ts'
import { faceOf } from './emblem.ts'
import { judgeStamping } from './impression.ts'
import { pressedShape } from './pressed-shape.ts'

const parameters = declare({
  temperature: {
    form: 'quantity',
    of: 'temperature',
    min: 873.15,
    max: 1523.15,
    optional: true,
    help: "Heat it is stamped at; left out, the shop's forging heat",
  },
  rim: {
    form: 'choice',
    options: {
      left: 'what the stamp pushes up stays, and goes when the face is ground or polished',
      filed: 'what the stamp pushes up is filed off at once',
    },
    default: 'left',
    help: 'What is done with the metal pushed up round the stamp',
  },
  depth: {
    form: 'quantity',
    of: 'length',
    min: 1e-5,
    max: 0.05,
    optional: true,
    help: 'How deep it is pressed; left out, the depth of the relief and what is still to come off the face',
  },
  emblem: {
    form: 'text',
    longest: 4000,
    optional: true,
    help: 'Outline of the raised face: the path data of an SVG drawing (d="…"), made as large as the box of the piece holds it',
  },
  area: {
    form: 'quantity',
    of: 'area',
    min: 1e-7,
    max: 0.1,
    optional: true,
    help: 'Raised area of the stamp, where there is no outline',
  },
  perimeter: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 100,
    optional: true,
    help: 'Length of all edges of the raised area, where there is no outline',
  },
  stroke: {
    form: 'quantity',
    of: 'length',
    min: 5e-5,
    max: 0.1,
    optional: true,
    help: 'Width of its thinnest strokes, where there is no outline',
  },
  edgeRadius: {
    form: 'quantity',
    of: 'length',
    min: 1e-6,
    max: 0.005,
    optional: true,
    help: "Radius the stamp's edges are stoned to; left out, 0.1 mm (common practice)",
  },
})

/** Presses the piece's mark or relief in, hot. */
export const stamp = operation({
  name: 'stamp',
  summary:
    'Press the mark or the relief in at one heat, on a flat, finished face and before hardening.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale', 'ground'],
  cautions: ['heat', 'strike'],
  examples: [
    { values: {}, before: [samplePack(150, 66, 11, 25)], piece: plaqueWithStamp },
    {
      values: {
        rim: 'filed',
        temperature: '950 °C',
        depth: '1.3 mm',
        emblem: 'M0 0H40V6H24L30 25H10L16 6H0Z',
        edgeRadius: '0.2 mm',
      },
      get before() {
        return [shapedPlaque(2e-4, [], plaqueWithStamp)]
      },
      piece: plaqueWithStamp,
    },
  ],
  forward([before], values, smithy, share = 1) {
    const { piece, shop, densities } = smithy
    if (!piece) return failed(noPiece('to stamp'))
    const box = piece.edges.stamp
    if (!box || !piece.features.some((f) => f.kind === 'stamp')) {
      return failed({
        at: '',
        what: 'the piece has no stamp',
        why: 'where it goes, how large and how deep comes from the piece',
        try: ['describe the stamp in the piece', 'leave this step out'],
      })
    }
    const shaped = isShaped(before)
    const warmed = warm(
      before,
      {
        purpose: 'stamp',
        count: 1,
        temperature: values.temperature ?? shop.forgingHeat,
        scale: shaped ? shop.treatingScale : shop.forgingScale,
      },
      smithy,
    )
    if (warmed.problems) return warmed
    const { bar, losses, heats, warnings } = warmed.ok
    const stock = Math.max(0, (bar.size.height - piece.size.height) / 2)
    const depth = share * (values.depth ?? box.depth + stock)
    const face = faceOf(values, box)
    if (face.problems) return face
    const filed =
      values.rim === 'filed' && shaped && share === 1
        ? takeFeatures(bar, piece, ['stamp'], 'ground', densities)
        : undefined
    if (filed?.problems) return filed
    const pressed: Billet = filed ? filed.ok.after : withMade({ ...bar, shape: 'cut' }, 'stamp')
    // A bar that is no piece yet stays one: nothing but its mark has been made.
    const after: Billet = { ...pressed, temper: 'as forged' }
    return ok(
      step(after, {
        losses: [...losses, ...(filed?.ok.losses ?? [])],
        heats,
        warnings: [
          ...warnings,
          ...stockBurnt(after, piece),
          ...tooDeep(depth, bar.size.height),
          ...(before.temper === 'hardened' || before.temper === 'tempered' ? [softens()] : []),
        ],
        notes: [
          pressIt(depth, box.depth, stock, values.depth !== undefined),
          `The stamp covers ${show(box.length)} × ${show(box.width)}, ${printQuantity(box.length * box.width * box.share, 'area')} of it to full depth; its middle is ${show(box.at.x)} from ${piece.origin}.`,
          'One blow or one squeeze: a second one rarely falls in the same place. Break every corner of the stamp: a sharp one starts a crack in the quench.',
        ],
      }),
    )
  },
  force([before], values, step, smithy) {
    const box = smithy.piece?.edges.stamp
    const face = box && faceOf(values, box)
    if (!box || !face?.ok) return undefined
    const stock = Math.max(0, (step.after.size.height - (smithy.piece?.size.height ?? 0)) / 2)
    return judgeStamping(
      {
        before,
        step,
        face: face.ok,
        box,
        temperature: values.temperature ?? smithy.shop.forgingHeat,
        depth: values.depth ?? box.depth + stock,
        edgeRadius: values.edgeRadius,
      },
      smithy,
    )
  },
  movement([before], values, after, { piece }, share = 1) {
    const box = piece?.edges.stamp
    const face = box && faceOf(values, box)
    if (!piece || !box || !face?.ok) return stays
    const burnt = (before.size.length - after.size.length) / 2
    const stock = Math.max(0, (after.size.height - piece.size.height) / 2)
    const shape = pressedShape(values, face.ok, box, { stock, share })
    const { depths, floor, feature, told } = shape
    const pressed = pressedMark(depths, {
      ...{ floor, feature, face: after.size.height / 2 },
      along: (after.size.length - piece.size.length) / 2,
    })
    return moving([pressed, along(burnt)], {
      onTheWhole: true,
      imprint: { depths, lost: stock, told },
    })
  },
})

function pressIt(depth: number, stays: number, stock: number, asStated: boolean): string {
  const rest = asStated
    ? `${show(stock)} of it will come off with the face`
    : `${show(stays)} to stay and ${show(stock)} that will be ground off`
  return `Press it ${show(depth)} deep${stock > 0 ? `: ${rest}` : asStated ? '' : `: ${show(stays)} to stay`}.`
}

function tooDeep(depth: number, height: number): Problem[] {
  if (depth <= height / 3) return []
  return [
    {
      at: '',
      what: `the stamp goes ${Math.round((100 * depth) / height)} % into the thickness`,
      why: 'over about a third of the thickness the back bulges and the layers under it crack (common practice)',
      try: ['a shallower stamp', 'stamp it when less is left to grind off', 'a thicker bar'],
    },
  ]
}

function softens(): Problem {
  return {
    at: '',
    what: 'stamping hot takes the hardness out again',
    why: 'the mark goes in before hardening',
    try: ['put this step before hardening'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
