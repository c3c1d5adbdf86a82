import { expect, test } from 'vitest'
import { type Billet, barVolume, solid } from '#billet'
import { usualShop } from '#shop'
import { orderFor, run } from './heat-order.ts'
import { workingTimes } from './working-time.ts'

test('the quick time to work a bar is the heating model’s, within a tenth', () => {
  const shop = usualShop()
  const timeOf = workingTimes(shop)
  const sections = [
    [0.004, 0.04],
    [0.01, 0.03],
    [0.03, 0.04],
    [0.05, 0.05],
    [0.08, 0.08],
  ] as const
  for (const temperature of [1373.15, 1423.15, 1473.15]) {
    for (const [height, width] of sections) {
      const heat = { purpose: 'forge', count: 1, temperature, soak: 60, medium: 'air' } as const
      const section = { shape: 'rectangle', thickness: height, width } as const
      const whole = run(orderFor(heat, section, shop, 293.15)).working.value
      const size = { length: 0.3, width, height }
      const bar: Billet = {
        size,
        shape: 'rectangle',
        volume: barVolume(size, 'rectangle'),
        build: solid('1084', height),
        bond: 'welded',
        temper: 'as forged',
        worked: 1,
        spare: 'x',
      }
      const quick = timeOf(bar, heat)
      expect(quick / whole).toBeGreaterThan(0.88)
      expect(quick / whole).toBeLessThan(1.12)
    }
  }
})
