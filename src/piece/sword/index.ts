import { declare } from '#parameters'
import { size } from '../size-parameter.ts'
import { bladeProblems, grindProblems, tangProblems } from '../blade-checks.ts'
import { bladeParameters, fullersParameter, tangParameters } from '../blade-parameters.ts'
import { hiddenTangBlade } from '../hidden-tang-blade.ts'
import type { PieceKind } from '../piece-kind.ts'
import { bladeOf, filledIn } from '../single-edged.ts'
import { tooLarge } from '../too-large.ts'

const { bladeLength, width, widthAtPoint, ricassoLength } = bladeParameters
const { spineThickness, spineThicknessPoint, edgeThickness, pointLength } = bladeParameters
const { tangLength, tangWidth, tangEndWidth, tangEndThickness } = tangParameters

const parameters = declare({
  ...bladeParameters,
  ...fullersParameter,
  ...tangParameters,
  bladeLength: { ...bladeLength, default: '700 mm' },
  width: { ...width, default: '38 mm' },
  widthAtPoint: { ...widthAtPoint, default: '30 mm' },
  ricassoLength: { ...ricassoLength, default: '30 mm' },
  spineThickness: { ...spineThickness, default: '7 mm' },
  spineThicknessPoint: { ...spineThicknessPoint, default: '3 mm' },
  edgeThickness: { ...edgeThickness, default: '0.6 mm' },
  pointLength: { ...pointLength, default: '70 mm' },
  tangLength: { ...tangLength, default: '150 mm' },
  tangWidth: { ...tangWidth, default: '24 mm' },
  tangEndWidth: { ...tangEndWidth, default: '14 mm' },
  tangEndThickness: { ...tangEndThickness, default: '4 mm' },
  curve: size(
    '0 mm',
    0,
    0.2,
    'Depth of the curve: how far the middle of the spine stands off the straight line from shoulder to point.',
  ),
})

/** Single-edged sword. */
export const sword: PieceKind<typeof parameters> = {
  name: 'sword',
  title: 'Sword, single-edged',
  summary: 'A single-edged sword blade, straight or curved, with distal taper and fullers.',
  parameters,
  sizes: ['bladeLength', 'width', 'spineThickness', 'tangLength'],
  thicknesses: [
    'spineThickness',
    'spineThicknessMiddle',
    'spineThicknessPoint',
    'tangThickness',
    'tangEndThickness',
  ],
  examples: [
    {},
    {
      curve: '20 mm',
      grind: 'ridged',
      point: 'straight-back',
      fullers: [
        {
          width: '9 mm',
          depth: '1 mm',
          offset: '10 mm',
          start: '40 mm',
          length: '500 mm',
          runOut: '30 mm',
        },
      ],
    },
  ],
  build: (values) => {
    const v = filledIn(values)
    const problems = [
      ...bladeProblems(values),
      ...tangProblems(values, v.ricassoWidth, v.spineThickness),
      ...tooLarge(
        'curve',
        values.curve,
        values.bladeLength / 5,
        'a blade bent so far is no longer measured along its chord',
      ),
    ]
    if (problems.length > 0) return { problems }
    const blade = bladeOf(values, values.curve)
    const surface = grindProblems(values, blade)
    if (surface.length > 0) return { problems: surface }
    return hiddenTangBlade('sword', values, blade, values.curve > 0 ? bladeOf(values) : undefined)
  },
}
