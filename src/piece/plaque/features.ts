import { type Point } from '#geometry'
import { type Cut, roundHole } from '../cut.ts'
import type { ValuesOf } from '#parameters'
import { type Problem, within } from '#problem'
import { grooveHalfWidth, straightGroove, trackGroove, trackPath } from '../ball-groove.ts'
import type { Feature, Groove, Hole, StampBox } from '../piece-kind.ts'
import { boxCut } from '../plate.ts'
import { say, tooLarge } from '../too-large.ts'
import type { parameters } from './parameters.ts'

type Values = ValuesOf<typeof parameters>

/** Something cut in the plaque: what it takes away, how it is drawn, what is wrong with it. */
export interface Cutting {
  readonly kind: Feature['kind']
  readonly cuts: readonly Cut[]
  readonly holes?: readonly Hole[]
  readonly grooves?: readonly Groove[]
  readonly stamp?: StampBox
  readonly problems: readonly Problem[]
}

export function holesOf(v: Values): Cutting {
  if (v.holes === 'none') return { kind: 'hole', cuts: [], problems: [] }
  const across = v.width / 2 - v.holeInset
  const places: Point[] = [v.holeInset, v.length - v.holeInset].flatMap((x) =>
    (v.holes === 'corners' ? [-across, across] : [0]).map((y) => ({ x, y })),
  )
  const r = v.holeDiameter / 2
  const problems: Problem[] = []
  if (v.holeInset < r) {
    problems.push({
      at: 'holeInset',
      what: `a hole of ${say(v.holeDiameter)} set ${say(v.holeInset)} in breaks through the edge`,
      why: 'half the hole reaches past the outline',
      try: [
        `holeInset at least ${say(r + v.holeDiameter)}, one diameter of metal left`,
        `holeDiameter below ${say(2 * v.holeInset)}`,
      ],
    })
  } else {
    const c = v.cornerRadius
    const short = c - v.holeInset
    const room = v.holes === 'corners' && short > 0 ? c - Math.SQRT2 * short : v.holeInset
    if (room < r)
      problems.push({
        at: 'holeInset',
        what: `a hole of ${say(v.holeDiameter)} set ${say(v.holeInset)} in breaks through the rounded corner`,
        why: `the corner of radius ${say(c)} leaves ${say(Math.max(0, room))} from the middle of the hole`,
        try: [`holeInset at least ${say(c - (c - r) / Math.SQRT2)}`, 'a smaller cornerRadius'],
      })
  }
  const most = Math.min(v.length / 2, v.holes === 'corners' ? v.width / 2 : Infinity) - r
  problems.push(
    ...tooLarge(
      'holeInset',
      v.holeInset,
      most,
      'the holes of two corners would run into each other',
    ),
  )
  if (v.holes === 'ends')
    problems.push(
      ...tooLarge('holeDiameter', v.holeDiameter, v.width, 'the hole is wider than the plaque'),
    )
  return {
    kind: 'hole',
    cuts: places.map((at) => roundHole(at, v.holeDiameter)),
    holes: places.map((at) => ({ name: 'screw hole', at, diameter: v.holeDiameter })),
    problems,
  }
}

export function groovesOf(v: Values): Cutting {
  const made = v.grooves.map((groove, i) => oneGroove(v, groove, `grooves[${i}]`))
  return {
    kind: 'groove',
    cuts: made.flatMap((g) => g.cuts),
    grooves: made.flatMap((g) => g.grooves ?? []),
    problems: made.flatMap((g) => g.problems),
  }
}

function oneGroove(v: Values, g: Values['grooves'][number], at: string): Cutting {
  const cutter = { diameter: g.cutter, depth: g.depth, face: 'back' } as const
  const half = grooveHalfWidth(cutter)
  const centre = { x: v.length / 2, y: 0 }
  const base = { width: 2 * half, depth: g.depth, face: 'back', name: 'groove' } as const
  const problems = [
    ...tooLarge('depth', g.depth, v.thickness / 2, 'it leaves less than half the thickness'),
  ]
  if (g.path === 'around') {
    const [length, width] = [v.length - 2 * g.inset, v.width - 2 * g.inset]
    const corner = g.corner ?? Math.min(2 * g.cutter, length / 2, width / 2)
    if (g.inset < half) problems.push(outside('inset', g.inset, half))
    problems.push(
      ...tooLarge(
        'inset',
        g.inset,
        Math.min(v.length, v.width) / 2 - half,
        'the two sides of the groove would meet in the middle',
      ),
      ...tooLarge(
        'corner',
        corner,
        Math.min(length, width) / 2,
        'the rounded corners of the groove would overlap',
      ),
    )
    if (corner < half && problems.length === 0)
      problems.push({
        at: 'corner',
        what: `${say(corner)} is sharper than the cutter can turn`,
        why: `the groove is ${say(2 * half)} wide`,
        try: [`corner at least ${say(half)}`],
      })
    return {
      kind: 'groove',
      cuts: [trackGroove(cutter, { centre, length, width, corner })],
      grooves: [{ ...base, path: trackPath(centre, length, width, corner) }],
      problems: within(at, problems),
    }
  }
  const along = g.path === 'along'
  const run = (along ? v.length : v.width) / 2 - g.inset
  const room = (along ? v.width : v.length) / 2 - half
  if (g.inset < half) problems.push(outside('inset', g.inset, half))
  problems.push(
    ...tooLarge(
      'inset',
      g.inset,
      (along ? v.length : v.width) / 2,
      'nothing is left of the groove',
    ),
    ...tooLarge('offset', Math.abs(g.offset), room, 'the groove runs out of the side'),
  )
  const ends: [Point, Point] = along
    ? [
        { x: centre.x - run, y: g.offset },
        { x: centre.x + run, y: g.offset },
      ]
    : [
        { x: centre.x + g.offset, y: -run },
        { x: centre.x + g.offset, y: run },
      ]
  return {
    kind: 'groove',
    cuts: [straightGroove(cutter, ...ends)],
    grooves: [{ ...base, path: ends }],
    problems: within(at, problems),
  }
}

function outside(at: string, value: number, least: number): Problem {
  return {
    at,
    what: `${say(value)} lets the groove break out at the edge`,
    why: `half its width is ${say(least)}`,
    try: [`${at} at least ${say(2 * least)}`, 'a smaller cutter'],
  }
}

export function stampOf(v: Values): Cutting {
  if (v.stampLength === undefined) return { kind: 'stamp', cuts: [], problems: [] }
  const [length, width] = [v.stampLength, v.stampWidth ?? v.stampLength]
  const border = v.edge === 'square' ? 0 : v.edgeSize
  const room = (side: number, off: number) => side - 2 * Math.abs(off) - 2 * border
  const stamp: StampBox = {
    at: { x: v.length / 2 + v.stampX, y: v.stampY },
    length,
    width,
    depth: v.stampDepth,
    share: v.stampShare,
  }
  return {
    kind: 'stamp',
    cuts: [boxCut({ ...stamp.at, length, width, depth: v.stampDepth * v.stampShare })],
    stamp,
    problems: [
      ...tooLarge(
        'stampLength',
        length,
        room(v.length, v.stampX),
        'the stamp reaches past the flat of the face',
      ),
      ...tooLarge(
        v.stampWidth === undefined ? 'stampLength' : 'stampWidth',
        width,
        room(v.width, v.stampY),
        'the stamp reaches past the flat of the face',
      ),
      ...tooLarge(
        'stampDepth',
        v.stampDepth,
        v.thickness / 2,
        'it presses deeper than half the thickness',
      ),
    ],
  }
}
