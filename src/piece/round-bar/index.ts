import { declare } from '#parameters'
import { size } from '../size-parameter.ts'
import { ok } from '#problem'
import type { PieceKind } from '../piece-kind.ts'
import { prismField } from '../prism.ts'
import { solidOf } from '../solid.ts'

const parameters = declare({
  length: size('300 mm', 1e-3, 10, 'Length of the bar.'),
  diameter: size('12 mm', 1e-3, 1, 'Diameter of the bar.'),
})

/** Round bar. */
export const roundBar: PieceKind<typeof parameters> = {
  name: 'round-bar',
  title: 'Round bar',
  summary: 'A round bar of one diameter.',
  parameters,
  sizes: ['length', 'diameter'],
  thicknesses: ['diameter'],
  examples: [
    { length: '300 mm', diameter: '26 mm' },
    { diameter: '1/2 in', length: '8 in' },
  ],
  build: ({ length, diameter }) => {
    const r = diameter / 2
    const half = (y: number) => Math.sqrt(Math.max(0, r * r - y * y))
    return ok(
      solidOf({
        kind: 'round-bar',
        size: { length, width: diameter, height: diameter },
        field: prismField(length, [-r, 0, r], half, (y) => -half(y)),
        edges: { holes: [], grooves: [], lines: [] },
        blank: {
          note: 'square bar of the diameter; rounded up under the hammer it needs less: π/4 of this',
        },
      }),
    )
  },
}
