import { failed, ok } from '#problem'
import { declare } from '#parameters'
import { stays } from '#movement'
import { operation, step } from '../operation.ts'
import { plaqueWithGroove, shapedPlaque } from '../sample-pieces.ts'
import { takeFeatures } from '../features.ts'
import { noPiece } from '../shaped.ts'

const parameters = declare({
  only: {
    form: 'choice',
    options: {
      all: 'every groove and fuller of the piece',
      grooves: 'its grooves',
      fullers: 'its fullers',
    },
    default: 'all',
    help: 'Which of them are cut now',
  },
  how: {
    form: 'choice',
    options: {
      cutter: 'ball-ended cutter in a mill',
      wheel: 'small contact wheel on the grinder',
      scraper: 'fullering scraper and files',
    },
    default: 'cutter',
    help: 'What cuts them',
  },
})

/** Cuts the piece's grooves and fullers. */
export const groove = operation({
  name: 'groove',
  summary: "Cut the piece's grooves and fullers.",
  takes: 'one',
  parameters,
  loses: ['cut out'],
  cautions: ['dust', 'drill'],
  examples: [
    {
      values: {},
      get before() {
        return [shapedPlaque(1e-4, [], plaqueWithGroove)]
      },
      piece: plaqueWithGroove,
    },
    {
      values: { only: 'grooves', how: 'wheel' },
      get before() {
        return [shapedPlaque(3e-4, [], plaqueWithGroove)]
      },
      piece: plaqueWithGroove,
    },
  ],
  forward([before], values, smithy) {
    const { piece } = smithy
    if (!piece) return failed(noPiece('to cut grooves in'))
    const kinds = { all: ['groove', 'fuller'], grooves: ['groove'], fullers: ['fuller'] } as const
    const taken = takeFeatures(before, piece, kinds[values.only], 'cut out', smithy.densities)
    if (taken.problems) return taken
    const { after, losses, warnings } = taken.ok
    return ok(
      step(after, {
        losses,
        warnings,
        notes: piece.edges.grooves.map(({ name, width, depth, face }) => {
          const radius = (width * width) / 4 + depth * depth
          return `${name} in the ${face === 'both' ? 'front and back' : face}: ${mm(width)} mm wide, ${mm(depth)} mm deep, a ${values.how} of ${mm(radius / depth)} mm diameter fits.`
        }),
      }),
    )
  },
  movement() {
    return stays
  },
})

const mm = (m: number) => String(Number((m * 1000).toFixed(2)))
