import { describe, expect, it } from 'vitest'
import { wholeCount } from '#billet'
import { sampleBar, samplePack } from '../samples.ts'
import { attempt, tryOut, workedBack } from '../trials.ts'
import { accordion, hingeStrain } from './index.ts'

const mm = (n: number) => n / 1000
const values = { thickness: '9.5 mm', crop: '0 mm', kerf: '1.6 mm', hinge: '5 mm', heats: 1 }

describe('accordion', () => {
  it('makes of 25 × 25 × 300 a strip of 27 leaves, 25 wide and 9.5 thick, about 675 long', () => {
    // 27 × 9.5 + 26 × 1.6 = 298.1 mm of the 300; 27 × 25 = 675 mm and the metal of the hinges,
    // 26 × 1.6 × 5 × 25 mm³ over 25 × 9.5 mm: 21.9 mm more. One heat takes 0.05 mm off each face.
    const { after, setAside, losses } = tryOut(accordion, values, samplePack(300, 25, 25))
    expect(after.size.length).toBeCloseTo(mm(675 + (26 * 1.6 * 5) / 9.5 - 0.1), 9)
    expect(after.size.width).toBeCloseTo(mm(24.9), 12)
    expect(after.size.height).toBeCloseTo(mm(9.4), 12)
    expect(setAside[0].size.length).toBeCloseTo(mm(300 - 298.1 - 1.6), 9)
    expect(losses.map((loss) => loss.cause).sort()).toEqual(['crop', 'kerf', 'scale'])
  })

  it('mirrors at every hinge, so like joins like: 27 × 13 − 26', () => {
    const { after } = tryOut(accordion, values, samplePack(300, 25, 25, 13))
    expect(wholeCount(after.build)).toEqual({ laid: 27 * 13, merged: 27 * 13 - 26 })
  })

  it('cuts out what lies where the saw went, from above and below in turn', () => {
    // Half of one steel below half of another; 3 leaves: one cut from above, one from below, each
    // 20 of 25 mm deep: 12.5 of the one and 7.5 of the other, the two alike in sum.
    const half = samplePack(60, 25, 25, 2)
    const even = {
      ...half,
      build: {
        ...half.build,
        layers: [0, 1].map((i) => ({ steel: ['1095', '15N20'][i], thickness: mm(12.5) })),
      },
    }
    const { losses } = tryOut(accordion, { ...values, thickness: '15 mm', count: 3 }, even as never)
    const kerf = losses.find((loss) => loss.cause === 'kerf')?.masses ?? {}
    // Each steel its own density (7411 and 7548 kg/m³): the volumes are alike; the offcut's dust is too.
    expect(kerf['1095'] / 7411).toBeCloseTo(kerf['15N20'] / 7548, 12)
  })

  it('warns of hinges that tear: 1 in cut two thirds through on a saw kerf stretches by 84 %', () => {
    expect(hingeStrain(mm(25.4 / 3), mm(0.8))).toBeCloseTo(0.841, 3)
    const drilled = tryOut(accordion, { ...values, root: '4 mm' }, samplePack(300, 25, 25))
    expect(drilled.warnings).toEqual([])
    const sawn = tryOut(accordion, values, samplePack(300, 25, 25))
    expect(sawn.warnings.map((w) => w.at)).toEqual(['root'])
  })

  it('does not unfold when the cuts do not pass one another, or when round', () => {
    const shallow = attempt(accordion, { ...values, hinge: '13 mm' }, samplePack(300, 25, 25))
    expect(shallow.problems?.[0].at).toBe('hinge')
    expect(attempt(accordion, values, sampleBar(300, 25, 25, 'W2', 'round')).problems).toHaveLength(
      1,
    )
  })

  it('counts out whole leaves on the way back', () => {
    // Each leaf and its hinge: 25 + 1.6 × 5 / 9.5 = 25.84 mm of strip; 20 leaves make 516.0 mm.
    const demand = { length: mm(500), width: mm(24.9), height: mm(9.4) }
    const [needed] = workedBack(accordion, demand, values, samplePack(300, 25, 25)).ok ?? []
    expect(needed.length).toBeCloseTo(mm(20 * 9.5 + 19 * 1.6), 9)
  })
})
