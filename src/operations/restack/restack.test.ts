import { describe, expect, it } from 'vitest'
import { type Billet, checkBillet, countLayers, layered } from '#billet'
import { samplePack } from '../samples.ts'
import { attempt, tryOut } from '../trials.ts'
import { restack } from './index.ts'

const mm = (n: number) => n / 1000

/** Layers after each of some restacks, drawn back to the first size in between. */
function counts(start: Billet, steps: readonly Record<string, unknown>[]): number[] {
  let bar = start
  return steps.map((values) => {
    const { after } = tryOut(restack, { crop: '0 mm', cleanUp: '0 mm', ...values }, bar)
    const { merged } = countLayers(after.build, 'z')
    bar = { ...samplePack(400, 40, after.size.height * 1000), build: after.build }
    return merged
  })
}

const often = (n: number, pieces: number, lay = 'straight') =>
  Array.from({ length: n }, () => ({ pieces, lay }))

describe('layers after restacking, like on like merged', () => {
  const pack = (sheets: number) => samplePack(400, 40, 12, sheets)
  it.each([
    ['15 three then four', pack(15), [{ pieces: 3 }, { pieces: 4 }], [43, 169]],
    ['5 by three four times', pack(5), often(4, 3), [13, 37, 109, 325]],
    ['11 by four', pack(11), often(3, 4), [41, 161, 641]],
    ['15 by two four times', pack(15), often(4, 2), [29, 57, 113, 225]],
    ['9 folded five times', pack(9), often(5, 2, 'folded'), [17, 33, 65, 129, 257]],
    ['12 folded three times', pack(12), often(3, 2, 'folded'), [23, 45, 89]],
    ['12 cut in two the same way up', pack(12), often(3, 2), [24, 48, 96]],
    [
      '13 by five with a sheet of the other steel between',
      pack(13),
      [1, 2].map(() => ({ pieces: 5, between: '15N20', sheet: '0.5 mm' })),
      [69, 349],
    ],
  ])('%s', (_told, start, steps, expected) => {
    expect(counts(start, steps)).toEqual(expected)
  })

  it('keeps the sheets as laid beside them: 15 × 3 × 4 = 180', () => {
    const { after } = tryOut(restack, { pieces: 3 }, pack(15))
    const again = {
      ...pack(15),
      size: { ...pack(15).size, height: after.size.height },
      build: after.build,
    }
    const twelve = tryOut(restack, { pieces: 4 }, again).after
    expect(countLayers(twelve.build, 'z')).toEqual({ laid: 180, merged: 169 })
  })
})

describe('a restack', () => {
  it('has the height and length of its pieces', () => {
    // H' = nH − 2(n−1)g + (n−1)te; ℓ = (L − 2c − (n−1)k)/n.
    const values = {
      pieces: 5,
      crop: '8 mm',
      kerf: '2 mm',
      cleanUp: '0.3 mm',
      between: '15N20',
      sheet: '1.2 mm',
    }
    const { after } = tryOut(restack, values, samplePack(400, 40, 12))
    expect(after.size.height).toBeCloseTo(mm(5 * 12 - 8 * 0.3 + 4 * 1.2), 12)
    expect(after.size.length).toBeCloseTo(mm((400 - 16 - 8) / 5), 12)
  })

  it('gives each piece the layers it lies in where they cross the bar', () => {
    const halves = ['1095', '15N20'].map((steel) => ({ steel, thickness: mm(100) }))
    const bar = { ...samplePack(200, 30, 12), build: layered('x', halves) }
    const { after } = tryOut(restack, { pieces: 2, crop: '0 mm', cleanUp: '0 mm' }, bar)
    expect(after.build).toMatchObject({
      axis: 'z',
      layers: [{ steel: '1095' }, { steel: '15N20' }],
    })
    expect(checkBillet(after)).toEqual([])
  })

  it('says when grinding takes the outer layer, and when the bar gives no such pieces', () => {
    const thin = tryOut(restack, { pieces: 3, cleanUp: '0.2 mm' }, samplePack(400, 40, 6, 61))
    expect(thin.warnings[0].at).toBe('cleanUp')
    expect(attempt(restack, { pieces: 40 }, samplePack(60, 40, 12)).problems?.[0].at).toBe('pieces')
    const through = attempt(restack, { pieces: 3, cleanUp: '4 mm' }, samplePack(400, 40, 6))
    expect(through.problems?.[0].at).toBe('cleanUp')
  })
})
