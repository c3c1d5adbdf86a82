import { describe, expect, it } from 'vitest'
import { readValues } from '#parameters'
import { usualShop } from '#shop'
import { ladder } from '../ladder/index.ts'
import { partOf } from '../part.ts'
import { samplePack } from '../samples.ts'
import { traceMovement } from '../trace-movement.ts'
import { tryOut } from '../trials.ts'
import { forgeFlat } from './index.ts'

describe('a laddered bar on its way flat', () => {
  // Fifteen square grooves, 6 mm of every 10 mm, 3 mm of 12 mm deep.
  const [depth, wide, height] = [0.003, 0.006, 0.012]
  const sizes = { depth: '3 mm', width: '6 mm', pitch: '10 mm', form: 'square', sides: 'top' }
  const { after: cut } = tryOut(ladder, sizes, samplePack(150, 30, 12, 61))
  const values = readValues(forgeFlat.parameters, { height: '6 mm' }).ok?.values as never
  const smithy = { shop: usualShop(), densities: { '1095': 7850, '15N20': 7850, '1084': 7850 } }
  const at = (share: number) => {
    const part = partOf(forgeFlat, share)
    const step = part.forward([cut], values, smithy)
    if (!step.ok) throw new Error(step.problems[0].what)
    return { after: step.ok.after, movement: part.movement([cut], values, step.ok.after, smithy) }
  }

  it('begins as it was cut and ends level, its face coming down by like ratios', () => {
    const [few, half, most] = [1e-3, 0.5, 0.999].map((share) => at(share).after.size)
    const whole = at(1).after.size
    for (const side of ['length', 'width', 'height'] as const) {
      expect(few[side] / cut.size[side]).toBeCloseTo(1, 2)
      expect(Math.abs(most[side] / whole[side] - 1)).toBeLessThan(0.01)
    }
    expect(half.height).toBeCloseTo(Math.sqrt(0.012 * 0.006), 3)
  })

  it('holds in its picture the metal of the account: what comes from a groove is air', () => {
    const { after, movement } = at(0.5)
    const rows = { x: [] as number[], y: [] as number[], z: [] as number[] }
    const count = 12_000
    for (let i = 0; i < count; i++) {
      rows.x.push(((i + 0.5) / count) * after.size.length)
      rows.y.push(0)
      // Spread by the golden section: no two rows fall on one height.
      rows.z.push((((i * 0.6180339887) % 1) - 0.5) * after.size.height)
    }
    const traced = traceMovement(movement, rows)
    // Where a groove lies less metal is pressed along: a place comes from further on than on the land.
    const steps = traced.map(({ x }, i) => (traced[i + 1]?.x ?? x) - x)
    const between = (Math.max(...steps) + Math.min(...steps.slice(0, -1))) / 2
    const inGroove = steps.map((step) => step > between)
    const cutAcross = steps.reduce((sum, step, i) => sum + (inGroove[i] ? step : 0), 0)
    expect(cutAcross / (15 * wide)).toBeCloseTo(1, 1)
    const metal = traced.filter(({ z }, i) => z < height / 2 - (inGroove[i] ? depth : 0))
    const { length, width, height: box } = after.size
    const share = after.volume / (length * width * box)
    expect(Math.abs(metal.length / traced.length / share - 1)).toBeLessThan(0.01)
    expect(share).toBeLessThan(0.95)
    expect(Math.max(...traced.map(({ volume }) => Math.abs(volume - 1)))).toBeLessThan(1e-6)
  })
})
