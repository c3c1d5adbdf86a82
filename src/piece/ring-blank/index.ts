import { type HeightField } from '#geometry'
import { joinBreaks, orderBreaks } from '../breaks.ts'
import { holeOutline } from '../cut.ts'
import { declare } from '#parameters'
import { size, sizeIfGiven } from '../size-parameter.ts'
import { type Problem, ok } from '#problem'
import type { PieceKind } from '../piece-kind.ts'
import { solidOf } from '../solid.ts'
import { say } from '../too-large.ts'

const parameters = declare({
  insideDiameter: size('19 mm', 1e-3, 0.5, 'Bore of the ring at its narrowest.'),
  outsideDiameter: size('24 mm', 2e-3, 0.6, 'Outside diameter.'),
  width: size('8 mm', 5e-4, 0.2, 'Width of the band, along the bore.'),
  comfortRadius: sizeIfGiven(
    5e-4,
    1,
    'Radius of the bore’s crown, so that it opens to both faces; a straight bore if left out.',
  ),
})

/** Ring blank: the bore stands upright, along z. */
export const ringBlank: PieceKind<typeof parameters> = {
  name: 'ring-blank',
  title: 'Ring blank',
  summary: 'A ring, straight or crowned inside.',
  parameters,
  sizes: ['insideDiameter', 'outsideDiameter', 'width'],
  thicknesses: ['width'],
  examples: [
    { insideDiameter: '19 mm', outsideDiameter: '24 mm', width: '8 mm' },
    { insideDiameter: '18 mm', outsideDiameter: '23 mm', width: '6 mm', comfortRadius: '8 mm' },
  ],
  build: ({ insideDiameter, outsideDiameter, width, comfortRadius }) => {
    const [inner, outer] = [insideDiameter / 2, outsideDiameter / 2]
    const problems: Problem[] = []
    if (inner >= outer)
      problems.push({
        at: 'insideDiameter',
        what: `a bore of ${say(insideDiameter)} leaves no wall in ${say(outsideDiameter)}`,
        why: 'the wall is half the difference of the two diameters',
        try: [
          `insideDiameter below ${say(outsideDiameter)}`,
          `outsideDiameter above ${say(insideDiameter)}`,
        ],
      })
    const crown = comfortRadius ?? Infinity
    const opens =
      comfortRadius === undefined ? 0 : crown - Math.sqrt(Math.max(0, crown ** 2 - width ** 2 / 4))
    if (crown < width / 2 || (inner < outer && inner + opens >= outer)) {
      const wall = outer - inner
      const least = width ** 2 / (8 * wall) + wall / 2
      problems.push({
        at: 'comfortRadius',
        what: `a crown of ${say(crown)} opens past the wall of ${say(wall)}`,
        why: `over ${say(width)} of width the bore must open by less than the wall`,
        try: [
          `comfortRadius above ${say(Math.max(least, width / 2))}`,
          'leave comfortRadius out: a straight bore',
        ],
      })
    }
    if (problems.length > 0) return { problems }
    const mouth = inner + opens
    const half = (x: number, y: number) => {
      const r = Math.hypot(x - outer, y)
      if (r < inner) return 0
      if (r >= mouth) return width / 2
      return Math.sqrt(Math.max(0, crown ** 2 - (crown - (r - inner)) ** 2))
    }
    const chord = (r: number, x: number) => Math.sqrt(Math.max(0, r * r - (x - outer) ** 2))
    const field: HeightField = {
      xBreaks: joinBreaks(2 * outer, [
        outer,
        ...[
          inner - opens / 8,
          inner - opens / 64,
          inner,
          inner + opens / 64,
          inner + opens / 8,
          mouth,
        ].flatMap((r) => [outer - r, outer + r]),
      ]),
      yBreaks: (x) => {
        const sides = [chord(mouth, x), chord(inner, x)]
        return orderBreaks(-chord(outer, x), chord(outer, x), [...sides, ...sides.map((y) => -y)])
      },
      top: half,
      bottom: (x, y) => -half(x, y),
    }
    const centre = { x: outer, y: 0 }
    return ok(
      solidOf({
        kind: 'ring-blank',
        size: { length: 2 * outer, width: 2 * outer, height: width },
        field,
        edges: {
          holes: [{ name: 'bore', at: centre, diameter: insideDiameter }],
          openings: [holeOutline(centre, insideDiameter)],
          grooves: [],
          lines: [],
        },
        blank: {
          size: { length: Math.PI * (inner + outer), width, height: outer - inner },
          bent: true,
          note: 'the strip it is bent from, as long as its middle line; a slice needs a square of the outside diameter',
        },
      }),
    )
  },
}
