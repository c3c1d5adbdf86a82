import { type Problem, failed, ok } from '#problem'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { twist as twistWarp, twistZones } from '#warp'
import { type Billet, wholeCount, worked } from '#billet'
import { along, moving } from '#movement'
import { operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { warm } from '../warm.ts'

const parameters = declare({
  pitch: {
    form: 'quantity',
    of: 'twist',
    min: 0.2,
    max: 1000,
    optional: true,
    help: 'How tight: length to one full turn, or turns to the inch; give this or `turn`',
  },
  turn: {
    form: 'quantity',
    of: 'angle',
    min: 0.1,
    max: 6000,
    optional: true,
    help: 'How far each twisted zone is turned in all, such as "3 turns"; give this or `pitch`',
  },
  hand: {
    form: 'choice',
    options: {
      right: 'right-hand, like a common screw: stripes on the top face fall to the right',
      left: 'left-hand: stripes on the top face fall to the left',
      alternating: 'right-hand in the first zone, left-hand in the next, and so on',
    },
    default: 'right',
    help: 'Which way the bar is turned',
  },
  startPhase: {
    form: 'quantity',
    of: 'angle',
    min: -7,
    max: 7,
    default: '0°',
    help: 'How far the section already stands turned where the twist begins: matches bars laid side by side',
  },
  zones: {
    form: 'count',
    min: 1,
    max: 40,
    default: 1,
    help: 'Twisted zones along the bar; more than one is an interrupted twist',
  },
  gap: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 1,
    default: '25 mm',
    help: 'Straight bar left between two zones',
  },
  ends: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.5,
    default: '25 mm',
    help: 'Straight bar left at each end, in the vice and in the wrench',
  },
  zonePerHeat: {
    form: 'quantity',
    of: 'length',
    min: 0.02,
    max: 1,
    default: '125 mm',
    help: 'Length twisted in one heat, at one even colour (common practice: 100 to 150 mm)',
  },
})

/** Turns on a bar with corners beyond which it is rounded first (common practice: 1½ to 2). */
const TURNS_ON_CORNERS = 1.5
/** Shear at the skin at which spiral cracks have opened on flattening (common practice, one account: 2.4). */
const SHEAR_TO_WATCH = 2.4

/** Twists the bar about its length. */
export const twist = operation({
  name: 'twist',
  summary: 'Twist the bar at one even heat, a zone at a time, over its whole length or in zones.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas'],
  examples: [
    {
      values: { pitch: '1 per inch' },
      before: [
        {
          ...sampleBar(360, 11, 11, '1084', 'octagon'),
          build: worked('forged to an octagon', samplePack(360, 11, 11, 9).build),
        },
      ],
    },
    {
      values: { turn: '1/4 turn', hand: 'left', ends: '0 mm' },
      before: [samplePack(100, 12, 12, 7)],
    },
    {
      values: {
        pitch: '16 mm pitch',
        hand: 'alternating',
        zones: 5,
        gap: '20 mm',
        zonePerHeat: '60 mm',
      },
      before: [sampleBar(600, 12, 12, '1084', 'round')],
    },
  ],
  forward([before], given, smithy, share = 1) {
    const values = turnedBy(given, share)
    const loose = unwelded(before, 'twisting')
    if (loose) return failed(loose)
    if ((values.pitch === undefined) === (values.turn === undefined)) {
      return failed({
        at: 'pitch',
        what:
          values.pitch === undefined
            ? 'how tight to twist is not said'
            : 'pitch and turn are both given',
        why: 'one follows from the other and the length of the zone',
        try: [
          'give `pitch`, such as "25 mm pitch" or "1 per inch"',
          'give `turn`, such as "3 turns"',
        ],
      })
    }
    const { zones, gap, ends } = values
    const twisted = before.size.length - 2 * ends - (zones - 1) * gap
    if (!(twisted > 0)) {
      return failed({
        at: zones > 1 ? 'gap' : 'ends',
        what: `nothing of a bar ${show(before.size.length)} long is left to twist`,
        why: `${show(ends)} at each end${zones > 1 ? ` and ${printCount(zones - 1, 'gap')} of ${show(gap)}` : ''} stay straight`,
        try: ['leave less straight', 'draw the bar longer first'],
      })
    }
    const { shop } = smithy
    const heats = Math.max(zones, Math.ceil(twisted / values.zonePerHeat - 1e-9))
    // Every place is twisted in one heat and stands in the fire for its neighbours' heats as well.
    const inFire = Math.min(shop.longestHeat, before.size.length)
    const times = Math.max(1, Math.min(heats, inFire / values.zonePerHeat))
    const warmed = warm(
      before,
      {
        purpose: 'forge',
        count: heats,
        temperature: shop.forgingHeat,
        scale: shop.forgingScale * times,
        stop: shop.stopHeat,
      },
      smithy,
    )
    if (warmed.problems) return warmed
    const { bar, losses, heats: fire, warnings } = warmed.ok
    const zone = twisted / zones
    const turns =
      values.turn !== undefined ? values.turn / (2 * Math.PI) : (values.pitch as number) * zone
    const pitch = zone / turns
    const radius = Math.max(bar.size.width, bar.size.height) / 2
    const corner =
      bar.shape === 'rectangle' ? Math.hypot(bar.size.width, bar.size.height) / 2 : radius
    const shear = (2 * Math.PI * radius) / pitch
    const after: Billet = {
      ...envelope(bar, turns, values, zonesOf(before, values)),
      temper: 'as forged',
      build: worked(`twisted ${values.hand}, ${show(pitch)} pitch`, bar.build),
    }
    const layers = wholeCount(before.build).merged
    return ok(
      step(after, {
        losses,
        heats: fire,
        warnings: [
          ...warnings,
          ...youngWelds(before, 'twist', 'twisting'),
          ...corners(bar, turns),
          ...sheared(shear, pitch, corner / radius),
          ...tooFine(layers, pitch),
        ],
        notes: [
          `${printCount(figure(turns), 'turn')} in ${zones === 1 ? `${show(zone)} of bar` : `each of ${zones} zones of ${show(zone)}`}: one turn every ${show(pitch)}.`,
          `Ground to its middle it shows a star every ${show(pitch / 2)}; stars stand upright (within 10°) only where no more than ${show(0.056 * pitch)} is left over the middle.`,
          `The skin is sheared by ${figure(shear)}; a bar that still has corners shows four ridges to the turn, ${show(pitch / 4)} apart.`,
          'A twisted bar changes its length by 1 to 2 %; the account leaves it as it was: measure it.',
          'Keep the colour even: only the hottest, thinnest place turns. Note the hand on each bar.',
        ],
      }),
    )
  },
  movement([before], given, after, _smithy, share = 1) {
    const values = turnedBy(given, share)
    const burnt = (before.size.length - after.size.length) / 2
    return moving([twistOf(before, values, after.size.length, burnt), along(burnt)], {
      // Its eight corners turn with it; the account goes on with the section as it was.
      ...(after.shape === 'octagon' ? { beyond: 0.042 * after.size.width } : {}),
    })
  },
})

/** A bar with corners, twisted, fills a wider box: the widest its section gets on the way round. */
function envelope(
  bar: Billet,
  turns: number,
  { startPhase }: Zoned,
  zones: readonly TwistZone[],
): Billet {
  if (bar.shape !== 'rectangle') return bar
  const { width: w, height: h } = bar.size
  const angle = Math.abs(turns) * 2 * Math.PI
  const side = (a: number, b: number) => {
    const widest = Math.atan2(b, a)
    const at = Math.min(angle, widest)
    return a * Math.cos(at) + b * Math.sin(at)
  }
  const size = { ...bar.size, width: side(w, h), height: side(h, w) }
  const burnt = (zones[0].whole - bar.size.length) / 2
  const share = (x: number) => Math.min(1, Math.max(0, (x - burnt) / bar.size.length))
  return {
    ...bar,
    shape: 'cut',
    size,
    hollow: {
      form: 'twisted',
      width: w / size.width,
      height: h / size.height,
      phase: startPhase / (2 * Math.PI),
      zones: zones.map(({ from, to, turns: by }) => ({
        from: share(from),
        to: share(to),
        turns: by,
      })),
    },
  }
}

/** The values with a share of the turning done, from a bar that stands straight. */
function turnedBy<V extends Zoned>(values: V, share: number): V {
  const { pitch, turn, startPhase } = values
  const part = (whole: number | undefined) => (whole === undefined ? undefined : whole * share)
  return { ...values, pitch: part(pitch), turn: part(turn), startPhase: startPhase * share }
}

interface Zoned {
  readonly pitch?: number
  readonly turn?: number
  readonly hand: 'right' | 'left' | 'alternating'
  readonly startPhase: number
  readonly zones: number
  readonly gap: number
  readonly ends: number
}

/** A twisted zone of a bar `whole` long, m, and the turns made in it, right-hand positive. */
interface TwistZone {
  readonly from: number
  readonly to: number
  readonly turns: number
  readonly whole: number
}

function zonesOf({ size: { length } }: Billet, values: Zoned): readonly TwistZone[] {
  const { zones, gap, ends, hand } = values
  const zone = (length - 2 * ends - (zones - 1) * gap) / zones
  const turns = values.turn !== undefined ? values.turn / (2 * Math.PI) : (values.pitch ?? 0) * zone
  return Array.from({ length: zones }, (_, i) => {
    const from = ends + i * (zone + gap)
    const left = hand === 'left' || (hand === 'alternating' && i % 2 === 1)
    return { from, to: from + zone, turns: left ? -turns : turns, whole: length }
  })
}

/** The twist as a map of the bar after it, whose start has been burnt back. */
function twistOf(before: Billet, values: Zoned, length: number, burnt: number) {
  const zones = zonesOf(before, values)
  const phase = values.startPhase / (2 * Math.PI)
  const [{ from, to, turns }] = zones
  if (zones.length === 1 && values.ends === 0) {
    const rate = turns / (to - from)
    const pitch = 1 / Math.abs(rate)
    return twistWarp({ pitch, hand: rate < 0 ? 'left' : 'right', phase: phase + rate * burnt })
  }
  // What was turned before the bar's new start stays turned: it is in the phase.
  const before0 = zones.reduce((sum, z) => {
    const gone = Math.max(0, Math.min(burnt, z.to) - z.from)
    return sum + (z.turns * gone) / (z.to - z.from)
  }, 0)
  const left = zones.map((z) => {
    const [a, b] = [Math.max(0, z.from - burnt), Math.min(length, z.to - burnt)]
    return { from: a, to: b, turns: (z.turns * (b - a)) / (z.to - z.from) }
  })
  return twistZones({
    length,
    zones: left.filter((z) => z.to > z.from),
    phase: phase + before0,
    cells: 1024,
  })
}

function corners(bar: Billet, turns: number): Problem[] {
  if (bar.shape === 'octagon' || bar.shape === 'round' || turns <= TURNS_ON_CORNERS) return []
  return [
    {
      at: '',
      what: `${printCount(figure(turns), 'turn')} on a bar with corners`,
      why: 'the corners stretch most and tear first; a square bar takes 1½ to 2 turns (common practice)',
      try: ['forge it to an octagon or round first', 'twist less'],
    },
  ]
}

function sheared(shear: number, pitch: number, cornerShare: number): Problem[] {
  const most = shear * cornerShare
  if (most <= SHEAR_TO_WATCH) return []
  return [
    {
      at: '',
      what: `the skin is sheared by ${figure(most)} at one turn every ${show(pitch)}`,
      why: 'shear at the skin is 2π × radius ÷ pitch; at about 2.4 spiral cracks have opened when the bar was flattened (common practice, one account)',
      try: [
        `a slacker twist: one turn every ${show((pitch * most) / SHEAR_TO_WATCH)}`,
        'a thinner bar',
        'forge it round first, twist near welding heat, and grind the ridges off before flattening',
      ],
    },
  ]
}

function tooFine(layers: number, pitch: number): Problem[] {
  if (layers <= 100 || pitch > 0.04) return []
  return [
    {
      at: '',
      what: `${printCount(layers, 'layer')} twisted to one turn every ${show(pitch)}`,
      why: 'over about 100 layers a tight twist blurs into grey; bold twists have 5 to 50 (common practice)',
      try: ['fewer layers', 'a slacker twist'],
    },
  ]
}

const figure = (n: number) => String(Number(n.toPrecision(3)))
const show = (m: number) => printQuantity(m, 'length')
