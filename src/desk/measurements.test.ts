import { describe, expect, it } from 'vitest'
import { withMeasured, withoutMeasured } from './measurements.ts'
import { duplicateStep, insertStep, moveStep, removeBar, removeStep } from './route-edits.ts'

const step = (n: number) => ({ do: 'crop', note: String(n) })
const job = {
  bars: { a: [0, 1, 2, 3].map(step), b: [4, 5].map(step) },
  measured: [
    { bar: 'a', after: 2, length: '200 mm' },
    { bar: 'b', after: 1, mass: '300 g' },
    { bar: 'a', after: 4, mass: '500 g' },
  ],
}

/** The notes of the steps that measurements stand with, by what was measured. */
function measuredOn(now: Readonly<Record<string, unknown>>) {
  const { bars, measured = [] } = now as unknown as Partial<typeof job>
  return Object.fromEntries(
    measured.map(({ bar, after, length, mass }) => [
      length ?? mass,
      (bars as unknown as Record<string, { note: string }[]>)[bar][after - 1]?.note,
    ]),
  )
}

describe('measurements stay with the steps they were taken after', () => {
  const whole = { '200 mm': '1', '300 g': '4', '500 g': '3' }
  it.each([
    ['as it is', job, whole],
    ['a step put in before', insertStep(job, { bar: 'a', index: 1 }, step(9)), whole],
    ['a step put in at the end', insertStep(job, { bar: 'a', index: 4 }, step(9)), whole],
    [
      'the step doubled: the first of them was measured',
      duplicateStep(job, { bar: 'a', index: 1 }),
      whole,
    ],
    ['the step moved down', moveStep(job, { bar: 'a', index: 1 }, { bar: 'a', index: 4 }), whole],
    ['the step moved up', moveStep(job, { bar: 'a', index: 3 }, { bar: 'a', index: 0 }), whole],
    ['another removed', removeStep(job, { bar: 'a', index: 0 }), whole],
    ['the step removed', removeStep(job, { bar: 'a', index: 1 }), { '300 g': '4', '500 g': '3' }],
    ['the bar removed', removeBar(job, 'a'), { '300 g': '4' }],
  ])('%s', (_, now, stands) => {
    expect(measuredOn(now)).toEqual(stands)
  })
})

it('a measurement is written, changed, and struck out when nothing is left of it', () => {
  const place = { bar: 'a', index: 0 }
  const one = withMeasured({ bars: job.bars }, place, 'width', '40 mm')
  expect(one.measured).toEqual([{ bar: 'a', after: 1, width: '40 mm' }])
  const two = withMeasured(one, place, 'mass', '1 kg')
  expect(two.measured).toEqual([{ bar: 'a', after: 1, width: '40 mm', mass: '1 kg' }])
  const less = withMeasured(two, place, 'width', undefined)
  expect(withMeasured(less, place, 'mass', undefined)).toEqual({ bars: job.bars })
  expect(withoutMeasured(two, place)).toEqual({ bars: job.bars })
})
