import { describe, expect, test } from 'vitest'
import { evolveCarbon } from '#metallurgy'
import { moveCarbon } from './carbon-in-pack.ts'
import { CELLS, type Ply, meanCarbon, sliceCarbon } from './metal.ts'

const steels = {
  plain: { C: 0.95, Mn: 0.4, Si: 0.2 },
  nickel: { C: 0.75, Mn: 0.4, Si: 0.25, Ni: 2 },
  rich: { C: 0.9 },
  poor: { C: 0.7 },
} as const
const compositionOf = (steel: string) => steels[steel as keyof typeof steels]

function ply(steel: keyof typeof steels, thickness: number): Ply {
  const carbon = new Array<number>(CELLS).fill(steels[steel].C)
  return { steel, bar: 'bar', thickness, carbon }
}

const held = (kelvin: number, seconds: number) => ({
  points: [
    { time: 0, temperature: kelvin },
    { time: seconds, temperature: kelvin },
  ],
  thinning: [],
})

const carbonOf = (plies: readonly Ply[]) =>
  plies.reduce((sum, p) => sum + meanCarbon(p) * p.thickness, 0)

describe('carbon of a pack', () => {
  test('levels as the series of a square wave says', () => {
    // Periodic slabs, Carslaw & Jaeger: difference of the layers' means = (8/π²) Σ e^(-n²t/τ)/n², n odd,
    // with τ = λ²/(4π²D); D at 1100 °C by a second formula, 9.1e-11 m²/s (Tibbetts, from memory).
    const half = 1e-4
    const pack = [0, 1, 2, 3, 4, 5, 6, 7].map((i) => ply(i % 2 ? 'poor' : 'rich', half))
    const tau = (2 * half) ** 2 / (4 * Math.PI ** 2 * 9.1e-11)
    expect(tau).toBeCloseTo(11, 0)
    const { plies } = moveCarbon(pack, held(1373.15, tau), compositionOf)
    // The two in the middle: they see no end.
    const left = (meanCarbon(plies[4]!) - meanCarbon(plies[3]!)) / 0.2
    const series =
      [1, 3, 5].reduce((s, n) => s + Math.exp(-n * n) / (n * n), 0) * (8 / Math.PI ** 2)
    expect(left / series).toBeGreaterThan(0.75)
    expect(left / series).toBeLessThan(1.25)
  })

  test('is kept, whatever the pack looks like', () => {
    const packs = [
      [ply('plain', 1e-3), ply('nickel', 5e-4), ply('plain', 1e-3)],
      [ply('plain', 1e-3), ply('nickel', 5e-4)],
      Array.from({ length: 169 }, (_, i) => ply(i % 2 ? 'nickel' : 'plain', 6e-5)),
      Array.from({ length: 100 }, (_, i) => ply(i % 2 ? 'nickel' : 'plain', i === 7 ? 3e-4 : 6e-5)),
    ]
    for (const pack of packs) {
      const { plies } = moveCarbon(pack, held(1400, 900), compositionOf)
      expect(carbonOf(plies) / carbonOf(pack) - 1).toBeLessThan(1e-4)
      expect(carbonOf(plies) / carbonOf(pack) - 1).toBeGreaterThan(-1e-4)
    }
  })

  test('is the same with repeats left out as solved whole', () => {
    const pack = Array.from({ length: 121 }, (_, i) =>
      ply(i % 2 ? 'nickel' : 'plain', i === 0 ? 4e-4 : 8e-5),
    )
    const heating = held(1400, 60)
    const { plies } = moveCarbon(pack, heating, compositionOf)
    const whole = evolveCarbon(
      pack.map((p) => ({ composition: compositionOf(p.steel), thickness: p.thickness })),
      heating,
      { nodesPerLayer: CELLS, tolerance: 1e-6 },
    )
    plies.forEach((p, i) =>
      expect(Math.abs(meanCarbon(p) - whole.layers[i]!.mean)).toBeLessThan(1e-3),
    )
  })

  test('stays where it is below 727 °C, and in a bar of one sheet', () => {
    const pack = [ply('plain', 1e-3), ply('nickel', 5e-4)]
    expect(moveCarbon(pack, held(950, 1e5), compositionOf).plies).toEqual(pack)
    expect(moveCarbon([pack[0]!], held(1400, 1e4), compositionOf).plies).toEqual([pack[0]])
  })
})

test('a profile cut in parts keeps its carbon', () => {
  const carbon = Array.from({ length: CELLS }, (_, i) => 0.7 + 0.2 * Math.sin(i))
  const mean = (c: readonly number[]) => c.reduce((a, b) => a + b, 0) / c.length
  const [low, high] = [sliceCarbon(carbon, 0, 0.3), sliceCarbon(carbon, 0.3, 1)]
  expect(0.3 * mean(low) + 0.7 * mean(high)).toBeCloseTo(mean(carbon), 12)
  expect(sliceCarbon(carbon, 0, 1)).toHaveLength(CELLS)
})
