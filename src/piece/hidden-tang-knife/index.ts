import { declare } from '#parameters'
import { bladeProblems, grindProblems, tangProblems } from '../blade-checks.ts'
import { bladeParameters, fullersParameter, tangParameters } from '../blade-parameters.ts'
import type { PieceKind } from '../piece-kind.ts'
import { hiddenTangBlade } from '../hidden-tang-blade.ts'
import { bladeOf, filledIn } from '../single-edged.ts'

const parameters = declare({ ...bladeParameters, ...fullersParameter, ...tangParameters })

/** Knife whose tang runs inside the handle. */
export const hiddenTangKnife: PieceKind<typeof parameters> = {
  name: 'hidden-tang-knife',
  title: 'Knife, hidden tang',
  summary: 'A single-edged blade with a narrow tang that the handle hides.',
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
      bladeLength: '95 mm',
      width: '24 mm',
      grind: 'scandi',
      point: 'clip',
      spineThickness: '3.2 mm',
      clipLength: '35 mm',
      pointLength: '30 mm',
      tangEnd: 'round',
      tangHole: '4 mm',
    },
    {
      bladeLength: '180 mm',
      width: '46 mm',
      ricassoLength: '14 mm',
      ricassoWidth: '20 mm',
      spineThickness: '3 mm',
      spineThicknessPoint: '1 mm',
      edgeThickness: '0.3 mm',
      point: 'drop',
      pointLength: '90 mm',
      clipLength: '120 mm',
      tipDrop: '22 mm',
      grind: 'convex',
      belly: '0.2 mm',
      tangWidth: '12 mm',
    },
  ],
  build: (values) => {
    const v = filledIn(values)
    const problems = [
      ...bladeProblems(values),
      ...tangProblems(values, v.ricassoWidth, v.spineThickness),
    ]
    if (problems.length > 0) return { problems }
    const blade = bladeOf(values)
    const surface = grindProblems(values, blade)
    if (surface.length > 0) return { problems: surface }
    return hiddenTangBlade('hidden-tang-knife', values, blade)
  },
}
