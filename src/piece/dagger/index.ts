import type { Problem } from '#problem'
import { tangPart } from '../blade-parts.ts'
import { tangProblems } from '../blade-checks.ts'
import { bladeSolid } from '../blade-solid.ts'
import { type DaggerValues, daggerPart, halfWidthOf, ridgeOf } from '../double-edged.ts'
import { leastWheelRadius } from '../grind.ts'
import type { PieceKind } from '../piece-kind.ts'
import { say, tooLarge } from '../too-large.ts'
import { daggerParameters } from './parameters.ts'

function problemsOf(v: DaggerValues): Problem[] {
  const room = v.bladeLength - v.ricassoLength
  const ridge = ridgeOf(v)
  const least = Math.min(...[0, 0.5, 1].map((u) => ridge(u * v.bladeLength)))
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
      'edgeThickness',
      v.edgeThickness,
      least,
      'the edges would be thicker than the middle',
      'a thicker middle',
    ),
    ...tangProblems(v, v.width, v.ridgeThickness),
    ...(least > v.edgeThickness ? hollowProblems(v) : []),
  ]
}

/** The hollow may leave no less than half the edge's thickness behind it. */
function hollowProblems(v: DaggerValues): Problem[] {
  if (v.section !== 'hollow-diamond') return []
  const [half, ridge] = [halfWidthOf(v), ridgeOf(v)]
  const radius = Math.max(
    ...Array.from({ length: 33 }, (_, i) => {
      const s = (v.bladeLength * i) / 33
      const rise = (ridge(s) - v.edgeThickness) / 2
      return leastWheelRadius(half(s), rise, v.edgeThickness)
    }),
  )
  if (v.wheelDiameter >= 2 * radius) return []
  return [
    {
      at: 'wheelDiameter',
      what: `a wheel of ${say(v.wheelDiameter)} digs to less than half the edge’s thickness behind it`,
      why: 'half the width is too wide a hollow for so little rise from edge to ridge',
      try: [`wheelDiameter at least ${say(2 * radius)}`, 'a thicker middle', 'a narrower blade'],
    },
  ]
}

/** Dagger, or any double-edged blade. */
export const dagger: PieceKind<typeof daggerParameters> = {
  name: 'dagger',
  title: 'Dagger or double-edged sword',
  summary:
    'A double-edged blade of diamond, lens, hollow or six-sided section, with fullers and a hidden tang.',
  parameters: daggerParameters,
  sizes: ['bladeLength', 'width', 'ridgeThickness', 'tangLength'],
  thicknesses: [
    'ridgeThickness',
    'ridgeThicknessMiddle',
    'ridgeThicknessPoint',
    'tangThickness',
    'tangEndThickness',
  ],
  examples: [
    {},
    {
      section: 'hollow-diamond',
      width: '28 mm',
      ridgeThickness: '8 mm',
      ridgeThicknessPoint: '5 mm',
    },
    { section: 'hexagonal', point: 'rounded', widthAtPoint: '26 mm', tangHole: '4 mm' },
    {
      section: 'lenticular',
      bladeLength: '760 mm',
      width: '50 mm',
      widthAtPoint: '38 mm',
      ridgeThickness: '5 mm',
      ridgeThicknessPoint: '3 mm',
      point: 'rounded',
      pointLength: '70 mm',
      ricassoLength: '0 mm',
      plunge: '0 mm',
      tangLength: '120 mm',
      tangWidth: '22 mm',
      fullers: [
        { width: '18 mm', depth: '1 mm', start: '10 mm', length: '620 mm', runOut: '0 mm' },
      ],
    },
  ],
  build: (v) => {
    const problems = problemsOf(v)
    if (problems.length > 0) return { problems }
    const thickness = v.tangThickness ?? v.ridgeThickness
    const half = halfWidthOf(v)
    const flats = v.section === 'hexagonal' ? [-v.flatShare, v.flatShare] : [0]
    return bladeSolid({
      kind: 'dagger',
      handle: tangPart({
        length: v.tangLength,
        width: v.tangWidth,
        endWidth: v.tangEndWidth,
        thickness,
        endThickness: v.tangEndThickness,
        end: v.tangEnd,
        middle: 0,
      }),
      blade: daggerPart(v),
      fullers: v.fullers.map((f) => ({ ...f, middle: () => f.offset ?? 0 })),
      holes:
        v.tangHole > 0
          ? [
              {
                name: 'pin hole',
                at: { x: v.tangLength - v.tangHoleFromShoulder, y: 0 },
                diameter: v.tangHole,
              },
            ]
          : [],
      lines:
        v.section === 'lenticular'
          ? []
          : flats.map((share) => ({
              name: 'ridge',
              from: v.ricassoLength,
              y: (s) => share * half(s),
            })),
      thickest: Math.max(
        v.ridgeThickness,
        ridgeOf(v)(v.bladeLength / 2),
        v.ridgeThicknessPoint,
        thickness,
        v.tangEndThickness,
      ),
    })
  },
}
