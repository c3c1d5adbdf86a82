import { describe, expect, it } from 'vitest'
import { steelStress } from '../flow-stress/choose.ts'
import { driftOfLayers, stackStress } from './stack.ts'

const kelvin = (celsius: number) => celsius + 273.15

describe('a stack of two steels', () => {
  const layers = [
    { composition: { C: 0.84, Mn: 0.8 }, share: 0.5 },
    { composition: { C: 0.4, Cr: 5.2, Mo: 1.3, V: 1 }, share: 0.5 },
  ]
  const state = { temperature: kelvin(1050), strain: 0.2, rate: 2 }

  it('is stiffer on edge (common strain) than flat (towards common stress)', () => {
    const flat = stackStress(layers, state, 'flat')
    const edge = stackStress(layers, state, 'on edge')
    const each = layers.map((l) => steelStress(l.composition, state))
    expect(edge.value).toBeCloseTo(0.5 * (each[0]! + each[1]!), -1)
    expect(flat.series).toBeLessThan(flat.parallel)
    expect(flat.value).toBeLessThan(edge.value)
    expect(flat.series).toBeGreaterThanOrEqual(Math.min(...each))
  })

  it('at common stress each layer strains at the rate its own law gives, and the rates make up the whole', () => {
    const { series, freeStrain } = stackStress(layers, state, 'flat')
    expect(0.5 * freeStrain[0]! + 0.5 * freeStrain[1]!).toBeCloseTo(1, 6)
    layers.forEach(({ composition }, i) => {
      const stress = steelStress(composition, { ...state, rate: state.rate * freeStrain[i]! })
      expect(stress / series).toBeCloseTo(1, 3)
    })
  })

  it('one steel alone does not drift; of two, the softer thins more, and more at the sides', () => {
    const alone = driftOfLayers([{ composition: { C: 0.8 }, share: 1 }], state, 0.5, 0.003, 0.04)
    expect(alone.thickness[0]).toBeCloseTo(1, 9)
    const drift = driftOfLayers(layers, state, 0.5, 0.003, 0.04)
    const soft =
      steelStress(layers[0]!.composition, state) < steelStress(layers[1]!.composition, state)
        ? 0
        : 1
    expect(drift.thickness[soft]).toBeLessThan(1)
    expect(drift.atSides[soft]).toBeLessThan(drift.thickness[soft]!)
    expect(0.5 * drift.thickness[0]! + 0.5 * drift.thickness[1]!).toBeCloseTo(1, 9)
    const loose = driftOfLayers(layers, state, 0.5, 0.003, 0.04, false)
    expect(loose.thickness).toEqual(loose.atSides)
  })
})
