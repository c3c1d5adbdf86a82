import { type Problem, failed, ok } from '#problem'
import type { Size } from '#geometry'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import type { PieceSolid } from '#piece'
import { type Billet, stretch, worked, UNWEIGHED } from '#billet'
import { along, moving, stays, unevennessOf, levelled, shapedField } from '#movement'
import { burn, lossBetween, takeOff } from '../fire.ts'
import { heatsFor } from '../forge-in-heats.ts'
import { FORGED_BEVELS, FORGED_OUTLINE } from '../ground-shares.ts'
import { type Loss, type Smithy, operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { featuresToCome, noPiece, stockVolume, withMade } from '../shaped.ts'
import { judgeDrawn } from '../squeezes.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { warm } from '../warm.ts'

const parameters = declare({
  bevels: {
    form: 'choice',
    options: {
      left: 'outline and distal taper only; the bevels are ground: their layers show as lines',
      forged: 'bevels forged too: the layers follow the faces and no lines show on the bevel',
    },
    default: 'left',
    help: 'How far the shape is forged',
  },
  stock: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.01,
    optional: true,
    help: "Left on every face, to be ground off; left out, the shop's",
  },
  heats: {
    form: 'count',
    min: 1,
    max: 80,
    optional: true,
    help: 'Heats taken; left out, six (common practice for a knife), or more where the reduction needs more',
  },
})

/** Heats a shape takes at the least, however small the reduction (common practice, no source). */
const FEWEST_HEATS = 6
/** A remnant shorter than this is scrap. */
const WORTH_KEEPING = 0.02

const knife = { kind: 'hidden-tang-knife' } as const

/** Forges the bar to the outline and tapers of the piece, with stock left to grind. */
export const forgeToShape = operation({
  name: 'forge to shape',
  summary:
    'Forge the bar to the outline and tapers of the piece, point, shoulders and tang, with stock left on every face to grind off.',
  takes: 'one',
  parameters,
  loses: ['scale', 'crop'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: {}, before: [samplePack(420, 32, 9, 61)], piece: knife },
    {
      values: { bevels: 'forged', stock: '1 mm', heats: 10 },
      before: [samplePack(85, 32, 9, 61)],
      piece: knife,
    },
  ],
  forward([before], values, smithy) {
    const { piece, shop, densities } = smithy
    if (!piece) return failed(noPiece('to forge'))
    const loose = unwelded(before, 'forging to shape')
    if (loose) return failed(loose)
    const plan = planOf(before, piece, values, smithy)
    const warmed = warm(
      before,
      {
        purpose: 'forge',
        count: plan.heats,
        temperature: shop.forgingHeat,
        scale: plan.scale,
        stop: shop.stopHeat,
      },
      smithy,
    )
    if (warmed.problems) return warmed
    const { bar, losses, heats, warnings } = warmed.ok
    const area = bar.volume / bar.size.length
    const needs = plan.volume / area
    if (bar.size.length < needs * (1 - 1e-9)) return failed(runsOut(bar, needs))
    if (needs > plan.size.length * (1 + 1e-9)) return failed(tooThin(bar, area, plan))

    const over = Math.max(0, bar.size.length - needs)
    const kept = takeOff(bar, { x: { low: 0, high: over } }, 'crop', densities)
    const end = takeOff(bar, { x: { low: needs, high: 0 } }, 'crop', densities)
    const keep = over >= WORTH_KEEPING
    const crop: Loss[] = kept && !keep ? [lossBetween(bar, kept.after, 'crop', densities)] : []
    const from = kept?.after ?? bar
    const by = {
      x: plan.size.length / from.size.length,
      y: plan.size.width / from.size.width,
      z: plan.size.height / from.size.height,
    }
    const name = values.bevels === 'forged' ? FORGED_BEVELS : FORGED_OUTLINE
    const build = worked(name, stretch(from.build, by))
    const after: Billet = withMade(
      {
        ...from,
        size: plan.size,
        shape: 'cut',
        temper: 'as forged',
        build,
        worked: from.worked * Math.min(1, 1 / by.x),
        spare: 'x',
        hollow: undefined,
        groundFrom: { build, size: plan.size },
      },
      'outline',
    )
    return ok(
      step(after, {
        losses: [...losses, ...crop],
        heats,
        setAside: keep && end ? [end.after] : [],
        warnings: [...warnings, ...youngWelds(before, 'on edge', 'forging to shape')],
        notes: [
          `It takes ${show(needs)} of the bar as it lies hot${keep ? `; ${show(over)} is cut off and kept` : ''}.`,
          `Forged it measures ${show(plan.size.length)} × ${show(plan.size.width)} × ${show(plan.size.height)}: ${show(plan.stock)} more than the piece on every face.`,
        ],
      }),
    )
  },
  backward(demand, values, [before], smithy) {
    const { piece } = smithy
    if (!piece) return failed(noPiece('to forge'))
    const plan = planOf(before, piece, values, smithy)
    for (const side of ['length', 'width', 'height'] as const)
      if (demand[side] > plan.size[side] + 1e-9) return failed(tooLittleStock(side, demand, plan))
    const burnt = burn(before, plan.scale, smithy.densities)
    if (!burnt) return failed(runsOut(before, before.size.length))
    const area = burnt.after.volume / burnt.after.size.length
    return ok([{ ...before.size, length: plan.volume / area + 2 * plan.scale }])
  },
  force([before], _values, step, smithy) {
    const { size, volume } = step.after
    // A bar of one section that holds as much as the shape and keeps its proportions.
    const k = Math.sqrt(volume / (size.length * size.width * size.height))
    const to = { height: k * size.height, width: k * size.width }
    return judgeDrawn(before, step, smithy, { to, shaped: true })
  },
  movement([before], values, after, smithy) {
    const { piece, shop } = smithy
    if (!piece) return stays
    const plan = planOf(before, piece, values, smithy)
    const bar = burn(before, plan.scale, UNWEIGHED)?.after ?? before
    const level = levelled(bar)
    const needs = (plan.volume / bar.volume) * level.size.length
    const shaped = shapedField({
      piece,
      stock: plan.stock,
      bevels: values.bevels === 'forged',
      bar: { ...level.size, length: needs },
    })
    return moving([shaped, ...level.warps, along(plan.scale)], {
      ...(level.fill === undefined ? {} : { fill: level.fill }),
      // The skin is counted by its surface, the shape by its sections: they differ by a little.
      beyond: (level.beyond ?? 0) + 0.05 * after.size.height,
      uneven: unevennessOf(shop),
    })
  },
})

interface Plan {
  readonly volume: number
  readonly size: Size
  readonly stock: number
  readonly heats: number
  /** Off each face in all heats, m. */
  readonly scale: number
}

/** Volume and box of the forged shape, and the fire it takes. */
function planOf(
  bar: Billet,
  piece: PieceSolid,
  values: { readonly bevels: string; readonly stock?: number; readonly heats?: number },
  smithy: Smithy,
): Plan {
  const { shop } = smithy
  const stock = values.stock ?? shop.grindStock
  const size = {
    length: piece.size.length + 2 * stock,
    width: piece.size.width + 2 * stock,
    height: piece.size.height + 2 * stock,
  }
  const near = piece.volume + featuresToCome(bar, piece) + stockVolume(piece, stock)
  const volume = values.bevels === 'forged' ? near : Math.max(near, outlineVolume(piece, stock))
  const area = bar.volume / bar.size.length
  const heats =
    values.heats ?? Math.max(FEWEST_HEATS, heatsFor(area / (volume / size.length), smithy))
  return { volume, size, stock, heats, scale: heats * shop.forgingScale }
}

/** The piece's width × thickness at every place, stock on all of it: its shape before bevels are ground. */
function outlineVolume(piece: PieceSolid, stock: number): number {
  const n = 200
  const sections = piece.sections(n)
  const area = sections.map(({ width, thickness }) => (width + 2 * stock) * (thickness + 2 * stock))
  const middle = area.reduce((sum, a, i) => sum + (i === 0 || i === n ? a / 2 : a), 0)
  return (middle * piece.size.length) / n + (area[0] + area[n]) * stock
}

function runsOut(bar: Billet, needs: number): Problem {
  return {
    at: '',
    what: `the bar is ${show(Math.max(0, needs - bar.size.length))} too short: it runs out before the piece does`,
    why: `the forged shape takes ${show(needs)} of a bar ${show(bar.size.width)} × ${show(bar.size.height)}`,
    try: [
      'start from a longer bar, or leave its length free',
      'leave less stock',
      'forge the bevels too',
    ],
  }
}

function tooThin(bar: Billet, area: number, plan: Plan): Problem {
  return {
    at: '',
    what: `the bar is too thin in section: ${printQuantity(area, 'area')} where the forged shape has ${printQuantity(plan.volume / plan.size.length, 'area')} on average`,
    why: 'a shape is drawn out of a bar, never gathered into it',
    try: [
      `keep the bar above ${show(bar.size.width)} × ${show(bar.size.height)}`,
      'upset the bar first',
    ],
  }
}

function tooLittleStock(side: keyof Size, demand: Size, plan: Plan): Problem {
  return {
    at: 'stock',
    what: `the forged shape is ${show(plan.size[side])} in ${side}; ${show(demand[side])} is wanted`,
    why: 'the next steps take more off its faces than is left on them',
    try: [`leave ${show(plan.stock + (demand[side] - plan.size[side]) / 2)} on every face`],
  }
}

const show = (m: number) => printQuantity(m, 'length')
