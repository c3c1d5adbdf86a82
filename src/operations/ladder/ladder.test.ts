import { describe, expect, it } from 'vitest'
import { volumesOf } from '#billet'
import { grooveShape } from '#movement'
import { attempt, coldFire, lostTo, mass, stepOf } from '../attempt.ts'
import { forgeFlat } from '../forge-flat/index.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { ladder } from './index.ts'

/** Height, groove depth, width, form, pitch, flattened height → share cut away, pitch after with no spread and with 8 %. */
const rows = [
  [19.05, 6.35, 6.35, 'round', 19.05, 12.7, 19.8, 22.9, 21.2],
  [19.05, 6.35, 6.35, 'round', 12.7, 12.7, 29.8, 13.4, 12.4],
  [15.9, 5.3, 6.35, 'round', 12.7, 10.6, 29, 13.5, 12.5],
  [9.53, 3.18, 3.18, 'square', 12.7, 6.35, 16.7, 15.9, 14.7],
  [7.9375, 1.5875, 3.175, 'square', 6.35, 6.35, 20, 6.35, 5.9],
] as const

describe('a ladder cut and forged flat', () => {
  it.each(rows)(
    'height %d, groove %d × %d %s, pitch %d, flattened to %d: %d %% cut away, pitch %d, or %d with spread',
    (height, depth, width, form, pitch, flat, cutAway, after, spreadOut) => {
      const bar = sampleBar(254, 32, height)
      const raw = { depth: `${depth} mm`, width: `${width} mm`, form, pitch: `${pitch} mm` }
      const cut = stepOf(ladder, raw, bar)
      expect((100 * lostTo(cut, 'cut out')) / mass(bar)).toBeCloseTo(cutAway, 0)
      const grows = (across: number) =>
        stepOf(forgeFlat, { height: `${flat} mm`, width: `${across} mm`, heats: 1 }, cut.after, {
          shop: coldFire,
        }).after.size.length / cut.after.size.length
      expect(Math.abs(pitch * grows(32) - after)).toBeLessThan(0.06)
      // Grooves that just meet leave no metal over to widen with: there the operation refuses to.
      expect(Math.abs((pitch * grows(32)) / 1.08 - spreadOut)).toBeLessThan(0.06)
      if (grows(32) > 1.08) expect(grows(32 * 1.08)).toBeCloseTo(grows(32) / 1.08, 9)
    },
  )

  it('cuts areas that a fine sum over the depth finds too', () => {
    for (const form of ['round', 'square', 'v'] as const) {
      for (const [width, depth] of [
        [6, 2],
        [6, 3],
        [6, 5],
      ]) {
        const shape = grooveShape(form, width, depth)
        const n = 40000
        let down = 0
        let across = 0
        for (let i = 0; i < n; i++) {
          down += (shape.widthAt(((i + 0.5) / n) * depth) * depth) / n
          across += (shape.depthAt(((i + 0.5) / n - 0.5) * width) * width) / n
        }
        expect(down / shape.area).toBeCloseTo(1, 4)
        expect(across / shape.area).toBeCloseTo(1, 4)
      }
    }
  })

  it('takes the layers it goes through and no others', () => {
    // 9 layers of 1 mm; square grooves 2 mm deep in the top take of layers 8 and 9 only.
    const bar = samplePack(100, 30, 9, 9)
    const even = {
      ...bar,
      build: {
        form: 'layered' as const,
        axis: 'z' as const,
        laid: 9,
        layers: Array.from({ length: 9 }, (_, i) => ({
          steel: i === 8 ? '15N20' : i === 7 ? '1084' : '1095',
          thickness: 1e-3,
        })),
      },
    }
    const raw = { depth: '2 mm', width: '4 mm', pitch: '8 mm', form: 'square', sides: 'top' }
    const cut = stepOf(ladder, raw, even as never)
    const [was, is] = [volumesOf(even as never), volumesOf(cut.after)]
    expect(is['1095'] / was['1095']).toBeCloseTo(1, 9)
    expect(is['1084'] / was['1084']).toBeCloseTo(0.5, 9)
    expect(is['15N20'] / was['15N20']).toBeCloseTo(0.5, 9)
  })

  it('knows the web, and stops where the grooves meet', () => {
    const bar = sampleBar(200, 30, 12)
    const deep = { depth: '5 mm', width: '6 mm', pitch: '12 mm' }
    expect(stepOf(ladder, deep, bar).notes[1]).toContain('web is 7 mm')
    expect(stepOf(ladder, { ...deep, sides: 'opposite' }, bar).notes[1]).toContain('web is 2 mm')
    const through = attempt(ladder, { ...deep, depth: '6 mm', sides: 'opposite' }, bar)
    expect(through.problems?.[0].what).toMatch(/cut a bar 12 mm thick through/)
    const what = (raw: object) =>
      stepOf(ladder, raw as never, bar)
        .warnings.map((w) => w.what)
        .join('; ')
    expect(what(deep)).toMatch(/42 % of the thickness/)
    expect(what({ depth: '3.5 mm', width: '3 mm', pitch: '12 mm' })).toMatch(
      /deeper \(3.5 mm\) than wide/,
    )
  })

  it('a 6.35 groove in 300 layers of 19.05 crosses 100 of them', () => {
    const step = stepOf(
      ladder,
      { depth: '6.35 mm', width: '6.35 mm', pitch: '12.7 mm' },
      samplePack(200, 30, 19.05, 300),
    )
    expect(step.notes.join(' ')).toContain('about 100 layers')
  })
})
