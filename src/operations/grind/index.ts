import { type Problem, failed, ok } from '#problem'
import { type Axis, SAME_LENGTH, boxVolume } from '#geometry'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import type { Shop } from '#shop'
import { type Billet, barVolume, flatAxis } from '#billet'
import { moving, peeled } from '#movement'
import { type Off, lossBetween, takeOff } from '../fire.ts'
import { layersLost } from '../forge-in-heats.ts'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'

const parameters = declare({
  faces: {
    form: 'choice',
    options: {
      flat: 'both flat faces, top and bottom',
      top: 'the top only',
      bottom: 'the bottom only',
      sides: 'the two sides',
      'all four': 'faces and sides, not the ends',
      ends: 'the two ends',
      all: 'faces, sides and ends',
    },
    default: 'flat',
    help: 'Which faces are ground',
  },
  off: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.05,
    optional: true,
    help: "Taken off each of them; left out, the shop's clean-up",
  },
  to: {
    form: 'quantity',
    of: 'length',
    min: 2e-4,
    max: 0.5,
    optional: true,
    free: 'height',
    help: 'Thickness to grind to, evenly from the faces named, instead of a thickness to take off',
  },
  level: {
    form: 'flag',
    default: false,
    help: 'The relief of a grooved, dimpled or pressed bar is ground right away: it is a plain bar again',
  },
})

const grinds: Readonly<Record<string, readonly (readonly [Axis, 'low' | 'high'])[]>> = {
  flat: [
    ['z', 'low'],
    ['z', 'high'],
  ],
  top: [['z', 'high']],
  bottom: [['z', 'low']],
  sides: [
    ['y', 'low'],
    ['y', 'high'],
  ],
  ends: [
    ['x', 'low'],
    ['x', 'high'],
  ],
}

function facesOf(name: string) {
  if (name === 'all four') return [...grinds.flat, ...grinds.sides]
  if (name === 'all') return [...grinds.flat, ...grinds.sides, ...grinds.ends]
  return grinds[name]
}

interface Ground {
  readonly faces: string
  readonly off?: number
  readonly to?: number
}

/** Off each flat face where a thickness is ground to, else off each face named. */
function thicknessOff(before: Billet, { faces, off, to }: Ground, shop: Shop): number {
  const flat = facesOf(faces).filter(([axis]) => axis === 'z').length
  return to !== undefined ? Math.max(0, before.size.height - to) / flat : (off ?? shop.cleanUp)
}

function offOf(
  before: Billet,
  values: Ground,
  shop: Shop,
  share: number,
): Partial<Record<Axis, Off>> {
  const each = share * thicknessOff(before, values, shop)
  const off: Partial<Record<Axis, Off>> = {}
  for (const [axis, side] of facesOf(values.faces))
    off[axis] = {
      ...{ low: 0, high: 0 },
      ...off[axis],
      [side]: axis === 'z' || values.to === undefined ? each : share * shop.cleanUp,
    }
  return off
}

/** Grinds faces clean, flat, or to a thickness. */
export const grind = operation({
  name: 'grind',
  summary: 'Grind named faces clean, level or to a thickness.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['ground'],
  cautions: ['dust'],
  examples: [
    { values: {}, before: [samplePack(120, 30, 12, 61)] },
    { values: { faces: 'all four', off: '1 mm' }, before: [samplePack(200, 25, 20, 7)] },
    { values: { to: '2.8 mm' }, before: [samplePack(150, 40, 10, 25)] },
    {
      values: { faces: 'top', off: '2 mm', level: true },
      before: [{ ...samplePack(150, 32, 12, 151), shape: 'cut', volume: 0.15 * 0.032 * 0.011 }],
    },
  ],
  forward([before], values, { shop, densities }, share = 1) {
    if (values.to !== undefined && values.off !== undefined) {
      return failed({
        at: 'to',
        what: 'how much to take off and what to grind to are both given',
        why: 'one follows from the other',
        try: ['leave one of them out'],
      })
    }
    const faces = facesOf(values.faces)
    const flat = faces.filter(([axis]) => axis === 'z').length
    if (values.to !== undefined && flat === 0) {
      return failed({
        at: 'to',
        what: `"to" is a thickness; the ${values.faces} are ground`,
        why: 'grinding sides or ends does not alter the thickness',
        try: ['give `off`', 'grind the flat faces'],
      })
    }
    if (values.to !== undefined && values.to > before.size.height + SAME_LENGTH) {
      return failed({
        at: 'to',
        what: `the bar is ${show(before.size.height)} thick; it cannot be ground to ${show(values.to)}`,
        why: 'grinding only takes metal off',
        try: [`grind to less than ${show(before.size.height)}`, 'draw out less before'],
      })
    }
    const off = offOf(before, values, shop, share)
    const done = takeOff(before, off, 'ground', densities)
    if (!done) return failed(groundAway(thicknessOff(before, values, shop), before))
    // Part ground, some of the relief is still there.
    const levels = values.level && share === 1 && before.shape === 'cut'
    const level = levels ? levelled(before, done.after) : done.after
    if (!level) return failed(reliefLeft(before, done.after))
    const loss = lossBetween(before, level, 'ground', densities)
    const warnings: Problem[] =
      done.lost > 0 ? [{ ...layersLost(done.lost, 'grinding'), at: 'off' }] : []
    return ok(
      step(level, {
        losses: [loss],
        warnings,
        notes:
          before.shape === 'rectangle' && flatAxis(before.build) === 'z' && flat > 0
            ? ['Ground parallel to flat layers a face shows one layer and no pattern.']
            : [],
      }),
    )
  },
  movement([before], values, _after, { shop }, share = 1) {
    return moving([peeled(offOf(before, values, shop, share))])
  },
})

/** The plain bar left when the relief is gone; undefined where the metal does not fill it. */
function levelled(before: Billet, after: Billet): Billet | undefined {
  const volume = boxVolume(after.size)
  return volume <= before.volume * (1 + 1e-9)
    ? {
        ...after,
        shape: 'rectangle',
        volume: barVolume(after.size, 'rectangle'),
        hollow: undefined,
      }
    : undefined
}

function groundAway(each: number, bar: Billet): Problem {
  return {
    at: 'off',
    what: `grinding ${show(each)} off each face leaves nothing of a bar ${show(bar.size.length)} × ${show(bar.size.width)} × ${show(bar.size.height)}`,
    why: 'both faces of a pair are ground',
    try: ['take less off', 'grind one face only'],
  }
}

function reliefLeft(bar: Billet, after: Billet): Problem {
  return {
    at: 'level',
    what: `a plain bar ${show(after.size.height)} thick holds more metal than is there`,
    why: `the relief reaches deeper: level, the metal stands ${show(bar.volume / (bar.size.length * bar.size.width))} thick on average, and its lowest places lie below that`,
    try: ['grind deeper', 'leave the relief', 'forge it flat instead'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
