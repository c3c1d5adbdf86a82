import { type Problem, failed, ok } from '#problem'
import { SAME_LENGTH } from '#geometry'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { roll as rollWarp } from '#warp'
import { type Billet, type Build, type Turn, solid, turnBuild, worked, UNWEIGHED } from '#billet'
import { along, input, moving, levelled } from '#movement'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { warm } from '../warm.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { burn } from '../fire.ts'

const parameters = declare({
  core: {
    form: 'quantity',
    of: 'length',
    min: 5e-4,
    max: 0.2,
    optional: true,
    help: 'Diameter of what it is rolled round; left out, twice the thickness of the strip, the tightest that does not crease',
  },
  coreSteel: {
    form: 'steel',
    optional: true,
    help: 'A round rod of this steel stays inside; left out, the eye is hollow and closes when the roll is squared',
  },
  heats: { form: 'count', min: 1, max: 40, default: 4, help: 'Heats it is rolled up in' },
})

/** Across becomes along: the roll is as long as the strip is wide. */
const endOn: Turn = { x: { was: 'y' }, y: { was: 'x', reversed: true }, z: { was: 'z' } }

/** Rolls a strip up about its width, like a carpet. */
export const rollUp = operation({
  name: 'roll up',
  summary: 'Roll the strip up hot, tight, about its width; the end grain becomes a spiral.',
  takes: 'one',
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: {}, before: [samplePack(300, 80, 4, 7)] },
    {
      values: { core: '6 mm', coreSteel: 'W2', heats: 8 },
      before: [samplePack(420, 60, 3, 14)],
    },
    {
      values: { core: '20 mm', heats: 1 },
      before: [{ ...samplePack(200, 70, 5, 5), spare: 'y' }],
    },
  ],
  forward([before], values, smithy) {
    const loose = unwelded(before, 'rolling it up')
    if (loose) return failed(loose)
    if (before.shape === 'round' || before.shape === 'octagon') return failed(notFlat())
    const { shop, densities } = smithy
    const warmed = warm(
      before,
      {
        purpose: 'forge',
        count: values.heats,
        temperature: shop.forgingHeat,
        stop: shop.stopHeat,
        scale: values.heats * shop.forgingScale,
      },
      smithy,
    )
    if (warmed.problems) return warmed
    const { bar: strip, losses, heats, warnings } = warmed.ok
    const thick = strip.volume / (strip.size.length * strip.size.width)
    const r0 = (values.core ?? 2 * before.size.height) / 2
    const radius = Math.sqrt(r0 * r0 + (strip.size.length * thick) / Math.PI)
    const turns = (radius - r0) / thick
    if (turns < 1) return failed(notOnce(strip.size.length, r0))
    const length = strip.size.width
    const rod = values.coreSteel === undefined ? 0 : Math.PI * r0 * r0 * length
    const rolled = worked('rolled up', turnBuild(strip.build, endOn))
    const volume = strip.volume + rod
    const build: Build =
      values.coreSteel === undefined
        ? rolled
        : {
            form: 'joined',
            axis: 'section',
            how: 'rolled up on a rod',
            parts: [
              { build: solid(values.coreSteel, 2 * r0), share: rod / volume, times: 1 },
              { build: rolled, share: strip.volume / volume, times: 1 },
            ],
          }
    const after: Billet = {
      ...strip,
      size: { length, width: 2 * radius, height: 2 * radius },
      shape: values.coreSteel === undefined ? 'cut' : 'round',
      volume,
      build,
      bond: 'loose',
      temper: 'as forged',
      worked: 1,
      spare: before.spare === 'y' ? 'x' : 'z',
      hollow: values.coreSteel ? undefined : { form: 'eye', radius: r0 / radius },
    }
    const mass = rod * (densities[values.coreSteel ?? ''] ?? 0)
    const steel = values.coreSteel
    const added = steel === undefined ? {} : { [steel]: mass }
    const stock = { form: 'bar', thickness: 2 * r0, width: 2 * r0, length, count: 1, mass } as const
    return ok(
      step(after, {
        losses,
        added,
        taken: steel === undefined ? [] : [{ steel, ...stock }],
        heats,
        warnings: [
          ...warnings,
          ...youngWelds(before, 'bend', 'rolling'),
          ...(r0 < thick * (1 - 1e-9) ? [creases(r0, thick)] : []),
        ],
        notes: [
          `${turns.toFixed(1)} turns. Scarf the outer end thin, so that it leaves no step.`,
          ...(steel === undefined
            ? ['The eye closes when the roll is squared at welding heat.']
            : []),
        ],
      }),
    )
  },
  backward(demand, values, [before], { shop }) {
    const skin = 2 * values.heats * shop.forgingScale
    const { length, width, height } = before.size
    const fill = before.shape === 'cut' ? before.volume / (length * width * height) : 1
    const r0 = (values.core ?? 2 * height) / 2
    // A roll is round: what counts of the section wanted is its area.
    const area = (Math.PI / 4) * demand.width * demand.height - Math.PI * r0 * r0
    const wide = demand.length + skin
    const long = area / ((height - skin) * fill) + skin
    if (!(height > skin && area > 0)) return failed(notOnce(length, r0))
    if (before.spare === 'y') {
      if (length < long - SAME_LENGTH) return failed(tooSmall('length', long))
      return ok([{ length, width: wide, height }])
    }
    if (width < wide - SAME_LENGTH) return failed(tooSmall('width', wide))
    if (before.spare === 'x') return ok([{ length: long, width, height }])
    if (values.core === undefined) return failed(tooSmall('height', height))
    return ok([{ length, width, height: area / ((length - skin) * fill) + skin }])
  },
  movement([before], values, after, { shop }) {
    const scale = values.heats * shop.forgingScale
    const strip = burn(before, scale, UNWEIGHED)?.after ?? before
    const { length, width } = strip.size
    const thickness = strip.volume / (length * width)
    const core = (values.core ?? 2 * before.size.height) / 2
    const steel = values.coreSteel
    const level = levelled(strip)
    return moving([rollWarp({ core, thickness, width }), ...level.warps, along(scale)], {
      branches: [input(0)],
      // A hollow eye is squeezed shut later on: the strip's own inside lies against itself there.
      below: steel === undefined ? input(0) : { layers: [{ steel, thickness: 2 * core }] },
      ...(level.fill === undefined ? {} : { fill: level.fill }),
      // The strip ends somewhere in its outermost turn; drawn round, that turn is whole.
      beyond: Math.PI * after.size.width,
    })
  },
})

function notFlat(): Problem {
  return {
    at: '',
    what: 'only a flat strip rolls up',
    why: 'turn must lie on turn along a face',
    try: ['draw the bar out flat first'],
  }
}

function notOnce(length: number, r0: number): Problem {
  return {
    at: 'core',
    what: `a strip ${show(length)} long does not go once round a core ${show(2 * r0)} across`,
    why: 'a roll has at least one whole turn',
    try: ['roll it round a thinner core', 'draw the strip longer first'],
  }
}

function creases(r0: number, thick: number): Problem {
  return {
    at: 'core',
    what: `rolled to a radius of ${show(r0)}, a strip ${show(thick)} thick creases inside`,
    why: 'the inside of the first turn folds when its radius is less than the thickness (common practice)',
    try: [`roll it round a core of ${show(2 * thick)} or more`, 'draw the strip thinner first'],
  }
}

function tooSmall(side: string, wanted: number): Problem {
  return {
    at: '',
    what: `the strip must be ${show(wanted)} in ${side} for the roll that is wanted`,
    why: `a larger stack does not make this strip larger in ${side}`,
    try: [
      `draw the strip so that it is ${show(wanted)} in ${side}`,
      'roll it round a core of stated size',
    ],
  }
}

const show = (m: number) => printQuantity(m, 'length')
