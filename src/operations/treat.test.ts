import { describe, expect, it } from 'vitest'
import { anneal } from './anneal/index.ts'
import { lostTo, mass, stepOf } from './attempt.ts'
import { etch } from './etch/index.ts'
import { harden } from './harden/index.ts'
import { normalise } from './normalise/index.ts'
import { sampleBar } from './samples.ts'
import { straighten } from './straighten/index.ts'
import { temper } from './temper/index.ts'

describe('a heat burns a thickness, not a percentage', () => {
  // 30 × 30 × 105: 0.05 mm off every face is 0.76 %; a blank of 280 × 45 × 7 loses twice that and more.
  it.each([
    [105, 30, 30, 0.05, 0.76],
    [105, 30, 30, 0.1, 1.5],
    [105, 30, 30, 0.15, 2.3],
    [280, 45, 7, 0.05, 1.7],
    [280, 45, 7, 0.1, 3.4],
  ])('%d × %d × %d loses, at %d mm a face, %d %%', (length, width, height, scale, percent) => {
    const bar = sampleBar(length, width, height)
    const step = stepOf(anneal, {}, bar, { shop: { treatingScale: scale / 1000 } })
    const lost = (100 * lostTo(step, 'scale')) / mass(bar)
    expect(Math.abs(lost - percent)).toBeLessThan(percent < 1 ? 0.005 : 0.06)
  })
})

describe('heat treatment', () => {
  const bar = sampleBar(200, 30, 4)

  it('normalises in falling steps', () => {
    const { heats, after } = stepOf(normalise, {}, bar)
    expect(heats.map((h) => Math.round(h.temperature - 273.15))).toEqual([870, 830, 790])
    expect(heats.every((h) => h.count === 1 && h.medium === 'air')).toBe(true)
    expect(after.temper).toBe('normalised')
  })

  it('hardens only from above the eutectoid, 727 °C', () => {
    const normal = { ...bar, temper: 'normalised' as const }
    expect(stepOf(harden, {}, normal).after.temper).toBe('hardened')
    const cold = stepOf(harden, { temperature: '720 °C' }, normal)
    expect(cold.after.temper).toBe('normalised')
    expect(cold.warnings[0].what).toMatch(/nothing hardens/)
    const rough = stepOf(harden, { medium: 'water' }, bar).warnings.map((w) => w.what)
    expect(rough.join('; ')).toMatch(/as it was forged.*quenched in water/)
  })

  it('tempers what is hard, and only that', () => {
    const hard = { ...bar, temper: 'hardened' as const }
    const step = stepOf(temper, {}, hard)
    expect(step.after).toEqual({ ...hard, temper: 'tempered' })
    expect(step.heats).toEqual([
      { purpose: 'temper', count: 2, temperature: 473.15, soak: 7200, medium: 'air' },
    ])
    expect(stepOf(temper, {}, bar).warnings[0].what).toMatch(/not hardened/)
  })

  it('straightens without loss but when hot, and never a brittle blade unwarned', () => {
    const hard = { ...bar, temper: 'hardened' as const }
    expect(stepOf(straighten, { when: 'from the quench' }, hard).warnings).toEqual([])
    expect(stepOf(straighten, { when: 'after tempering' }, hard).warnings[0].why).toMatch(
      /pieces fly/,
    )
    const hot = stepOf(straighten, {}, { ...bar, temper: 'tempered' })
    expect(hot.after.temper).toBe('annealed')
    expect(lostTo(hot, 'scale')).toBeGreaterThan(0)
  })

  it('etches what a still bath can, and says where it cannot', () => {
    const hard = { ...bar, temper: 'tempered' as const }
    // 15 min at 0.5 to 4 µm a minute: 7.5 to 60 µm.
    expect(stepOf(etch, { depth: '50 µm' }, hard).warnings).toEqual([])
    expect(stepOf(etch, { depth: '200 µm' }, hard).warnings[0].try[0]).toMatch(/more or longer/)
    const step = stepOf(etch, { depth: '50 µm' }, hard)
    // 2 · (200·30 + 30·4 + 200·4) mm² × 0.05 mm = 692 mm³.
    expect((lostTo(step, 'etched') / 7850) * 1e9).toBeCloseTo(692, 6)
  })
})
