import { describe, expect, it } from 'vitest'
import { readValues } from '#parameters'
import type { Problem } from '#problem'
import { findPieceKind } from './piece-kinds.ts'

function problemsOf(kind: string, raw: Record<string, unknown>): readonly Problem[] {
  const { parameters, build } = findPieceKind(kind).ok!
  const read = readValues(parameters, raw)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return build(read.ok.values).problems ?? []
}

const knife = 'hidden-tang-knife'

/** Kind, sizes that cannot be, where it must point, and a mended value of that name. */
const wrong: readonly (readonly [
  string,
  Record<string, unknown>,
  string,
  Record<string, unknown>,
])[] = [
  ['bar', { edge: 'radius', edgeSize: '20 mm' }, 'edgeSize', { edgeSize: '15 mm' }],
  ['plaque', { cornerRadius: '40 mm' }, 'cornerRadius', { cornerRadius: '31.7 mm' }],
  ['plaque', { holes: 'corners', holeInset: '2 mm' }, 'holeInset', { holeInset: '6.75 mm' }],
  [
    'plaque',
    { holes: 'corners', cornerRadius: '20 mm', holeInset: '4 mm', holeDiameter: '4 mm' },
    'holeInset',
    { holeInset: '7.3 mm' },
  ],
  ['plaque', { holes: 'corners', holeInset: '40 mm' }, 'holeInset', { holeInset: '29 mm' }],
  [
    'plaque',
    { grooves: [{ depth: '4 mm' }] },
    'grooves[0].depth',
    { grooves: [{ depth: '3.17 mm' }] },
  ],
  [
    'plaque',
    { grooves: [{ inset: '1 mm' }] },
    'grooves[0].inset',
    { grooves: [{ inset: '3 mm' }] },
  ],
  [
    'plaque',
    { grooves: [{ path: 'along', offset: '31 mm' }] },
    'grooves[0].offset',
    { grooves: [{ path: 'along', offset: '30.2 mm' }] },
  ],
  [
    'plaque',
    { stampLength: '140 mm', stampWidth: '10 mm' },
    'stampLength',
    { stampLength: '127 mm' },
  ],
  ['ring-blank', { insideDiameter: '24 mm' }, 'insideDiameter', { insideDiameter: '23 mm' }],
  ['ring-blank', { comfortRadius: '4.1 mm' }, 'comfortRadius', { comfortRadius: '4.6 mm' }],
  ['guard', { slotWidth: '20 mm' }, 'slotWidth', { slotWidth: '17 mm' }],
  ['guard', { slotOffset: '30 mm' }, 'slotLength', { slotLength: '10 mm' }],
  [knife, { tangWidth: '40 mm' }, 'tangWidth', { tangWidth: '30 mm' }],
  [knife, { tangThickness: '5 mm' }, 'tangThickness', { tangThickness: '4 mm' }],
  [knife, { tangHole: '14 mm' }, 'tangHole', { tangHole: '8 mm' }],
  [knife, { edgeThickness: '5 mm' }, 'edgeThickness', { edgeThickness: '1.5 mm' }],
  [knife, { point: 'clip', clipLength: '130 mm' }, 'clipLength', { clipLength: '112 mm' }],
  [knife, { pointLength: '119 mm' }, 'pointLength', { pointLength: '112 mm' }],
  [knife, { grind: 'flat', grindHeight: '40 mm' }, 'grindHeight', { grindHeight: '30 mm' }],
  [
    knife,
    { grind: 'hollow', grindHeight: '25 mm', wheelDiameter: '100 mm' },
    'wheelDiameter',
    { wheelDiameter: '800 mm' },
  ],
  [knife, { grind: 'convex', belly: '2 mm' }, 'belly', { belly: '0.4 mm' }],
  [knife, { grind: 'scandi', grindAngle: '4°' }, 'grindAngle', { grindAngle: '12°' }],
  [
    knife,
    { fullers: [{ depth: '2.2 mm' }] },
    'fullers[0].depth',
    { fullers: [{ depth: '0.8 mm' }] },
  ],
  [
    knife,
    { fullers: [{ width: '8 mm', depth: '4.5 mm' }] },
    'fullers[0].depth',
    { fullers: [{ depth: '0.5 mm' }] },
  ],
  [
    knife,
    { fullers: [{ offset: '2 mm' }] },
    'fullers[0].offset',
    { fullers: [{ offset: '8 mm' }] },
  ],
  [
    knife,
    { fullers: [{ start: '100 mm' }] },
    'fullers[0].length',
    { fullers: [{ start: '20 mm' }] },
  ],
  [
    'full-tang-knife',
    { pins: [{ fromShoulder: '109 mm' }] },
    'pins[0]',
    { pins: [{ fromShoulder: '90 mm' }] },
  ],
  ['full-tang-knife', { buttRadius: '20 mm' }, 'buttRadius', { buttRadius: '14 mm' }],
  [
    'dagger',
    { section: 'hollow-diamond', wheelDiameter: '60 mm' },
    'wheelDiameter',
    { wheelDiameter: '300 mm' },
  ],
  ['dagger', { edgeThickness: '4 mm' }, 'edgeThickness', { edgeThickness: '1 mm' }],
  ['sword', { curve: '180 mm' }, 'curve', { curve: '30 mm' }],
]

describe('sizes that cannot be', () => {
  it.each(wrong)('%s %j points at %s, and is mended there', (kind, raw, place, mended) => {
    const problems = problemsOf(kind, raw)
    expect(problems.map((p) => p.at)).toContain(place)
    for (const problem of problems) {
      expect(problem.try.length).toBeGreaterThan(0)
      expect(problem.what + problem.why).not.toMatch(/NaN|undefined/)
    }
    expect(problemsOf(kind, { ...raw, ...mended })).toEqual([])
  })

  it('names a depth of fuller that does fit', () => {
    const sizes = { width: '8 mm', offset: '10 mm', runOut: '10 mm' }
    const [problem] = problemsOf(knife, { fullers: [{ ...sizes, depth: '2.2 mm' }] })
    const named = /([\d.]+) mm/.exec(problem.try[0])![1]
    const less = `${(Number(named) * 0.98).toFixed(3)} mm`
    expect(problemsOf(knife, { fullers: [{ ...sizes, depth: less }] })).toEqual([])
  })
})
