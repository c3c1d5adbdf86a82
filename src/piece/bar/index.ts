import { declare } from '#parameters'
import { size } from '../size-parameter.ts'
import { ok } from '#problem'
import type { PieceKind } from '../piece-kind.ts'
import { edgeDrop } from '../plate.ts'
import { prismField } from '../prism.ts'
import { solidOf } from '../solid.ts'
import { tooLarge } from '../too-large.ts'

const parameters = declare({
  length: size('300 mm', 1e-3, 10, 'Length of the bar.'),
  width: size('30 mm', 1e-3, 1, 'Width of the bar.'),
  thickness: size('30 mm', 5e-4, 1, 'Thickness of the bar.'),
  section: {
    form: 'choice',
    options: {
      rectangle: 'Square or flat bar.',
      octagon: 'Corners forged in, all eight faces alike on a square bar.',
    },
    default: 'rectangle',
    help: 'Shape of the section.',
  },
  edge: {
    form: 'choice',
    options: { square: 'Sharp.', radius: 'Rounded.', chamfer: 'Bevelled at 45°.' },
    default: 'square',
    help: 'How the four long edges of a rectangular bar are left.',
  },
  edgeSize: size('1 mm', 0, 0.1, 'Radius or chamfer of the long edges.'),
})

/** Chamfer of a regular octagon as a share of its width across flats: (2 − √2)/2. */
const OCTAGON = (2 - Math.SQRT2) / 2

/** Square, flat or octagonal bar. */
export const bar: PieceKind<typeof parameters> = {
  name: 'bar',
  title: 'Bar',
  summary: 'A square, flat or octagonal bar of one section from end to end.',
  parameters,
  sizes: ['length', 'width', 'thickness'],
  thicknesses: ['thickness'],
  examples: [
    { length: '105 mm', width: '30 mm', thickness: '30 mm' },
    { length: '300 mm', width: '40 mm', thickness: '8 mm', edge: 'radius', edgeSize: '2 mm' },
    { length: '12 in', width: '1/2 in', thickness: '1/2 in', section: 'octagon' },
  ],
  build: (values) => {
    const { length, width, thickness } = values
    const octagon = values.section === 'octagon'
    const form = octagon ? 'chamfer' : values.edge
    const least = Math.min(width, thickness)
    const cut = octagon ? OCTAGON * least : form === 'square' ? 0 : values.edgeSize
    const problems = octagon
      ? []
      : tooLarge('edgeSize', cut, least / 2, 'the edges of two faces would meet')
    if (problems.length > 0) return { problems }
    const top = (y: number) => thickness / 2 - edgeDrop(form, cut, width / 2 - Math.abs(y))
    const shoulder = width / 2 - cut
    return ok(
      solidOf({
        kind: 'bar',
        size: { length, width, height: thickness },
        field: prismField(
          length,
          [-width / 2, -shoulder, 0, shoulder, width / 2],
          top,
          (y) => -top(y),
        ),
        edges: {
          holes: [],
          grooves: [],
          lines:
            cut > 0
              ? [-shoulder, shoulder].map((y) => ({
                  name: 'edge',
                  points: [
                    { x: 0, y },
                    { x: length, y },
                  ],
                }))
              : [],
        },
        blank: { note: 'the bar itself, its edges still sharp' },
      }),
    )
  },
}
