import { expect, it } from 'vitest'
import { readJobObject } from '../read-job.ts'
import { leversOfJob } from './levers.ts'

/** A bar of 30 × 12 mm, 10 mm cropped from each end of it, 200 mm wanted. */
const job = readJobObject({
  billetwright: 1,
  name: 'bolt',
  piece: { kind: 'bar', length: '200 mm', width: '30 mm', thickness: '12 mm' },
  tolerances: { crop: '1.5 mm', sheetLength: '0 mm', bars: 'exact' },
  bars: {
    a: [
      { do: 'take bar', steel: '1095', width: '30 mm', height: '12 mm', length: '?' },
      { do: 'crop', start: '10 mm', end: '10 mm' },
    ],
  },
})

it('a crop is moved by what the shop says, and the steel by that much of the section', () => {
  if (!job.ok) throw new Error(JSON.stringify(job.problems))
  const levers = leversOfJob(job.ok).ok!
  const all = Array.from({ length: levers.count }, (_, i) => levers.move(i))
  const start = all.find(({ name }) => name === 'start')!
  expect(start).toMatchObject({ at: 'bars.a[1]', of: 'length', off: 0.0015, isLikely: true })
  // 7.85 g/cm³ to a hundredth: 0.15 cm of 3 × 1.2 cm is 4.24 g.
  expect((start.more!.steel - levers.now.steel) * 1000).toBeCloseTo(4.24, 1)
  expect((levers.now.steel - start.less!.steel) * 1000).toBeCloseTo(4.24, 1)
  // Left free, so it is worked out and not moved.
  expect(all.map(({ name }) => name)).not.toContain('length')
  // The tolerances say nothing of bars that were measured: a hundredth. Narrower than the piece there is none.
  const width = all.find(({ name }) => name === 'width')!
  expect(width.isLikely).toBe(false)
  expect(width.off * 1000).toBeCloseTo(0.3, 9)
  expect(width.less).toBeUndefined()
  expect(width.more!.steel / levers.now.steel).toBeCloseTo(1.01, 6)
})
