import { describe, expect, it } from 'vitest'
import { billetwright } from './command-line.ts'

interface Printed {
  readonly heats: readonly {
    readonly step: number
    readonly history: readonly (readonly number[])[]
    readonly working_s?: { readonly value: number }
  }[]
  readonly layers: readonly {
    readonly steel: string
    readonly carbon_wt: { readonly value: number }
    readonly tempered_HRC?: { readonly value: number }
  }[]
}

describe('heat', () => {
  it('plots a step and says what it did', () => {
    const { code, out } = billetwright(['heat', 'jobs/rigging-knife.json', '--step', '3'])
    expect(code).toBe(0)
    expect(out).toMatch(/step 3, weld "knife"/)
    expect(out).toMatch(/yellow; from cold about \d+ min until the core is hot/)
    expect(out).toMatch(/11\d0 °C ┤ +s/)
    expect(out).toMatch(/carbon after the step: 15N20 of "knife" 0\.\d{3} %/)
  })

  it('tells what is left at the end, with a chart for tempering', () => {
    const { code, out } = billetwright(['heat', 'jobs/galley-knife.json', '--units', 'inch'])
    expect(code).toBe(0)
    expect(out).toMatch(/What the heats leave/)
    expect(out).toMatch(/W2 of "core": 1\.00 % carbon becomes 0\.9\d/)
    expect(out).toMatch(/390 °F +\d\d +\d\d +\d\d/)
    expect(out).not.toMatch(/°C|NaN/)
  })

  it('the plan gives histories and layers as data', () => {
    const heats = JSON.parse(
      billetwright(['plan', 'jobs/rigging-knife.json', '--json']).out,
    ) as Printed
    const [first] = heats.heats
    expect(first!.history[0]![3]).toBeCloseTo(293.15, 5)
    expect(first!.working_s!.value).toBeGreaterThan(10)
    expect(heats.layers.every((l) => l.tempered_HRC!.value > 50)).toBe(true)
  })
})
