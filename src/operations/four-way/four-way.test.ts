import { describe, expect, it } from 'vitest'
import { type Billet, type Layered, countLayers, sharesOf } from '#billet'
import { sampleBar, samplePack } from '../samples.ts'
import { attempt, tryOut } from '../trials.ts'
import { fourWay } from './index.ts'

const mm = (n: number) => n / 1000
/** As the trials have them, kg/m³. */
const densities: Record<string, number> = { '1095': 7411, '15N20': 7548 }
const bare = { crop: '0 mm', kerf: '0 mm', cleanUp: '0 mm' }

describe('four-way', () => {
  it('lays sixteen pieces of 1/2 in square to 2 in square', () => {
    const { after } = tryOut(fourWay, { ...bare, across: 4 }, samplePack(508, 12.7, 12.7))
    expect(after.size.width).toBeCloseTo(mm(50.8), 12)
    expect(after.size.height).toBeCloseTo(mm(50.8), 12)
    expect(after.size.length).toBeCloseTo(mm(508 / 16), 12)
  })

  it('merges like with like: bookmatched, 12 of two outsides make 23, plain they stay 24', () => {
    const pack = samplePack(200, 16, 16, 12)
    const count = (lay: string) =>
      countLayers(tryOut(fourWay, { ...bare, lay }, pack).after.build, 'z')
    expect(count('bookmatched')).toEqual({ laid: 24, merged: 23 })
    expect(count('plain')).toEqual({ laid: 24, merged: 24 })
  })

  it('turns each piece a quarter on: along a row, one lies and one stands', () => {
    const { after } = tryOut(fourWay, { ...bare, lay: 'rotated' }, samplePack(200, 16, 16, 13))
    // Across the row the lying piece is met once, the standing one layer by layer.
    expect(countLayers(after.build, 'y').merged).toBe(14)
  })

  it('takes only square pieces when some are turned', () => {
    const flat = samplePack(200, 30, 12)
    expect(attempt(fourWay, { lay: 'rotated' }, flat).problems?.[0].at).toBe('lay')
    expect(attempt(fourWay, { lay: 'radial' }, flat).problems?.[0].at).toBe('lay')
    expect(attempt(fourWay, { lay: 'radial', across: 3 }, samplePack()).problems?.[0].at).toBe(
      'lay',
    )
    expect(
      attempt(fourWay, { lay: 'radial' }, sampleBar(200, 20, 20, 'W2', 'round')).problems,
    ).toHaveLength(1)
  })
})

describe('cut on the diagonals', () => {
  const pack = samplePack(200, 30, 30, 9)
  const step = tryOut(fourWay, { lay: 'radial', kerf: '2 mm', cleanUp: '0.5 mm' }, pack)
  const [radial, nested] = [step.after, step.setAside[0]]
  const s = Math.SQRT2 * mm(1 + 0.5)

  it('makes two square bars, each smaller by 2√2 (kerf/2 + clean-up)', () => {
    for (const bar of [radial, nested]) {
      expect(bar.size.width).toBeCloseTo(mm(30) - 2 * s, 12)
      expect(bar.size.height).toBe(bar.size.width)
    }
  })

  it.each([
    ['radial', (y: number, z: number) => Math.min(Math.abs(y), Math.abs(z))],
    ['nested', (y: number, z: number) => Math.max(Math.abs(y), Math.abs(z)) + s],
  ])('%s: steels are those met by pulling points of the section back', (kind, layerAt) => {
    // A point of the new section lies in the old piece at v = min(|y|,|z|), or max(|y|,|z|) further
    // out by s, above or below the middle alike: sampled on a grid, apart from the account's sums.
    const bar: Billet = kind === 'radial' ? radial : nested
    const layers = (pack.build as Layered).layers
    const n = 600
    const met: Record<string, number> = {}
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        const [y, z] = [i, j].map((k) => ((k + 0.5) / n - 0.5) * bar.size.width)
        for (const side of [1, -1]) {
          let left = side * layerAt(y, z) + mm(15)
          const layer = layers.find((one) => (left -= one.thickness) < 0) ?? layers[8]
          met[layer.steel] = (met[layer.steel] ?? 0) + 1 / (2 * n * n)
        }
      }
    }
    for (const [steel, share] of Object.entries(sharesOf(bar.build)))
      expect(share).toBeCloseTo(met[steel], 2.5)
  })

  it('turns every layer to dust alike: a diagonal meets every height equally', () => {
    const were = sharesOf(pack.build)
    const kerf = step.losses.find((loss) => loss.cause === 'kerf')?.masses ?? {}
    const dust = Object.entries(kerf).map(
      ([steel, mass]) => [steel, mass / densities[steel]] as const,
    )
    const whole = dust.reduce((sum, [, volume]) => sum + volume, 0)
    for (const [steel, volume] of dust) expect(volume / whole).toBeCloseTo(were[steel], 1.5)
  })
})
