import { ok } from '#problem'
import { declare } from '#parameters'
import { type Turn, turnBuild } from '#billet'
import { moving, turned } from '#movement'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'

const ways = {
  over: {
    x: { was: 'x' },
    y: { was: 'y', reversed: true },
    z: { was: 'z', reversed: true },
  },
  'end for end': {
    x: { was: 'x', reversed: true },
    y: { was: 'y', reversed: true },
    z: { was: 'z' },
  },
  'over its end': {
    x: { was: 'x', reversed: true },
    y: { was: 'y' },
    z: { was: 'z', reversed: true },
  },
} as const satisfies Record<string, Turn>

const parameters = declare({
  way: {
    form: 'choice',
    options: {
      over: 'half a turn about its length: the top becomes the bottom, the far side the near side',
      'end for end': 'half a turn flat on the anvil: the ends change places, the top stays the top',
      'over its end':
        'half a turn over its end: the ends change places and the top becomes the bottom',
    },
    default: 'over',
    help: 'How the bar is rolled',
  },
})

/** Half a turn: sizes stay, the order of the layers or parts may turn about. */
export const roll = operation({
  name: 'roll',
  summary:
    'Roll the bar over or turn it end for end: its sizes stay, but which layer or bar lies where changes.',
  takes: 'one',
  parameters,
  loses: [],
  cautions: ['heat'],
  examples: Object.keys(ways).map((way) => ({
    values: { way },
    before: [samplePack(120, 30, 18, 12)],
  })),
  forward([before], values) {
    const by: Turn = ways[values.way]
    return ok(
      step(
        { ...before, build: turnBuild(before.build, by), hollow: undefined },
        {
          notes: [
            'Metal can be turned, never mirrored: a twisted bar keeps its hand whichever way it is rolled.',
          ],
        },
      ),
    )
  },
  backward(demand) {
    return ok([demand])
  },
  movement([before], values) {
    return moving([turned(ways[values.way], before.size)])
  },
})
