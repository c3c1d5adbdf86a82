import { type Problem, failed, ok } from '#problem'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { draw } from '#warp'
import {
  type Billet,
  flatAxis,
  wholeCount,
  worked,
  UNWEIGHED,
  type GrooveRow,
  type Hollow,
} from '#billet'
import { emblemFromMeasures } from '#forming'
import { along, moving, levelled, waveOf, pressedRidges } from '#movement'
import { judgePressed } from '../judge-pressed.ts'
import { workedAt } from '../metal-worked.ts'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { biteOn, spreadOf } from '../spread.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { warm } from '../warm.ts'
import { burn } from '../fire.ts'

const parameters = declare({
  depth: {
    form: 'quantity',
    of: 'length',
    min: 1e-4,
    max: 0.03,
    help: 'How deep the die goes in on each face it presses (from memory: 1.5 to 4 mm in stock of 6 to 12 mm)',
  },
  share: {
    form: 'quantity',
    of: 'ratio',
    min: 0.01,
    max: 0.95,
    default: '50 %',
    help: 'Mean depth of the die over its face, as a share of its deepest: 50 % for ridges as wide as the gaps',
  },
  pitch: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 0.3,
    help: 'Size of one figure of the die: from ridge to ridge, or the width of a letter',
  },
  dies: {
    form: 'choice',
    options: {
      interlocking: 'ridges of one die into the gaps of the other: the layers bend right through',
      both: 'a die on each face, not interlocking: the pattern stays near the faces',
      top: 'one die on the top, a flat die below: the pattern stays near the top',
    },
    default: 'interlocking',
    help: 'How the dies lie',
  },
  heats: { form: 'count', min: 1, max: 20, default: 1, help: 'Heats taken' },
})

/** Presses a die into the bar: layers bend down under it, and grinding level shows them. */
export const pressPattern = operation({
  name: 'press pattern',
  summary:
    'Press a patterned die into the hot bar so that the layers bend under it; grinding it level shows the bends, forging it flat turns them inside out.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: { depth: '2 mm', pitch: '12.7 mm' }, before: [samplePack(150, 32, 12, 151)] },
    {
      values: { depth: '1.5 mm', share: '20 %', pitch: '6 mm', dies: 'top', heats: 2 },
      before: [samplePack(120, 40, 8, 41)],
    },
  ],
  forward([before], whole, smithy, done = 1) {
    const values = { ...whole, depth: whole.depth * done }
    const loose = unwelded(before, 'pressing a die in')
    if (loose) return failed(loose)
    const { shop } = smithy
    const warmed = warm(
      before,
      {
        purpose: 'forge',
        count: values.heats,
        temperature: shop.forgingHeat,
        scale: shop.forgingScale * values.heats,
        stop: shop.stopHeat,
      },
      smithy,
    )
    if (warmed.problems) return warmed
    const { bar, losses, heats, warnings } = warmed.ok
    const { depth, share, dies } = values
    const sunk = depth * share * (dies === 'both' ? 2 : 1)
    const level = bar.volume / (bar.size.length * bar.size.width)
    if (!(level - sunk > 0.05 * level) || depth >= 0.9 * bar.size.height) {
      return failed({
        at: 'depth',
        what: `a die ${show(depth)} deep goes through a bar ${show(bar.size.height)} thick`,
        why: 'hardly any metal would be left under it',
        try: [`press ${show(bar.size.height / 4)} deep`, 'start from a thicker bar'],
      })
    }
    // What the die sinks flows along and across, as any reduction does.
    const grows = level / (level - sunk)
    const s = spreadOf(bar, shop)
    const after: Billet = {
      ...bar,
      shape: 'cut',
      size: {
        length: bar.size.length * grows ** (1 - s),
        width: bar.size.width * grows ** s,
        height: bar.size.height,
      },
      temper: 'as forged',
      hollow: ridgesIn(bar, values, grows ** (1 - s), sunk / level),
      build: worked(
        `pressed with ${dies === 'interlocking' ? 'interlocking' : 'patterned'} dies`,
        bar.build,
      ),
    }
    const thickness = before.size.height / Math.max(1, wholeCount(before.build).merged)
    const crossed = flatAxis(before.build) === 'z' ? depth / thickness : undefined
    return ok(
      step(after, {
        losses,
        heats,
        warnings: [
          ...warnings,
          ...youngWelds(before, 'on edge', 'pressing a die in'),
          ...fades(values),
        ],
        notes: [
          `To clear the relief grind to ${show(after.size.height - depth)} from the ${dies === 'top' ? 'top' : 'faces'}, and no deeper than you must.`,
          ...(crossed === undefined
            ? []
            : [`The die crosses about ${printCount(Math.round(crossed), 'layer')}.`]),
        ],
      }),
    )
  },
  force([before], { depth, share, pitch }, step, smithy) {
    const [heat] = step.heats
    if (!heat) return undefined
    // One bite of the die at a time: its ridges are raised on a share of what it covers.
    const bite = biteOn(before, smithy.shop)
    const area = bite * before.size.width * share
    const stroke = share * pitch
    return judgePressed(
      {
        before,
        step,
        heat,
        temperature: workedAt(heat),
        bites: Math.ceil(before.size.length / bite - 1e-9),
        plan: {
          emblem: emblemFromMeasures({ area, perimeter: (2 * area) / stroke, stroke }),
          depth,
          thickness: before.size.height,
          takenOff: 0,
        },
      },
      smithy,
    )?.judged
  },
  movement([before], whole, after, _smithy, done = 1) {
    const values = { ...whole, depth: whole.depth * done }
    const burnt = (before.size.height - after.size.height) / 2
    const bar = burn(before, burnt, UNWEIGHED)?.after ?? before
    const level = levelled(bar)
    const flat = after.volume / (after.size.length * after.size.width)
    const factors = {
      length: after.size.length / level.size.length,
      width: after.size.width / level.size.width,
    }
    const through = values.dies === 'interlocking'
    // Between dies that interlock the bar is thinned; under the others it keeps its height beside them.
    const spread = draw({ ...factors, height: through ? flat / level.size.height : 1 })
    const hollow = after.hollow
    const bent =
      hollow?.form === 'waved'
        ? [waveOf(after.size, hollow, -1)]
        : pressedRidges(after.size, values)
    return moving([...bent, spread, ...level.warps, along(burnt)], {
      ...(level.fill === undefined ? {} : { fill: level.fill }),
      ...(through ? {} : { onTheWhole: true as const }),
    })
  },
})

/** What the dies leave open in the box: `longer` the bar has grown, `sunk` of its thickness pressed aside. */
function ridgesIn(
  { size: { length, height } }: Billet,
  { depth, pitch, dies }: { readonly depth: number; readonly pitch: number; readonly dies: string },
  longer: number,
  sunk: number,
): Hollow {
  const apart = pitch / (length * longer)
  if (dies === 'interlocking') return { form: 'waved', pitch: apart, rise: sunk }
  const row: GrooveRow = {
    shape: 'ridges',
    depth: depth / height,
    width: apart,
    pitch: apart,
    mean: sunk / (dies === 'both' ? 2 : 1),
    first: apart / 2,
    from: 0,
    to: 1,
  }
  return dies === 'both'
    ? { form: 'grooved', top: row, bottom: row }
    : { form: 'grooved', top: row }
}

/** Under a die that does not interlock the bend dies away as exp(−2π·depth/figure) (elastic half-space form, from memory). */
function fades({ dies, pitch, depth }: { dies: string; pitch: number; depth: number }): Problem[] {
  if (dies === 'interlocking') return []
  const left = Math.exp((-2 * Math.PI * depth) / pitch)
  if (left > 0.25) return []
  return [
    {
      at: 'depth',
      what: `of the bend ${Math.round(left * 100)} % is left where grinding will reach, ${show(depth)} down`,
      why: `a figure ${show(pitch)} wide fades with depth; under a single die it is gone about half its own width down`,
      try: [`press ${show(pitch / 6)} deep`, 'a larger figure', 'interlocking dies'],
    },
  ]
}

const show = (m: number) => printQuantity(m, 'length')
