import { describe, expect, it } from 'vitest'
import { readValues } from '#parameters'
import { type Shop, usualShop } from '#shop'
import { type Billet, layered } from '#billet'
import { densities, stepOf } from './attempt.ts'
import { judgeStep } from './judge-step.ts'
import { operations } from './list.ts'
import type { Smithy } from './operation.ts'
import { loose, sampleBar, samplePack } from './samples.ts'
import { spreadOf, widthAt } from './spread.ts'

/** A step judged in a shop; compositions as grade sheets print them (middle of the range). */
function judge(
  name: string,
  raw: Record<string, unknown>,
  before: Billet,
  shop: Partial<Shop> = {},
) {
  const operation = operations.find((o) => o.name === name)!
  const smithy: Smithy = {
    shop: { ...usualShop(), ...shop },
    densities,
    compositions: {
      '1084': { C: 0.84, Mn: 0.75 },
      '1095': { C: 0.95, Mn: 0.4 },
      '15N20': { C: 0.75, Mn: 0.4, Ni: 2 },
    },
  }
  const step = stepOf(operation, raw, before, { shop })
  const { values } = readValues(operation.parameters, raw).ok!
  return judgeStep({ operation, values, before: [before], step }, smithy).step
}

const draw = { height: '20 mm', width: '30 mm', heats: 4 }
const power: Partial<Shop> = { hammer: 'power', hammerMass: 25, hammerSpeed: 5 }

describe('spread comes from forming', () => {
  it('two squeezes of 1.25 by Tomlinson and Stringer, the second on the wider bar (worked by hand)', () => {
    // 40 mm bite on 40 mm: S = 0.446, then on 44.18 mm: S = 0.4217.
    const bar = sampleBar(100, 40, 50)
    expect(widthAt(bar, 0.05, 0.032, usualShop()) * 1000).toBeCloseTo(48.54, 1)
    expect(spreadOf(bar, usualShop())).toBeCloseTo(0.446, 3)
  })

  it("the shop's own measure overrules it", () => {
    const shop = { ...usualShop(), spread: 0.25 }
    expect(widthAt(sampleBar(100, 40, 50), 0.05, 0.032, shop)).toBeCloseTo(
      0.04 * 1.5625 ** 0.25,
      12,
    )
  })
})

describe('what a step asks of the shop', () => {
  const bar = sampleBar(100, 40, 40)

  it('blows fall as the blow grows; the likeliest tool is kept', () => {
    const blows = [1, 1.8, 4].map(
      (hammerMass) => judge('draw out', draw, bar, { hammerMass }).force!.blows.value,
    )
    expect(blows[0]! / blows[1]!).toBeCloseTo(1.8, 6)
    expect(blows[1]! / blows[2]!).toBeCloseTo(4 / 1.8, 6)
    expect(judge('draw out', draw, bar, power).force!.way).toBe('power hammer')
    expect(judge('draw out', draw, bar, { pressForce: 1e6 }).force!.way).toBe('press')
  })

  it('what the shop cannot do is a warning with cures; what it can is none', () => {
    const by = (shop: Partial<Shop>) => judge('draw out', draw, bar, shop)
    const hand = by({})
    expect(hand.force!.verdict).not.toBe('can do')
    expect(hand.warnings.some((w) => w.what.includes('hand hammer') && w.try.length > 1)).toBe(true)
    const strong = by(power)
    expect(strong.force!.verdict).toBe('can do')
    expect(strong.warnings).toEqual([])
  })

  it('a billet taller than the dies open is refused by hammer and press alike', () => {
    const short = { greatestOpening: 0.03 }
    for (const shop of [
      { ...power, ...short },
      { hammer: 'none' as const, pressForce: 5e6, ...short },
    ]) {
      const { force } = judge('draw out', draw, bar, shop)
      expect(force!.verdict).toBe('cannot')
      expect(force!.wouldDo.join()).toMatch(/opening/)
    }
  })

  it('a press too weak is told what it would take', () => {
    const { force, warnings } = judge('draw out', draw, bar, { hammer: 'none', pressForce: 50e3 })
    expect(force!.verdict).toBe('cannot')
    expect(force!.force.low).toBeGreaterThan(50e3)
    expect(warnings[0]!.try.join()).toMatch(/press of \d+ kN|Narrower|narrower/)
  })

  it('layers on edge are as stiff as their mean; lying flat the softer may give first', () => {
    const sheets = ['1095', '15N20'].flatMap(() => [
      { steel: '1095', thickness: 0.002 },
      { steel: '15N20', thickness: 0.002 },
    ])
    const at = (axis: 'y' | 'z') =>
      judge(
        'draw out',
        { height: '6 mm', heats: 2 },
        { ...samplePack(100, 8, 8), build: layered(axis, sheets) },
        power,
      )
    const [flat, edge] = [at('z').force!.flowStress, at('y').force!.flowStress]
    expect(flat.value).toBeLessThanOrEqual(edge.value)
    expect(flat.low).toBeLessThan(edge.low * 1.0001)
  })

  it('free to spread, the size has a range that keeps the volume; held to a width it has none', () => {
    const free = judge('draw out', { height: '30 mm', heats: 2 }, bar, power)
    const { low, high } = free.force!.size
    expect(low.width).toBeLessThan(free.after.size.width)
    expect(high.width).toBeGreaterThan(free.after.size.width)
    expect(low.width * high.length).toBeCloseTo(free.after.size.width * free.after.size.length, 12)
    const held = judge('draw out', draw, bar, power).force!.size
    expect(held.low).toEqual(held.high)
  })

  it('a working time once known sets the heats', () => {
    const operation = operations.find((o) => o.name === 'draw out')!
    const step = stepOf(operation, draw, bar)
    const { values } = readValues(operation.parameters, draw).ok!
    const heats = [20, 60].map((time) => {
      const smithy = { shop: usualShop(), densities, workingTime: () => time }
      return judgeStep({ operation, values, before: [bar], step }, smithy).step.force!.heats
    })
    expect(heats[0]! / heats[1]!).toBeGreaterThan(2.5)
    expect(heats[0]! / heats[1]!).toBeLessThan(3.5)
  })
})

describe('welds', () => {
  it('are told heat, soak and first reduction; cold ones are warned of', () => {
    const good = judge('weld', { close: '80 %' }, loose(samplePack(100, 40, 40)), power)
    expect(good.notes.join()).toMatch(
      /1150 to 12\d\d °C: soak 10 min .* 5 to 15 % in the first heat/,
    )
    expect(good.warnings).toEqual([])
    const cold = judge('weld', { temperature: '1000 °C' }, loose(samplePack(100, 40, 40)), power)
    expect(cold.warnings.map((w) => w.what).join()).toMatch(/cold for a weld/)
    const brief = judge('weld', { soak: '1 min' }, loose(samplePack(100, 40, 40)), power)
    expect(brief.warnings.map((w) => w.what).join()).toMatch(/core cold/)
  })

  it('are feared for on edge before a fifth to a third has come off, and in a twist until half has', () => {
    const young = (worked: number, name: string, raw: Record<string, unknown>, axis: 'y' | 'z') => {
      const pack = samplePack(200, 14, 14, 9)
      const build =
        axis === 'z'
          ? pack.build
          : layered('y', [
              { steel: '1095', thickness: 0.007 },
              { steel: '15N20', thickness: 0.007 },
            ])
      return judge(name, raw, { ...pack, build, worked }, power).warnings.some((w) =>
        w.what.includes('young welds'),
      )
    }
    expect(young(0.9, 'draw out', { height: '10 mm', heats: 2 }, 'y')).toBe(true)
    expect(young(0.9, 'draw out', { height: '10 mm', heats: 2 }, 'z')).toBe(false)
    expect(young(0.65, 'draw out', { height: '10 mm', heats: 2 }, 'y')).toBe(false)
    expect(young(0.65, 'twist', { turn: '1 turn' }, 'z')).toBe(true)
    expect(young(0.45, 'twist', { turn: '1 turn' }, 'z')).toBe(false)
  })
})
