import { ok } from '#problem'
import { axisLength } from '#geometry'
import { declare } from '#parameters'
import { type Turn, turnBuild, turnSize } from '#billet'
import { moving, turned } from '#movement'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'

const turns = {
  'on edge': { x: { was: 'x' }, y: { was: 'z' }, z: { was: 'y', reversed: true } },
  'on end': { x: { was: 'z' }, y: { was: 'y' }, z: { was: 'x', reversed: true } },
  across: { x: { was: 'y' }, y: { was: 'x', reversed: true }, z: { was: 'z' } },
  'stack along': { x: { was: 'z' }, y: { was: 'x' }, z: { was: 'y' } },
} as const satisfies Record<string, Turn>

const parameters = declare({
  to: {
    form: 'choice',
    options: {
      'on edge':
        'a quarter turn about its length: flat layers stand up, lines will run along the bar',
      'on end':
        'its height becomes its length, its length its height: layers will cross the length',
      across: 'its width becomes its length',
      'stack along':
        'its height becomes its length and its length its width: layers will cross the length, standing on edge',
    },
    default: 'on edge',
    help: 'Which side the bar is laid on',
  },
})

/** Lays the bar on another side; only its directions change their names. */
export const turn = operation({
  name: 'turn',
  summary: 'Lay the bar on another side, so that the layers lie the way the pattern needs.',
  takes: 'one',
  parameters,
  loses: [],
  cautions: ['heat'],
  examples: Object.keys(turns).map((to) => ({ values: { to }, before: [samplePack(62, 47, 36)] })),
  forward([before], values) {
    const by: Turn = turns[values.to]
    const spare = (['x', 'y', 'z'] as const).find((axis) => by[axis].was === before.spare)
    const after = {
      ...before,
      size: turnSize(before.size, by),
      build: turnBuild(before.build, by),
      hollow: undefined,
      spare: spare ?? before.spare,
    }
    return ok(step(after))
  },
  backward(demand, values, [before]) {
    const by: Turn = turns[values.to]
    const size = { ...before.size }
    for (const axis of ['x', 'y', 'z'] as const)
      size[axisLength[by[axis].was]] = demand[axisLength[axis]]
    return ok([size])
  },
  movement([before], values) {
    return moving([turned(turns[values.to], before.size)])
  },
})
