import { failed, ok } from '#problem'
import { declare } from '#parameters'
import { stays } from '#movement'
import { operation, step } from '../operation.ts'
import { plaqueWithHoles, shapedPlaque } from '../sample-pieces.ts'
import { takeFeatures } from '../features.ts'
import { noPiece } from '../shaped.ts'

const parameters = declare({
  only: {
    form: 'choice',
    options: {
      all: 'every hole and slot of the piece',
      holes: 'its round holes',
      slots: 'its slots',
    },
    default: 'all',
    help: 'Which of the piece\u2019s openings are made now',
  },
})

/** Drills the piece's holes and saws or mills its slots. */
export const drill = operation({
  name: 'drill',
  summary: "Drill the piece's holes and cut its slots, while the steel is soft.",
  takes: 'one',
  parameters,
  loses: ['drilled'],
  cautions: ['drill', 'dust'],
  examples: [
    {
      values: {},
      get before() {
        return [shapedPlaque(1e-4)]
      },
      piece: plaqueWithHoles,
    },
    {
      values: { only: 'holes' },
      get before() {
        return [shapedPlaque(4e-4)]
      },
      piece: plaqueWithHoles,
    },
  ],
  forward([before], values, smithy) {
    const { piece } = smithy
    if (!piece) return failed(noPiece('to drill'))
    const kinds = { all: ['hole', 'slot'], holes: ['hole'], slots: ['slot'] } as const
    const taken = takeFeatures(before, piece, kinds[values.only], 'drilled', smithy.densities)
    if (taken.problems) return taken
    const { after, losses, warnings } = taken.ok
    return ok(
      step(after, {
        losses,
        warnings,
        notes: [
          ...piece.edges.holes.map(
            ({ name, at, diameter }) =>
              `${name}: ${mm(diameter)} mm, ${mm(at.x)} mm from ${piece.origin}, ${offMiddle(at.y)}.`,
          ),
          'Break the rims: a sharp rim starts a crack in the quench.',
        ],
      }),
    )
  },
  movement() {
    return stays
  },
})

function offMiddle(y: number): string {
  const off = mm(Math.abs(y))
  return off === '0'
    ? 'on the middle line'
    : `${off} mm ${y < 0 ? 'below' : 'above'} the middle line`
}

const mm = (m: number) => String(Number((m * 1000).toFixed(2)))
