import type { HeightField } from '#geometry'
import type { ValuesOf } from '#parameters'
import type { Problem } from '#problem'
import type { tangParameters } from './blade-parameters.ts'
import { type FullerSizes, fullerDepth } from './fuller.ts'
import { arcRadius, bevelHeight, leastWheelRadius } from './grind.ts'
import { type Blade, type BladeValues, filledIn } from './single-edged.ts'
import { say, tooLarge } from './too-large.ts'

/** What in the sizes of a single-edged blade cannot be made. */
export function bladeProblems(values: BladeValues): Problem[] {
  const v = filledIn(values)
  const room = v.bladeLength - v.ricassoLength
  const least = Math.min(v.spineThickness, v.middleThickness)
  const hasGrindLine = v.grind !== 'full-flat' && v.grind !== 'scandi'
  return [
    ...tooLarge(
      'ricassoLength',
      v.ricassoLength,
      v.bladeLength * 0.9,
      'the ricasso would take up the blade',
      'a longer blade',
    ),
    ...tooLarge(
      'pointLength',
      v.pointLength,
      room,
      'the point would be longer than the blade in front of the ricasso',
      'a longer blade',
    ),
    ...tooLarge(
      'clipLength',
      v.clipLength,
      room,
      'the clip would be longer than the blade in front of the ricasso',
      'a longer blade',
    ),
    ...tooLarge(
      'ricassoWidth',
      v.ricassoWidth,
      v.width,
      'the ricasso would stand out past the blade',
      'a wider blade',
    ),
    ...(v.point === 'trailing'
      ? []
      : tooLarge(
          'tipDrop',
          v.tipDrop,
          v.widthAtPoint,
          'the point would lie below the edge',
          'a wider blade',
        )),
    ...tooLarge(
      'edgeThickness',
      v.edgeThickness,
      least,
      'the edge would be thicker than the spine',
      'a thicker spine',
    ),
    ...(v.edgeThickness <= least
      ? tooLarge(
          'edgeThickness',
          v.edgeThickness,
          v.spineThicknessPoint,
          'the edge would be thicker than the point',
          `spineThicknessPoint at least ${say(v.edgeThickness)}`,
        )
      : []),
    ...(values.grindHeight !== undefined && hasGrindLine
      ? tooLarge(
          'grindHeight',
          values.grindHeight,
          v.width,
          'the grind line would lie above the spine',
          'a wider blade',
        )
      : []),
  ]
}

/** What shows only on the finished surfaces: hollows gone too deep, bellies too round, a crossed outline. */
export function grindProblems(values: BladeValues, blade: Blade): Problem[] {
  const { profile, grindSizes } = blade
  const v = filledIn(values)
  const problems: Problem[] = []
  const stations = Array.from(
    { length: 33 },
    (_, i) => v.ricassoLength + ((v.bladeLength - v.ricassoLength) * i) / 33,
  )
  const width = (s: number) => profile.spine(s) - profile.edge(s)
  if (stations.some((s) => width(s) <= 0))
    problems.push({
      at: 'tipDrop',
      what: 'edge and spine cross before the point',
      why: 'the spine falls faster than the edge leaves room',
      try: ['a smaller tipDrop', 'a clipLength nearer to pointLength'],
    })
  const rise = (s: number) => (blade.thickness(s) - v.edgeThickness) / 2
  const high = (s: number) => bevelHeight(grindSizes, width(s), blade.thickness(s), v.edgeThickness)
  const [s0] = stations
  if (v.grind === 'scandi') {
    const asked = bevelHeight(grindSizes, Infinity, blade.thickness(s0), v.edgeThickness)
    if (asked > width(s0) + 1e-12)
      problems.push({
        at: 'grindAngle',
        what: `bevels at this angle would be ${say(asked)} high`,
        why: `the blade is ${say(width(s0))} wide`,
        try: ['a larger grindAngle', 'a thinner spine', 'grind "full-flat"'],
      })
  }
  if (v.grind === 'convex')
    problems.push(
      ...tooLarge('belly', v.belly, rise(s0) / 4, 'the side would stand out past the spine'),
    )
  if (v.grind === 'hollow') {
    const radius = Math.max(
      ...stations.slice(0, -1).map((s) => leastWheelRadius(high(s), rise(s), v.edgeThickness)),
    )
    if (v.wheelDiameter < 2 * radius)
      problems.push({
        at: 'wheelDiameter',
        what: `a wheel of ${say(v.wheelDiameter)} digs to less than half the edge’s thickness behind it`,
        why: `over a bevel of ${say(high(s0))} it leaves the edge behind`,
        try: [
          `wheelDiameter at least ${say(2 * radius)}`,
          'a smaller grindHeight',
          'a thicker spine',
        ],
      })
  }
  return problems
}

/** What is wrong with fullers cut in this field; `offset` 0 is the middle line of each. */
export function fullerProblems(
  fullers: readonly FullerSizes[],
  before: HeightField,
  after: HeightField,
  bladeStart: number,
): Problem[] {
  const end = before.xBreaks[before.xBreaks.length - 1]
  return fullers.flatMap((f, i) => {
    const at = (name: string) => `fullers[${i}].${name}`
    const problems = [
      ...tooLarge(
        at('depth'),
        f.depth,
        f.width / 2,
        'a round trough cannot be deeper than half its width',
        'a wider fuller',
      ),
      ...tooLarge(at('runOut'), f.runOut, f.length / 2, 'the two run-outs would overlap'),
      ...tooLarge(
        at('length'),
        f.length,
        end - f.start,
        'the fuller would run out past the point',
        'a smaller start',
      ),
    ]
    if (problems.length > 0 || f.start < bladeStart) return problems
    const places = Array.from({ length: 41 }, (_, k) => f.start + (f.length * (k + 0.5)) / 41)
    const radius = arcRadius(f.width, f.depth)
    const over = places.find((x) => {
      const half = Math.sqrt(fullerDepth(f, x) * (2 * radius - fullerDepth(f, x)))
      const ys = before.yBreaks(x)
      return f.middle(x) - half < ys[0] || f.middle(x) + half > ys[ys.length - 1]
    })
    if (over !== undefined)
      return [
        {
          at: at('offset'),
          what: `the fuller runs out of the side ${say(over - bladeStart)} from the shoulder`,
          why: 'half its width reaches past spine or edge there',
          try: ['end it earlier: a smaller length', 'another offset', 'a narrower fuller'],
        },
      ]
    const share = Math.min(
      ...places.flatMap((x) =>
        [-0.6, -0.3, 0, 0.3, 0.6].map((u) => {
          const y = f.middle(x) + (u * f.width) / 2
          const had = before.top(x, y) - before.bottom(x, y)
          const taken = had - (after.top(x, y) - after.bottom(x, y))
          return taken > 0 ? had / taken : Infinity
        }),
      ),
    )
    if (share > 1) return []
    return [
      {
        at: at('depth'),
        what: `${say(f.depth)} is deeper than the metal there is`,
        why:
          f.faces === 'both'
            ? 'two fullers back to back, each half the thickness deep, meet'
            : 'the fuller comes through the other face',
        try: [
          `depth below ${say(f.depth * share * 0.999)}`,
          'a thicker blade',
          'a fuller nearer the thickest line',
        ],
      },
    ]
  })
}

/** What in a hidden tang's sizes cannot be made against a shoulder of this width and thickness. */
export function tangProblems(
  v: ValuesOf<typeof tangParameters>,
  shoulderWidth: number,
  shoulderThickness: number,
): Problem[] {
  const thick = v.tangThickness ?? shoulderThickness
  const r = v.tangHole / 2
  const along = v.tangLength - v.tangHoleFromShoulder
  const width = v.tangEndWidth + ((v.tangWidth - v.tangEndWidth) * along) / v.tangLength
  return [
    ...tooLarge(
      'tangWidth',
      v.tangWidth,
      shoulderWidth,
      'the tang would be wider than the shoulder',
      'a wider ricasso',
    ),
    ...tooLarge(
      'tangEndWidth',
      v.tangEndWidth,
      shoulderWidth,
      'the tang would be wider than the shoulder',
    ),
    ...tooLarge(
      'tangThickness',
      thick,
      shoulderThickness,
      'the tang would be thicker than the blade at the shoulder',
      'a thicker spine',
    ),
    ...tooLarge(
      'tangEndThickness',
      v.tangEndThickness,
      shoulderThickness,
      'the tang would be thicker than the blade at the shoulder',
    ),
    ...(r > 0
      ? [
          ...tooLarge(
            'tangHoleFromShoulder',
            v.tangHoleFromShoulder,
            v.tangLength - r,
            'the hole would break through the end of the tang',
            'a longer tang',
          ),
          ...tooLarge(
            'tangHole',
            v.tangHole,
            Math.min(width, 2 * v.tangHoleFromShoulder),
            'the hole is wider than the tang there',
            'a wider tang',
          ),
        ]
      : []),
  ]
}
