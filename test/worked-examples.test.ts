import { describe, expect, it } from 'vitest'
import { sharesOf } from '#billet'
import { type Computed, computeJob, readJobObject } from '#job'

/**
 * Worked arithmetic of the trade, done by hand in the comments and compared with the program's
 * account of a job. Density 7.85 g/cm³ in the hand sums; the steels of the jobs lie within 0.4 % of it.
 */
function compute(bars: Record<string, unknown>, more: Record<string, unknown> = {}): Computed {
  const job = readJobObject({ billetwright: 1, name: 'worked', bars, ...more })
  if (job.problems) throw new Error(JSON.stringify(job.problems))
  const computed = computeJob(job.ok)
  if (computed.problems) throw new Error(JSON.stringify(computed.problems))
  return computed.ok
}

const lossless = {
  weldingScale: '0 mm',
  forgingScale: '0 mm',
  crop: '0 mm',
  kerf: '0 mm',
  cleanUp: '0 mm',
  trim: '0 mm',
}
const sheets = [
  { steel: '1095', thickness: '3.0 mm' },
  { steel: '15N20', thickness: '1.5 mm' },
]

describe('layer thickness', () => {
  it('304 layers in 1/4 in are 20.9 µm each, 1 216 to the inch', () => {
    // 6.35 mm / 304 = 20.9 µm; 304 / 0.25 in = 1216 per inch.
    const halves = [
      { steel: '1095', share: '50 %' },
      { steel: '15N20', share: '50 %' },
    ]
    const remnant = {
      do: 'take remnant',
      length: '6 in',
      width: '1/4 in',
      height: '1 in',
      lie: 'on edge',
    }
    const { plan } = compute({ a: [{ ...remnant, steels: halves, layers: 304 }] })
    const { build, size } = plan.finished
    if (build.form !== 'layered') throw new Error('the bar is not flat-layered')
    expect(build.layers.length).toBe(304)
    expect(build.layers[100].thickness * 1e6).toBeCloseTo(20.9, 1)
    expect(build.layers.length / (size.width / 0.0254)).toBeCloseTo(1216, 6)
  })
})

describe('from billet to stack', () => {
  it('7 × 3.0 + 6 × 1.5 mm, 30 wide and 105 long: 30 mm high, 94.5 cm³, 742 g, 30 % bright', () => {
    const { plan, stackMass } = compute({
      a: [{ do: 'stack', sheets, repeat: 6, closeWith: '1095', width: '30 mm', length: '105 mm' }],
    })
    const { size, volume, build } = plan.finished
    expect(size.height * 1000).toBeCloseTo(30, 9)
    expect(volume * 1e6).toBeCloseTo(94.5, 9)
    expect(Math.abs(stackMass / 0.742 - 1)).toBeLessThan(0.004)
    expect(sharesOf(build)['15N20']).toBeCloseTo(0.3, 12)
  })

  it('½ in square, 42 in long from 1.95 × 5½ in of stack: 10.5 of 13.4 in³, 22 % lost at 1¼ in wide', () => {
    // 0.5 · 0.5 · 42 = 10.5 in³; 1.95 · 1.25 · 5.5 = 13.41 in³; 1 − 10.5/13.41 = 21.7 %.
    const { plan } = compute(
      {
        a: [
          {
            do: 'take remnant',
            length: '5 1/2 in',
            width: '1 1/4 in',
            height: '1.95 in',
            steels: [
              { steel: '1084', share: '60 %' },
              { steel: '15N20', share: '40 %' },
            ],
            layers: 15,
          },
          { do: 'draw out', height: '1/2 in', width: '1/2 in', heats: 6 },
        ],
      },
      { shop: lossless },
    )
    const inches = plan.finished.size.length / 0.0254
    expect(inches).toBeCloseTo(13.40625 / 0.25, 6)
    expect(1 - 42 / inches).toBeCloseTo(0.217, 2)
  })

  it('a cycle of two welding heats at 3 % scale, 4 % grinding, 3 % crop and kerf keeps 0.876', () => {
    // 0.97² · 0.96 · 0.97 = 0.8762. Thicknesses that take those shares of this very bar: 30 × 30 × 105 mm loses
    // 2 (30·30 + 2·30·105) δ / 94 500 mm³ to each heat: 3 % at δ = 0.197 mm.
    const { plan } = compute(
      {
        a: [
          { do: 'stack', sheets, repeat: 6, closeWith: '1095', width: '30 mm', length: '105 mm' },
          { do: 'weld', close: '99 %', heats: 2 },
          { do: 'grind', faces: 'flat', off: '0.58 mm' },
          { do: 'crop', start: '1.6 mm', end: '1.6 mm' },
        ],
      },
      { shop: { weldingScale: '0.197 mm' } },
    )
    expect(plan.finished.volume / 94.5e-6).toBeCloseTo(0.876, 2)
  })
})

describe('length after drawing', () => {
  it('30 × 30 × 105 to 16 × 16: 105 · 900 / 256 = 369 mm before scale', () => {
    const { plan } = compute(
      {
        a: [
          { do: 'stack', sheets, repeat: 6, closeWith: '1095', width: '30 mm', length: '105 mm' },
          { do: 'weld', close: '99 %', heats: 1 },
          { do: 'draw out', height: '16 mm', width: '16 mm' },
        ],
      },
      { shop: lossless },
    )
    expect(plan.finished.size.length * 1000).toBeCloseTo((105 * 900) / 256, 6)
  })
})
