import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { accordion as unfold } from '#warp'
import { type Billet, type Laid, type Turn, turnBuild, volumesOf } from '#billet'
import { along, moving, stays } from '#movement'
import { contentOf } from '../content.ts'
import { withVolumes } from '../cut-out.ts'
import { lossBetween, sumLosses, takeOff } from '../fire.ts'
import { joinBuilds } from '../join.ts'
import { type Operation, operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { saw, sawnLength } from '../saw.ts'
import { planSlices, slicingParameters, workBackSlices } from '../slicing.ts'
import { crop, kerf } from '../usual.ts'
import { warm } from '../warm.ts'
import { unwelded, youngWelds } from '../welds.ts'

const parameters = declare({
  ...slicingParameters,
  hinge: {
    form: 'quantity',
    of: 'length',
    min: 5e-4,
    max: 0.1,
    default: '5 mm',
    help: 'Left standing at the root of every cut (from memory: 4 to 6 mm; a 25 mm bar cut two thirds through has 8 mm)',
  },
  root: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.02,
    optional: true,
    help: 'Radius at the root of the cut: half the diameter of a hole drilled there; left out, half the cut',
  },
  heats: {
    form: 'count',
    min: 1,
    max: 30,
    default: 3,
    help: 'Heats to open it out and flatten it',
  },
  crop,
  kerf,
})

const even: Turn = { x: { was: 'z' }, y: { was: 'y' }, z: { was: 'x', reversed: true } }
const odd: Turn = { x: { was: 'z', reversed: true }, y: { was: 'y' }, z: { was: 'x' } }
const spares = { x: 'z', y: 'y', z: 'x' } as const

/**
 * Strain of a hinge at its outside, bent shut on a root of this radius. Above about 0.7 smiths drill
 * the root and open it a little at a heat; two thirds cut of 25 mm on a saw kerf is 0.84, and was
 * done, carefully (common practice, no source).
 */
export function hingeStrain(hinge: number, root: number): number {
  return hinge / (2 * root + hinge)
}
const CAREFUL = 0.7

/** Cuts the bar zig-zag from both sides and unfolds it: the section becomes the face, no weld across. */
export const accordion: Operation = operation({
  name: 'accordion',
  summary: 'Cut the bar nearly through from above and below in turn, open it out and flatten it.',
  takes: 'one',
  parameters,
  loses: ['crop', 'kerf', 'scale'],
  cautions: ['saw', 'heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: { thickness: '9.5 mm', crop: '0 mm' }, before: [samplePack(300, 25, 25)] },
    {
      values: { count: 8, hinge: '4 mm', root: '3 mm', heats: 5 },
      before: [samplePack(150, 30, 30)],
    },
  ],
  forward([before], values, smithy) {
    const { shop, densities } = smithy
    const loose = unwelded(before, 'opening it out')
    if (loose) return failed(loose)
    if (before.shape === 'round' || before.shape === 'octagon') return failed(notSquare())
    const depth = before.size.height - values.hinge
    if (depth <= before.size.height / 2) return failed(tooShallow(before.size.height, values.hinge))
    const ends = values.crop ?? shop.crop
    const cut = values.kerf ?? shop.kerf
    const planned = planSlices(before.size.length, { ...values, crop: ends, kerf: cut })
    if (planned.problems) return planned
    const { count, thickness } = planned.ok
    const cropped = takeOff(before, { x: { low: ends, high: ends } }, 'crop', densities)
    const used = sawnLength(count, thickness, cut)
    const sawn =
      cropped && saw(cropped.after, [Math.min(used, cropped.after.size.length)], cut, densities)
    if (!sawn) return failed(...(planSlices(0, { crop: ends, kerf: cut, count }).problems ?? []))
    const [bar] = sawn.pieces

    const { after: slit, loss: slits } = sawZigzag(bar, count, depth, cut, densities)
    const whole = values.thickness !== undefined && before.spare === 'x'
    const opened = openOut(slit, count, thickness, whole ? 'x' : spares[before.spare])
    const scale = values.heats * shop.forgingScale
    const warmed = warm(
      opened,
      {
        purpose: 'forge',
        count: values.heats,
        temperature: shop.forgingHeat,
        stop: shop.stopHeat,
        scale,
      },
      smithy,
    )
    if (warmed.problems) return warmed
    const { bar: flat, heats, losses, warnings } = warmed.ok
    const strain = hingeStrain(values.hinge, values.root ?? cut / 2)
    return ok(
      step(flat, {
        losses: sumLosses([cropped.loss, sawn.kerf, slits, ...losses]),
        setAside: sawn.rest ? [sawn.rest] : [],
        heats,
        warnings: [
          ...warnings,
          ...youngWelds(before, 'bend', 'opening the cuts'),
          ...(strain > CAREFUL ? [tears(strain)] : []),
        ],
        notes: [
          `${count} leaves of ${show(thickness)}: the section shows every ${show(before.size.height)}, each time the mirror of the last.`,
          'Anneal before sawing; open every cut a little at each heat.',
        ],
      }),
    )
  },
  backward(demand, values, [before], smithy) {
    const { shop } = smithy
    const asked = { ...values, crop: values.crop ?? shop.crop, kerf: values.kerf ?? shop.kerf }
    return workBackSlices(demand, before, asked, (bar) =>
      accordion.forward([bar], values as never, smithy),
    )
  },
  movement([before], values, _after, { shop }) {
    const crop = values.crop ?? shop.crop
    const kerf = values.kerf ?? shop.kerf
    const planned = planSlices(before.size.length, { ...values, crop, kerf }).ok
    if (!planned) return stays
    const unfolded = unfold({
      ...planned,
      kerf,
      height: before.size.height,
      hinge: values.hinge,
    })
    return moving([along(values.heats * shop.forgingScale), unfolded, along(crop)])
  },
})

/** Cuts from above and below in turn, each to the same depth. */
function sawZigzag(
  bar: Billet,
  count: number,
  depth: number,
  kerf: number,
  densities: Readonly<Record<string, number>>,
) {
  const { length, height } = bar.size
  const each = (bar.volume * kerf * depth) / (length * height)
  const left: Record<string, number> = { ...volumesOf(bar) }
  const share = depth / height
  const cuts = [
    { z: [1 - share, 1] as const, times: Math.ceil((count - 1) / 2) },
    { z: [0, share] as const, times: Math.floor((count - 1) / 2) },
  ]
  for (const { z, times } of cuts)
    for (const [steel, part] of Object.entries(contentOf(bar.build, { z })))
      left[steel] -= part * each * times
  const after = withVolumes({ ...bar, shape: 'cut' }, left, 'accordion')
  return { after, loss: lossBetween(bar, after, 'kerf', densities) }
}

/**
 * The leaves laid out in a row, each turned a quarter, every other one the other way. The hinges'
 * metal is spread over the row: its length is what its volume makes of its width and thickness.
 */
function openOut(slit: Billet, count: number, thickness: number, spare: Billet['spare']): Billet {
  const { width, height } = slit.size
  const of = slit.build.form === 'worked' ? slit.build.of : slit.build
  const laid = Array.from({ length: count }, (_, i): Laid => {
    const build = turnBuild(of, i % 2 === 0 ? even : odd)
    return { build, thickness: height, volume: slit.volume / count }
  })
  const shares = slit.build.form === 'worked' ? slit.build.shares : undefined
  return {
    ...slit,
    size: { length: slit.volume / (width * thickness), width, height: thickness },
    shape: 'rectangle',
    build: {
      form: 'worked',
      by: 'accordion',
      of: joinBuilds('x', laid, `${count} leaves unfolded`),
      shares,
    },
    temper: 'as forged',
    spare,
    hollow: undefined,
  }
}

function notSquare(): Problem {
  return {
    at: '',
    what: 'only a square or flat bar opens out flat',
    why: 'leaves of a round bar would be lens-shaped',
    try: ['square the bar up first'],
  }
}

function tooShallow(height: number, hinge: number): Problem {
  return {
    at: 'hinge',
    what: `with ${show(hinge)} left standing the cuts do not pass one another in a bar ${show(height)} thick`,
    why: 'cuts from both sides must go past the middle, or it does not unfold',
    try: [`leave less than ${show(height / 3)}`, 'use a thicker bar'],
  }
}

function tears(strain: number): Problem {
  return {
    at: 'root',
    what: `the hinges stretch by ${Math.round(strain * 100)} % as they open`,
    why: 'the metal tears at the root of a narrow cut if it is forced (common practice; above about 70 %)',
    try: [
      'drill the roots, and state their radius',
      'leave less standing',
      'open it a little at each heat',
    ],
  }
}

const show = (m: number) => printQuantity(m, 'length')
