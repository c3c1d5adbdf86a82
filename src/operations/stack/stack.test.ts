import { describe, expect, it } from 'vitest'
import { readValues } from '#parameters'
import { usualShop } from '#shop'
import { stack } from './index.ts'

/** 7850 kg/m³ for all, so that the arithmetic can be done by hand. */
const densities = { '1095': 7850, '15N20': 7850 }

function laid(more: Readonly<Record<string, unknown>>) {
  const read = readValues(stack.parameters, {
    sheets: [
      { steel: '1095', thickness: '3 mm' },
      { steel: '15N20', thickness: '1.5 mm' },
    ],
    repeat: 2,
    closeWith: '1095',
    width: '40 mm',
    length: '100 mm',
    ...more,
  })
  if (read.problems) throw new Error(JSON.stringify(read.problems))
  return stack.forward([], read.ok.values as never, { shop: usualShop(), densities })
}

describe('stack', () => {
  it('thicker outside sheets replace the first and the last, and are cut as their own stock', () => {
    const { after, taken } = laid({ outer: '6 mm' }).ok!
    // 6 + 1.5 + 3 + 1.5 + 6 = 18 mm
    expect(after.size.height * 1000).toBeCloseTo(18, 9)
    expect(taken.map((s) => [s.steel, Math.round(s.thickness * 1e4) / 10, s.count])).toEqual([
      ['1095', 6, 2],
      ['15N20', 1.5, 2],
      ['1095', 3, 1],
    ])
    // 2 × 40 × 100 × 6 mm at 7.85 g/cm³
    expect(taken[0].mass * 1000).toBeCloseTo(376.8, 6)
  })

  it('without them the list stands as it is written', () => {
    const { after, taken } = laid({}).ok!
    expect(after.size.height * 1000).toBeCloseTo(12, 9)
    expect(taken).toHaveLength(2)
  })

  it('a closing sheet that is not in the list is a problem with its place', () => {
    const [problem] = laid({ closeWith: 'W2' }).problems!
    expect(problem.at).toBe('closeWith')
    expect(problem.try[0]).toContain('1095')
  })

  it('like on like is told as it is laid', () => {
    const { after, warnings } = laid({
      sheets: [{ steel: '1095', thickness: '3 mm', count: 4 }],
      repeat: 1,
    }).ok!
    expect(warnings[0].what).toMatch(/4 joints lie like on like/)
    expect(after.build.form === 'layered' && after.build.layers.length).toBe(1)
  })
})
