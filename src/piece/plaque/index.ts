import { ok } from '#problem'
import { holeOutline } from '../cut.ts'
import type { PieceKind } from '../piece-kind.ts'
import { plateField } from '../plate.ts'
import { solidOf } from '../solid.ts'
import { tooLarge } from '../too-large.ts'
import { groovesOf, holesOf, stampOf } from './features.ts'
import { parameters } from './parameters.ts'

/** Plaque, builder's plate. */
export const plaque: PieceKind<typeof parameters> = {
  name: 'plaque',
  title: 'Plaque',
  summary:
    'A flat plate with its edges broken, screw holes, grooves in the back and a stamped relief.',
  parameters,
  sizes: ['length', 'width', 'thickness'],
  thicknesses: ['thickness'],
  examples: [
    { length: '5 in', width: '2 1/2 in', thickness: '1/4 in' },
    {
      length: '140 mm',
      width: '60 mm',
      thickness: '8 mm',
      cornerRadius: '3 mm',
      edge: 'radius',
      edgeSize: '1 mm',
      holes: 'corners',
      grooves: [
        { path: 'around', inset: '14 mm', cutter: '3 mm', depth: '1.5 mm' },
        { path: 'across', inset: '20 mm', cutter: '3 mm', depth: '1 mm', offset: '20 mm' },
      ],
      stampLength: '40 mm',
      stampWidth: '25 mm',
      stampDepth: '1.5 mm',
    },
  ],
  build: (values) => {
    const { length, width, thickness } = values
    const edgeSize = values.edge === 'square' ? 0 : values.edgeSize
    const features = [holesOf(values), groovesOf(values), stampOf(values)]
    const problems = [
      ...tooLarge(
        'cornerRadius',
        values.cornerRadius,
        Math.min(length, width) / 2,
        'two corners would meet',
      ),
      ...tooLarge(
        'edgeSize',
        edgeSize,
        Math.min(thickness, length, width) / 2,
        'the broken edges of the two faces would meet',
      ),
      ...features.flatMap((feature) => feature.problems),
    ]
    if (problems.length > 0) return { problems }
    const plate = plateField({
      length,
      width,
      thickness,
      corner: values.cornerRadius,
      edge: values.edge,
      edgeSize,
    })
    const holes = features.flatMap((feature) => feature.holes ?? [])
    return ok(
      solidOf({
        kind: 'plaque',
        size: { length, width, height: thickness },
        field: plate,
        features: features.map(({ kind, cuts }) => ({ kind, cuts })),
        edges: {
          holes,
          openings: holes.map((hole) => holeOutline(hole.at, hole.diameter)),
          grooves: features.flatMap((feature) => feature.grooves ?? []),
          lines: [],
          ...(features[2].stamp ? { stamp: features[2].stamp } : {}),
        },
        blank: {
          note: 'a flat plate of the finished size; holes, grooves and relief come out of it',
        },
      }),
    )
  },
}
