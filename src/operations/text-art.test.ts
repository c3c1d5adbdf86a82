import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { layered } from '#billet'
import { operations } from './list.ts'
import type { Operation } from './operation.ts'
import { sampleBar } from './samples.ts'
import { DRAWING, drawBar } from './text-art.ts'
import { done, examplesOf } from './trials.ts'

/** What the operation leaves of each of its examples. */
function drawn(operation: Operation): string {
  const each = examplesOf(operation).map(({ told }, i) => {
    const trial = examplesOf(operation)[i]
    const step = done(operation, trial).ok
    const values = JSON.stringify(operation.examples[i].values)
    return `${told}: ${values}\n${step ? drawBar(step.after) : 'nothing is left'}\n`
  })
  return each.join('\n')
}

/** Compares with the drawing kept beside the operation; another one is written beside it to look at. */
describe('after each operation', () => {
  it.each(operations.map((o) => [o.name, o] as const))('%s', (name, operation) => {
    const folder = new URL(`./${name.replaceAll(' ', '-')}/`, import.meta.url)
    const [kept, changed] = ['after.txt', 'after-changed.txt'].map((f) => new URL(f, folder))
    const now = drawn(operation)
    const was = existsSync(kept) ? readFileSync(kept, 'utf8') : undefined
    if (was === now) rmSync(changed, { force: true })
    else writeFileSync(changed, now)
    expect(
      now,
      `look at ${changed.pathname}; if it is right, it takes the place of after.txt`,
    ).toBe(was)
  })
})

describe('a drawing', () => {
  it('is 64 by 16, and shows layers where they lie', () => {
    const half = (axis: 'y' | 'z') =>
      layered(axis, [
        { steel: '1095', thickness: 0.01 },
        { steel: '15N20', thickness: 0.01 },
      ])
    const lines = (axis: 'y' | 'z') =>
      drawBar({ ...sampleBar(100, 20, 20), build: half(axis) })
        .split('\n')
        .slice(2)
    expect(lines('z')).toEqual([
      ...Array<string>(8).fill('.'.repeat(64)),
      ...Array<string>(8).fill('#'.repeat(64)),
    ])
    expect(lines('y')).toEqual(Array<string>(DRAWING.rows).fill('#'.repeat(32) + '.'.repeat(32)))
  })
})
