import { type Problem, failed, ok } from '#problem'
import { type Size } from '#geometry'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { bend as bendWarp, shift } from '#warp'
import { type Billet, worked } from '#billet'
import { bendLoad, bendStrain } from '#forming'
import { along, moving } from '#movement'
import { judgeLoaded } from '../judge.ts'
import { operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { warm } from '../warm.ts'

const parameters = declare({
  way: {
    form: 'choice',
    options: {
      edgewise: 'in the plane of its faces: the curve of a sabre',
      flatwise: 'over its face: a hook, or right round into a ring',
    },
    default: 'edgewise',
    help: 'Which way the bar is bent',
  },
  radius: {
    form: 'quantity',
    of: 'length',
    min: 2e-3,
    max: 50,
    help: 'Radius of the middle line',
  },
  heats: { form: 'count', min: 1, max: 30, default: 1, help: 'Heats taken' },
})

/** Stretch at the outside above which a bend is done in more heats and the section watched (common practice, no source). */
const STRETCH_TO_WATCH = 0.25

/** Stretch at the outside from which a bend tries the welds; a slack curve does not (common practice, no source). */
const WELDS_FEEL = 0.03

/** Bends the bar to an even curve; its middle line keeps its length. */
export const bend = operation({
  name: 'bend',
  summary:
    'Bend the bar to an even curve, edgewise or flatwise; the outside stretches, the inside is upset.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: { radius: '2.5 m' }, before: [samplePack(700, 40, 6, 61)] },
    { values: { way: 'flatwise', radius: '11 mm' }, before: [sampleBar(67, 8, 2.5)] },
  ],
  forward([before], values, smithy, share = 1) {
    const loose = unwelded(before, 'bending')
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
    const thick = values.way === 'edgewise' ? bar.size.width : bar.size.height
    const radius = values.radius / share
    const angle = bar.size.length / radius
    const problem = cannot(bar.size.length, thick, radius, angle)
    if (problem) return failed(problem)
    const box = boxOf(radius, thick, angle)
    const size: Size =
      values.way === 'edgewise'
        ? { length: box.along, width: box.across, height: bar.size.height }
        : { length: box.along, width: bar.size.width, height: box.across }
    const after: Billet = {
      ...bar,
      size,
      shape: 'cut',
      temper: 'as forged',
      build: worked(`bent ${values.way}`, bar.build),
    }
    const stretch = thick / 2 / radius
    const depth = radius * (1 - Math.cos(Math.min(angle, 2 * Math.PI) / 2))
    return ok(
      step(after, {
        losses,
        heats,
        warnings: [
          ...warnings,
          ...(stretch > WELDS_FEEL ? youngWelds(before, 'bend', 'bending') : []),
          ...(stretch > STRETCH_TO_WATCH ? [sharp(stretch)] : []),
        ],
        notes: [
          `The middle line is ${show(depth)} deep in its curve; it keeps its length of ${show(bar.size.length)}.`,
          `The outside stretches by ${percent(stretch)} and the inside is upset by as much: lines of the pattern open and close with it.`,
        ],
      }),
    )
  },
  force([before], values, step, smithy) {
    const edgewise = values.way === 'edgewise'
    const { width, height, length } = before.size
    const plan = {
      width: edgewise ? height : width,
      thickness: edgewise ? width : height,
      length,
      radius: values.radius,
    }
    return judgeLoaded(before, step, bendStrain(plan), (stress) => bendLoad(plan, stress), smithy)
  },
  movement([before], values, after, _smithy, share = 1) {
    const flatwise = values.way === 'flatwise'
    const [was, is] = flatwise
      ? [before.size.width, after.size.width]
      : [before.size.height, after.size.height]
    const burnt = (was - is) / 2
    const length = before.size.length - 2 * burnt
    const thick = (flatwise ? before.size.height : before.size.width) - 2 * burnt
    const radius = values.radius / share
    const box = boxOf(radius, thick, length / radius)
    const middle = length / 2
    // The crown of the bend stands at the top of its box.
    const up = thick / 2 - box.across / 2
    const laid = shift({ x: middle - box.along / 2, [flatwise ? 'z' : 'y']: up })
    const bent = bendWarp({ radius, middle, way: flatwise ? 'flat' : 'edge' })
    return moving([laid, bent, along(burnt)], { beyond: (thick * thick) / (4 * radius) })
  },
})

/** Box round an arc of a band: along its chord, and across it. */
function boxOf(radius: number, thick: number, angle: number): { along: number; across: number } {
  const [outer, inner] = [radius + thick / 2, radius - thick / 2]
  const half = Math.min(angle, 2 * Math.PI) / 2
  const along = half >= Math.PI / 2 ? 2 * outer : 2 * outer * Math.sin(half)
  const lowest = Math.cos(half) * (half > Math.PI / 2 ? outer : inner)
  return { along, across: outer - lowest }
}

function cannot(length: number, thick: number, radius: number, angle: number): Problem | undefined {
  if (radius <= thick / 2) {
    return {
      at: 'radius',
      what: `a bar ${show(thick)} thick cannot be bent to a radius of ${show(radius)}`,
      why: 'its inside would have no length left',
      try: [`a radius of ${show(thick)} or more`, 'draw the bar thinner first'],
    }
  }
  if (angle > 2 * Math.PI * 1.0001) {
    return {
      at: 'radius',
      what: `a bar ${show(length)} long goes more than once round at ${show(radius)}`,
      why: `once round takes ${show(2 * Math.PI * radius)}`,
      try: [`cut it to ${show(2 * Math.PI * radius)}`, 'a larger radius'],
    }
  }
  return undefined
}

function sharp(stretch: number): Problem {
  return {
    at: 'radius',
    what: `the outside stretches by ${percent(stretch)}`,
    why: 'a bend this sharp thins on the outside, swells on the inside and tries the welds (common practice)',
    try: ['bend in several heats, near welding heat', 'a larger radius', 'a narrower bar'],
  }
}

const percent = (share: number) => `${Number((100 * share).toPrecision(2))} %`
const show = (m: number) => printQuantity(m, 'length')
