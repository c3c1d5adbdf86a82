import { type ValuesOf, declare } from '#parameters'
import { size, sizeIfGiven } from '../size-parameter.ts'
import type { Problem } from '#problem'
import { bladeProblems, grindProblems } from '../blade-checks.ts'
import { bladeParameters, fullersParameter } from '../blade-parameters.ts'
import { type Part, evenly } from '../blade-parts.ts'
import { bladeSolid } from '../blade-solid.ts'
import { grindLines, spineFullers } from '../hidden-tang-blade.ts'
import type { PieceKind } from '../piece-kind.ts'
import { bladeOf, filledIn } from '../single-edged.ts'
import { say, tooLarge } from '../too-large.ts'

const hole = declare({
  diameter: size('6 mm', 5e-4, 0.03, 'Diameter of the hole.'),
  fromShoulder: size('30 mm', 0, 0.3, 'From the shoulder to its middle.'),
  offset: size('0 mm', -0.05, 0.05, 'From the middle line of the handle, towards the spine.'),
})

const parameters = declare({
  ...bladeParameters,
  ...fullersParameter,
  handleLength: size('110 mm', 0.02, 0.4, 'From shoulder to butt.'),
  handleWidth: sizeIfGiven(
    5e-3,
    0.1,
    'Width of the tang at the shoulder; as the ricasso if left out.',
  ),
  handleWidthMiddle: size('24 mm', 5e-3, 0.1, 'Width half way.'),
  handleWidthButt: size('28 mm', 5e-3, 0.1, 'Width at the butt.'),
  buttRadius: size('8 mm', 0, 0.05, 'Radius of the two corners of the butt.'),
  buttThickness: sizeIfGiven(
    3e-4,
    0.03,
    'Thickness at the butt of a tapered tang; as the spine if left out.',
  ),
  pins: {
    form: 'list',
    item: hole,
    fewest: 0,
    most: 8,
    default: [{ fromShoulder: '25 mm' }, { fromShoulder: '85 mm' }],
    help: 'Pin holes in the tang.',
  },
  lightening: {
    form: 'list',
    item: hole,
    fewest: 0,
    most: 20,
    default: [],
    help: 'Holes drilled to make the tang lighter.',
  },
})

type Values = ValuesOf<typeof parameters>

/** Width on a parabola through butt, middle and shoulder; the butt's corners rounded. */
function handlePart(v: Values, width: number, middle: number): Part {
  const length = v.handleLength
  const [butt, half] = [v.handleWidthButt, v.handleWidthMiddle]
  const bend = butt - 2 * half + width
  const sides = (s: number) => {
    const t = s / length
    return (butt + (width - butt - 2 * bend) * t + 2 * bend * t * t) / 2
  }
  const rounded = (s: number) => {
    const r = v.buttRadius
    return s >= r ? 0 : r - Math.sqrt(Math.max(0, r * r - (r - s) ** 2))
  }
  const thick = evenly((v.buttThickness ?? v.spineThickness) / 2, v.spineThickness / 2, length)
  return {
    length,
    breaks: [v.buttRadius],
    low: (s) => middle - sides(s) + rounded(s),
    high: (s) => middle + sides(s) - rounded(s),
    kinks: () => [],
    top: thick,
    bottom: (s) => -thick(s),
  }
}

function holeProblems(v: Values, part: Part): Problem[] {
  return (['pins', 'lightening'] as const).flatMap((list) =>
    v[list].flatMap(({ diameter, fromShoulder, offset }, i) => {
      const s = v.handleLength - fromShoulder
      const r = diameter / 2
      const middle = (part.low(0) + part.high(0)) / 2
      const around = Array.from({ length: 24 }, (_, k) => (2 * Math.PI * k) / 24)
      const outside = around.some((a) => {
        const [x, y] = [s + r * Math.cos(a), middle + offset + r * Math.sin(a)]
        return x <= 0 || x > v.handleLength || y <= part.low(x) || y >= part.high(x)
      })
      if (!outside) return []
      return [
        {
          at: `${list}[${i}]`,
          what: `a hole of ${say(diameter)}, ${say(fromShoulder)} from the shoulder, breaks out of the tang`,
          why: 'the hole reaches past the outline of the handle',
          try: [
            `fromShoulder between ${say(r)} and ${say(v.handleLength - r)}`,
            'offset nearer to 0',
            'a smaller diameter',
          ],
        },
      ]
    }),
  )
}

/** Knife whose tang is as wide as the handle. */
export const fullTangKnife: PieceKind<typeof parameters> = {
  name: 'full-tang-knife',
  title: 'Knife, full tang',
  summary: 'A single-edged blade whose tang has the outline of the handle, drilled for pins.',
  parameters,
  sizes: ['bladeLength', 'width', 'spineThickness', 'handleLength'],
  thicknesses: ['spineThickness', 'spineThicknessMiddle', 'spineThicknessPoint', 'buttThickness'],
  examples: [
    {},
    {
      bladeLength: '105 mm',
      width: '28 mm',
      grind: 'hollow',
      grindHeight: '16 mm',
      wheelDiameter: '350 mm',
      point: 'concave-clip',
      buttThickness: '2 mm',
      lightening: [
        { fromShoulder: '45 mm', diameter: '10 mm' },
        { fromShoulder: '60 mm', diameter: '10 mm' },
      ],
    },
  ],
  build: (values) => {
    const v = filledIn(values)
    const width = values.handleWidth ?? v.ricassoWidth
    const middle = v.width / 2 - v.ricassoWidth / 2
    const part = handlePart(values, width, middle)
    const narrowest = Math.min(
      ...Array.from(
        { length: 33 },
        (_, i) => part.high((i / 32) * part.length) - part.low((i / 32) * part.length),
      ),
    )
    const problems = [
      ...bladeProblems(values),
      ...tooLarge(
        'buttRadius',
        values.buttRadius,
        values.handleWidthButt / 2,
        'the two corners of the butt would meet',
      ),
      ...tooLarge(
        'buttThickness',
        values.buttThickness ?? 0,
        v.spineThickness,
        'the butt would be thicker than the blade',
      ),
      ...(narrowest < 0
        ? [
            {
              at: 'handleWidthMiddle',
              what: 'the handle closes to nothing',
              why: 'the curve through its three widths passes below zero',
              try: ['three widths nearer to each other'],
            },
          ]
        : []),
      ...holeProblems(values, part),
    ]
    if (problems.length > 0) return { problems }
    const blade = bladeOf(values)
    const surface = grindProblems(values, blade)
    if (surface.length > 0) return { problems: surface }
    const holes = (['pins', 'lightening'] as const).flatMap((list) =>
      values[list].map(({ diameter, fromShoulder, offset }) => ({
        name: list === 'pins' ? 'pin hole' : 'lightening hole',
        at: { x: values.handleLength - fromShoulder, y: middle + offset },
        diameter,
      })),
    )
    return bladeSolid({
      kind: 'full-tang-knife',
      handle: part,
      blade: blade.part,
      fullers: spineFullers(values.fullers, blade, v.width),
      holes,
      lines: grindLines(blade, v.ricassoLength),
      thickest: Math.max(v.spineThickness, v.middleThickness, v.spineThicknessPoint),
    })
  },
}
