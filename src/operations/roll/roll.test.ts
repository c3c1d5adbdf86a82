import { describe, expect, it } from 'vitest'
import type { Billet } from '#billet'
import { stepOf } from '../attempt.ts'
import { samplePack } from '../samples.ts'
import { roll } from './index.ts'

/** The first and last steel met along an axis. */
function ends(axis: 'x' | 'y' | 'z', way: string): string {
  const layers = ['1095', '15N20'].map((steel) => ({ steel, thickness: 0.01 }))
  const bar: Billet = {
    ...samplePack(20, 20, 20),
    build: { form: 'layered', axis, layers, laid: 2 },
  }
  const { build } = stepOf(roll, { way }, bar).after
  return build.form === 'layered' ? build.layers.map((l) => l.steel).join(' ') : ''
}

describe('rolling', () => {
  // A half turn about an axis leaves what lies along it and turns the other two about.
  it.each([
    ['over', 'x'],
    ['over its end', 'y'],
    ['end for end', 'z'],
  ])('%s is half a turn about %s', (way, about) => {
    for (const axis of ['x', 'y', 'z'] as const)
      expect(ends(axis, way)).toBe(axis === about ? '1095 15N20' : '15N20 1095')
  })

  it('done twice lays it as it lay', () => {
    for (const way of ['over', 'over its end', 'end for end']) {
      const bar = samplePack(120, 30, 18, 12)
      const once = stepOf(roll, { way }, bar).after
      expect(stepOf(roll, { way }, once).after).toEqual(bar)
    }
  })
})
