import { describe, expect, it } from 'vitest'
import { sampleBar, samplePack } from '../samples.ts'
import { attempt, tryOut, workedBack } from '../trials.ts'
import { rollUp } from './index.ts'

const mm = (n: number) => n / 1000

/** Radius of the outside, meant over the last turn, of a strip wound as a true spiral. */
function spiral(length: number, thick: number, r0: number): number {
  const per = thick / (2 * Math.PI)
  const steps = 200_000
  let [wound, angle] = [0, 0]
  const turn = length / (r0 * steps)
  while (wound < length) {
    wound += Math.hypot(r0 + thick / 2 + per * angle, per) * turn
    angle += turn
  }
  return r0 + thick + per * angle - thick / 2
}

describe('roll up', () => {
  it.each([
    [300, 3, 6],
    [420, 2, 3],
    [900, 4, 10],
  ])('a strip %d long, %d thick on a core of radius %d comes out as a spiral does', (l, t, r0) => {
    const values = { core: `${2 * r0} mm`, heats: 1 }
    // One heat burns 0.05 mm off each face first.
    const { after } = tryOut(rollUp, values, samplePack(l + 0.1, 60.1, t + 0.1))
    const radius = (after.size.width / 2) * 1000
    expect(Math.abs(radius - spiral(l, t, r0))).toBeLessThan(t / 2)
    expect(radius).toBeCloseTo(Math.sqrt((l * t) / Math.PI + r0 * r0), 9)
    expect(after.size.length).toBeCloseTo(mm(60), 12)
  })

  it('creases round a core thinner than the strip, and goes round once at least', () => {
    const creased = tryOut(rollUp, { core: '5 mm' }, samplePack(300, 60, 4))
    expect(creased.warnings.map((w) => w.at)).toEqual(['core'])
    expect(tryOut(rollUp, {}, samplePack(300, 60, 4)).warnings).toEqual([])
    expect(attempt(rollUp, { core: '150 mm' }, samplePack(300, 60, 4)).problems?.[0].at).toBe(
      'core',
    )
    expect(attempt(rollUp, {}, sampleBar(300, 10, 10, 'W2', 'round')).problems).toHaveLength(1)
  })

  it('asks for the strip whose roll has the area wanted, round or not', () => {
    const values = { core: '12 mm', coreSteel: 'W2', heats: 1 }
    const demand = { length: mm(60), width: mm(32), height: mm(50) }
    const [needed] = workedBack(rollUp, demand, values, samplePack(300, 60.1, 4.1)).ok ?? []
    // π/4 × 32 × 50 less the rod, over a strip 4 mm thick.
    expect(needed.length).toBeCloseTo(mm(((Math.PI / 4) * 1600 - Math.PI * 36) / 4 + 0.1), 9)
  })
})
