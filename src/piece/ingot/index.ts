import { declare } from '#parameters'
import { size } from '../size-parameter.ts'
import { ok } from '#problem'
import type { PieceKind } from '../piece-kind.ts'
import { prismField } from '../prism.ts'
import { solidOf } from '../solid.ts'

const parameters = declare({
  length: size('150 mm', 1e-3, 5, 'Length of the ingot.'),
  topWidth: size('40 mm', 1e-3, 1, 'Width of the upper face.'),
  bottomWidth: size('50 mm', 1e-3, 1, 'Width of the lower face.'),
  thickness: size('25 mm', 1e-3, 1, 'Height between the two faces.'),
})

/** Ingot of trapezoid section. */
export const ingot: PieceKind<typeof parameters> = {
  name: 'ingot',
  title: 'Ingot',
  summary: 'A block of trapezoid section, its upper and lower faces of different width.',
  parameters,
  sizes: ['length', 'topWidth', 'bottomWidth', 'thickness'],
  thicknesses: ['thickness'],
  examples: [{ length: '150 mm', topWidth: '40 mm', bottomWidth: '50 mm', thickness: '25 mm' }],
  build: ({ length, topWidth, bottomWidth, thickness }) => {
    const [wide, narrow] = [
      Math.max(topWidth, bottomWidth) / 2,
      Math.min(topWidth, bottomWidth) / 2,
    ]
    const slope = (y: number) => {
      const over = Math.abs(y) - narrow
      return over <= 0 ? 0 : (over / (wide - narrow)) * thickness
    }
    const tops = bottomWidth > topWidth
    return ok(
      solidOf({
        kind: 'ingot',
        size: { length, width: 2 * wide, height: thickness },
        field: prismField(
          length,
          [-wide, -narrow, narrow, wide],
          (y) => thickness / 2 - (tops ? slope(y) : 0),
          (y) => -thickness / 2 + (tops ? 0 : slope(y)),
        ),
        edges: {
          holes: [],
          grooves: [],
          lines: tops
            ? [-narrow, narrow].map((y) => ({
                name: 'upper face',
                points: [
                  { x: 0, y },
                  { x: length, y },
                ],
              }))
            : [],
        },
        blank: { note: 'a bar as wide as the wider face' },
      }),
    )
  },
}
