import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { drift as driftWarp } from '#warp'
import { type Billet, massesOf, worked } from '#billet'
import { holeLoad } from '#forming'
import { type Branch, along, input, moving } from '#movement'
import { judgeLoaded } from '../judge.ts'
import { type Loss, operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { warm } from '../warm.ts'

const parameters = declare({
  diameter: {
    form: 'quantity',
    of: 'length',
    min: 2e-3,
    max: 0.2,
    help: 'Diameter of the drift: of the hole when it is done',
  },
  open: {
    form: 'choice',
    options: {
      slit: 'slit with a chisel: no metal is lost',
      punch: 'punch a slug out first',
    },
    default: 'slit',
    help: 'How the hole is opened',
  },
  slug: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 0.1,
    default: '6 mm',
    help: 'Diameter of the punch, where a slug is punched out',
  },
  heats: { form: 'count', min: 1, max: 20, default: 2, help: 'Heats taken' },
})

/** Opens a hole through the bar and swells the metal round it: a guard, an eye, a ring. */
export const drift = operation({
  name: 'drift',
  summary:
    'Slit or punch the bar and drive a drift through: the metal swells round the hole and its lines flow round it.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale', 'cut out'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: { diameter: '15 mm' }, before: [samplePack(60, 30, 10, 21)] },
    {
      values: { diameter: '19 mm', open: 'punch', slug: '8 mm', heats: 3 },
      before: [sampleBar(40, 24, 9)],
    },
  ],
  forward([before], whole, smithy, share = 1) {
    const values = openedTo(whole, share)
    const loose = unwelded(before, 'opening a hole')
    if (loose) return failed(loose)
    const { shop, densities } = smithy
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
    const slug = values.open === 'punch' ? values.slug : 0
    const problem = cannot(bar, values.diameter, slug)
    if (problem) return failed(problem)
    // In plan every point moves straight away from the middle, so that its ring keeps its area.
    const pushed = (values.diameter ** 2 - slug ** 2) / 4
    const out = (half: number) => Math.sqrt(half * half + pushed)
    const size = {
      ...bar.size,
      length: 2 * out(bar.size.length / 2),
      width: 2 * out(bar.size.width / 2),
    }
    const taken = (Math.PI / 4) * slug * slug * bar.size.height
    const volume = bar.volume - taken
    const after: Billet = {
      ...bar,
      size,
      shape: 'cut',
      volume,
      temper: 'as forged',
      build: worked('drifted', bar.build),
    }
    const punched: Loss[] =
      slug > 0 ? [{ cause: 'cut out', masses: massesOf({ ...bar, volume: taken }, densities) }] : []
    const wall = (size.width - values.diameter) / 2
    return ok(
      step(after, {
        losses: [...losses, ...punched],
        heats,
        warnings: [
          ...warnings,
          ...youngWelds(before, 'drift', 'opening a hole'),
          ...(wall < 0.5 * bar.size.height ? [thinWall(wall, bar.size.height)] : []),
        ],
        notes: [
          ...(slug > 0
            ? []
            : [
                `Slit about ${show((Math.PI / 2) * values.diameter)}: its two lips become the rim of the hole.`,
              ]),
          `The bar swells to ${show(size.width)} at the hole; the wall beside it is ${show(wall)}.`,
        ],
      }),
    )
  },
  force([before], values, step, smithy) {
    const { width, height } = before.size
    const from = values.open === 'punch' ? values.slug : 0
    const plan = { from, to: values.diameter, height, width }
    const strain = Math.min(1, values.diameter / width)
    return judgeLoaded(before, step, strain, (stress) => holeLoad(plan, stress), smithy)
  },
  movement([before], whole, after, _smithy, share = 1) {
    const values = openedTo(whole, share)
    const slug = values.open === 'punch' ? values.slug : 0
    const radius = Math.sqrt(values.diameter ** 2 - slug ** 2) / 2
    const middle = before.size.length / 2
    const opened = driftWarp({ x: middle, radius })
    const laid = along(middle - after.size.length / 2)
    return moving([laid, opened], { branches: [slug > 0 ? punched(slug / 2, middle) : input(0)] })
  },
})

/** Punch and drift so far through that a share of the hole is there. */
function openedTo<V extends { readonly diameter: number; readonly slug: number }>(
  whole: V,
  share: number,
): V {
  const wide = Math.sqrt(share)
  return { ...whole, diameter: whole.diameter * wide, slug: whole.slug * wide }
}

/** The bar before, with a hole punched in it: opened and closed again, what fell out is left out. */
function punched(radius: number, middle: number): Branch {
  const whole = moving([driftWarp({ x: middle, radius, form: 'closed' })], { branches: [input(0)] })
  return moving([driftWarp({ x: middle, radius })], { branches: [whole] })
}

function cannot(bar: Billet, diameter: number, slug: number): Problem | undefined {
  if (slug >= diameter) {
    return {
      at: 'slug',
      what: `a slug ${show(slug)} across leaves nothing to drift to ${show(diameter)}`,
      why: 'the drift opens the hole the punch makes',
      try: ['a smaller punch', 'a larger drift'],
    }
  }
  const slit = slug > 0 ? slug : (Math.PI / 2) * diameter
  const room = slug > 0 ? bar.size.width : bar.size.length
  if (slit > 0.8 * room) {
    return {
      at: 'diameter',
      what:
        slug > 0
          ? `the punch takes ${show(slit)} of a bar ${show(room)} wide`
          : `the slit takes ${show(slit)} of a bar ${show(room)} long`,
      why: 'the ends of the opening would tear out',
      try: ['a smaller hole', slug > 0 ? 'a smaller punch' : 'a longer bar', 'punch a slug first'],
    }
  }
  return undefined
}

function thinWall(wall: number, height: number): Problem {
  return {
    at: 'diameter',
    what: `the wall beside the hole is ${show(wall)}, of a bar ${show(height)} thick`,
    why: 'a wall under half the thickness stretches and tears at the slit (common practice)',
    try: ['start from a wider bar', 'a smaller hole', 'upset the place first'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
