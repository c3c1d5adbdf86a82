import { describe, expect, it } from 'vitest'
import { attempt, coldFire, mass, stepOf } from '../attempt.ts'
import { sampleBar } from '../samples.ts'
import { bend } from './index.ts'

/** Box of a bent band by walking its outline, mm: what the closed form must enclose. */
function walked(length: number, thick: number, radius: number) {
  const half = length / radius / 2
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let i = 0; i <= 20000; i++) {
    const t = -half + (2 * half * i) / 20000
    for (const r of [radius - thick / 2, radius + thick / 2]) {
      x0 = Math.min(x0, r * Math.sin(t))
      x1 = Math.max(x1, r * Math.sin(t))
      y0 = Math.min(y0, r * Math.cos(t))
      y1 = Math.max(y1, r * Math.cos(t))
    }
  }
  return { along: x1 - x0, across: y1 - y0 }
}

describe('bending', () => {
  it.each([
    [700, 40, 2500],
    [300, 30, 80],
    [300, 20, 60],
    [67, 8, 11],
  ])(
    'a bar %d long and %d wide edgewise to %d fills the box its outline does',
    (length, width, radius) => {
      const bar = sampleBar(length, width, 5)
      const { after } = stepOf(bend, { radius: `${radius} mm` }, bar, { shop: coldFire })
      const box = walked(length, width, radius)
      expect(after.size.length * 1000).toBeCloseTo(box.along, 3)
      expect(after.size.width * 1000).toBeCloseTo(box.across, 3)
      expect(mass(after)).toBeCloseTo(mass(bar), 12)
    },
  )

  it('a sabre of 700 mm at 2.5 m is 24.4 mm deep in its curve and stretched by 0.8 % outside', () => {
    const { notes } = stepOf(bend, { radius: '2.5 m' }, sampleBar(700, 40, 6), { shop: coldFire })
    // r(1 − cos(L/2r)) = 2500 · (1 − cos 0.14) = 24.46; W/2r = 20/2500.
    expect(notes[0]).toContain('24.46 mm deep')
    expect(notes[1]).toContain('0.8 %')
  })

  it('a ring strip of π · 21.5 goes once round, and no longer one does', () => {
    const strip = (length: number) => sampleBar(length, 8, 2.5)
    const raw = { way: 'flatwise', radius: '10.75 mm' }
    const { after } = stepOf(bend, raw, strip(67.54), { shop: coldFire })
    expect(after.size.length * 1000).toBeCloseTo(24, 9)
    expect(after.size.height * 1000).toBeCloseTo(24, 2)
    expect(attempt(bend, raw, strip(75)).problems?.[0].what).toMatch(/more than once round/)
    expect(attempt(bend, { radius: '10 mm' }, sampleBar(30, 30, 5)).problems?.[0].why).toMatch(
      /no length left/,
    )
  })
})
