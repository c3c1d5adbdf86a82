import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isSourceKey } from '#sources'
import { shida } from '../flow-stress/shida.ts'
import { slabSticking } from '../pressing/plane-strain.ts'
import { platenPressure } from '../pressing/platen.ts'
import { drawOut } from '../spread/draw.ts'
import { type Task, judgeTool } from './judge.ts'
import reference from './reference.json' with { type: 'json' }
import {
  type Tool,
  assistedEnergy,
  assistedSpeed,
  blowEfficiency,
  blowEnergy,
  dropSpeed,
  fallingMassFor,
  strainRate,
} from './tools.ts'
import { blowsFor, formingWork, tonsPerSquareInch, workHeating } from './work.ts'

const kelvin = (celsius: number) => celsius + 273.15

describe('published and computed machine figures', () => {
  it('energy of hand hammers (computed)', () => {
    const { speeds, rows } = reference.handHammer
    for (const [mass, ...energies] of rows)
      energies.forEach((shown, i) =>
        expect(Math.abs(blowEnergy({ mass: mass!, speed: speeds[i]! }) - shown)).toBeLessThan(0.06),
      )
  })

  it('blow efficiency (from memory, numbers computed)', () => {
    const { restitutions, rows } = reference.efficiency
    for (const [ratio, ...shares] of rows)
      shares.forEach((shown, i) =>
        expect(Math.abs(blowEfficiency(ratio!, restitutions[i]!) - shown)).toBeLessThan(6e-4),
      )
  })

  it('top of the range of drop hammers (VLAB, read): 7.3 and 10.1 m/s', () => {
    for (const { mass, energy, speed } of [reference.drops.gravity, reference.drops.power])
      expect(Math.abs(blowEnergy({ mass, speed }) / energy - 1)).toBeLessThan(0.01)
    expect(dropSpeed(2.72)).toBeCloseTo(7.3, 2)
    expect(blowEnergy({ mass: 50, speed: assistedSpeed(50, 6e5, 0.002, 0.4) })).toBeCloseTo(
      assistedEnergy(50, 6e5, 0.002, 0.4),
      9,
    )
  })

  it('the falling-weight rule (from memory): 320 lb for 2 in square, 180 for 1½', () => {
    for (const [inches, pounds] of reference.steamHammerRule.points)
      expect(fallingMassFor((inches! * 0.0254) ** 2) / 0.45359237).toBeCloseTo(pounds!, 6)
  })

  it('work and blows of the worked reduction (computed)', () => {
    const { volume, from, to, stress, factor, work, hand, power } = reference.blows
    const needed = formingWork(volume, stress, from, to, factor)
    expect(Math.abs(needed / work - 1)).toBeLessThan(1e-3)
    expect(Math.round(blowsFor(needed, blowEnergy(hand), hand.efficiency))).toBe(hand.blows)
    for (const [mass, speed, blows] of power)
      expect(
        Math.abs(blowsFor(needed, blowEnergy({ mass: mass!, speed: speed! }), 0.8) - blows!),
      ).toBeLessThan(0.06)
  })

  it('tons per square inch, rates and heating by work (computed)', () => {
    for (const [stress, plain, more] of reference.press.points) {
      expect(Math.abs(tonsPerSquareInch(stress! * 1e6) - plain!)).toBeLessThan(0.006)
      expect(Math.abs(tonsPerSquareInch(1.3 * stress! * 1e6) - more!)).toBeLessThan(0.006)
    }
    for (const [speed, height, rate] of reference.rates.points)
      expect(Math.abs(strainRate(speed!, height!) / rate! - 1)).toBeLessThan(0.01)
    expect(workHeating(reference.heating.stress, reference.heating.strain)).toBeCloseTo(
      reference.heating.rise,
      1,
    )
  })

  it('the worked press: 100 to 138 kN at 1100 °C, 225 at 950 °C, 292 at hammer rate (computed)', () => {
    const { length, width, height, C, low, sticking, at950, hammerRate } = reference.press.worked
    const area = (length * width) / 1e6
    const strain = 0.3
    const stress = (T: number, rate: number) => shida(C, { temperature: kelvin(T), strain, rate })
    const slab = (2 / Math.sqrt(3)) * slabSticking(1, length / height)
    expect(Math.abs((stress(1100, 1) * area) / 1000 / low - 1)).toBeLessThan(0.01)
    expect(Math.abs((stress(1100, 1) * area * slab) / 1000 / sticking - 1)).toBeLessThan(0.01)
    expect(Math.abs((stress(950, 1) * area * slab) / 1000 / at950 - 1)).toBeLessThan(0.01)
    expect(Math.abs((stress(1100, 100) * area * slab) / 1000 / hammerRate - 1)).toBeLessThan(0.01)
    // The room's own answer for that face lies between them.
    const face = { length: length / 1000, width: width / 1000, height: height / 1000, friction: 1 }
    const { value, high } = platenPressure(face)
    expect(value).toBeGreaterThan(1)
    expect(high).toBeLessThanOrEqual(slab * 1.0001)
  })

  it('names only sources of the bibliography', () => {
    const keys = Object.values(reference).flatMap((r) =>
      typeof r === 'object' && 'source' in r ? [r.source] : [],
    )
    expect(keys.filter((key) => !isSourceKey(key))).toEqual([])
  })
})

const bar = { height: 0.04, width: 0.05, length: 0.12 }
const bite = 0.03
const task = (extra: Partial<Task> = {}, temperature = kelvin(1100)): Task => ({
  passes: drawOut(bar, { height: 0.03 }, { bite }).passes,
  metal: { steel: { C: 0.8, Mn: 0.7 }, temperature },
  bite,
  ...extra,
})
const hand: Tool = { kind: 'hand', mass: 1.814, speed: 8 }
const power: Tool = { kind: 'power', mass: 50, speed: 6 }
const press: Tool = { kind: 'press', force: 250e3, speed: 0.03 }

describe('judging a tool', () => {
  it('a 25 ton press and a 50 kg hammer draw a billet that a hand hammer needs many heats for', () => {
    expect(judgeTool(task(), press).verdict).toBe('can do')
    const powered = judgeTool(task(), power)
    expect(powered.verdict).toBe('can do')
    expect(powered.heats).toBe(1)
    const byHand = judgeTool(task({ heatsAllowed: 3 }), hand)
    expect(byHand.heats).toBeGreaterThan(3)
    expect(byHand.verdict).not.toBe('can do')
    expect(byHand.wouldDo.length).toBeGreaterThan(1)
  })

  it('a press too small says what would do it; one too low says the opening', () => {
    const small = judgeTool(task(), { kind: 'press', force: 60e3, speed: 0.03 })
    expect(small.verdict).toBe('cannot')
    expect(small.wouldDo.some((w) => w.includes('bite'))).toBe(true)
    const low = judgeTool(task(), { kind: 'press', force: 1e6, speed: 0.03, opening: 0.03 })
    expect(low.verdict).toBe('cannot')
    expect(low.wouldDo[0]).toContain('opening')
  })

  it('the smith’s datum (HAM1): five blows on an inch square come out under 1 kJ each, weak', () => {
    const { length, side, to, blows } = reference.smith
    const passes = [
      {
        before: { height: side, width: side, length },
        after: { height: to, width: side * 1.2, length: (side * length) / to / 1.2 },
      },
    ]
    const { work } = judgeTool(
      {
        passes,
        metal: { steel: { C: 0.2 }, temperature: kelvin(1150) },
        bite: length,
        whole: true,
      },
      power,
    )
    expect(work.value / blows).toBeGreaterThan(300)
    expect(work.value / blows).toBeLessThan(1200)
  })

  it('a stack on edge needs more than the same stack flat', () => {
    const layers = [
      { composition: { C: 0.84, Mn: 0.8 }, share: 0.5 },
      { composition: { C: 0.4, Cr: 5.2, Mo: 1.3, V: 1 }, share: 0.5 },
    ]
    const force = (lie: 'flat' | 'on edge') =>
      judgeTool(task({ metal: { layers, lie, temperature: kelvin(1100) } }), press).force.value
    expect(force('on edge')).toBeGreaterThan(force('flat'))
  })

  it('force falls with temperature and rises with friction; blows fall with energy; work rises with reduction', () => {
    const unit = fc.double({ min: 0.05, max: 0.95, noNaN: true })
    fc.assert(
      fc.property(unit, unit, unit, (a, b, c) => {
        const warm = kelvin(900 + 280 * a)
        const friction = b * 0.9
        for (const tool of [hand, power, press]) {
          const here = judgeTool(task({ friction }, warm), tool)
          expect(judgeTool(task({ friction }, warm + 20), tool).force.value).toBeLessThan(
            here.force.value,
          )
          expect(
            judgeTool(task({ friction: friction + 0.1 }, warm), tool).force.value,
          ).toBeGreaterThanOrEqual(here.force.value * (1 - 1e-9))
          for (const e of [here.work, here.force, here.blows]) {
            expect(Number.isFinite(e.high)).toBe(true)
            expect(e.low).toBeLessThanOrEqual(e.value)
            expect(e.value).toBeLessThanOrEqual(e.high)
          }
        }
        const heavier = judgeTool(task({ friction }, warm), { ...power, mass: 50 * (1 + c) })
        expect(heavier.blows.value).toBeLessThanOrEqual(
          judgeTool(task({ friction }, warm), power).blows.value,
        )
        const to = 0.036 * (1 - 0.3 * c)
        const deeper = (h: number) =>
          judgeTool(task({ passes: drawOut(bar, { height: h }, { bite }).passes }, warm), power)
            .work.value
        expect(deeper(to * 0.97)).toBeGreaterThan(deeper(to))
      }),
      { seed: 5, numRuns: 40 },
    )
  })

  it('says the size after each heat, ending at the size asked for, and keeps the volume', () => {
    const { heats, afterHeat } = judgeTool(task(), hand)
    expect(heats).toBeGreaterThan(1)
    expect(afterHeat.length).toBe(heats)
    expect(afterHeat.at(-1)!.height).toBeCloseTo(0.03, 12)
    let before = bar.height
    for (const { height, width, length } of afterHeat) {
      expect(height).toBeLessThan(before)
      expect(height * width * length).toBeCloseTo(bar.height * bar.width * bar.length, 12)
      before = height
    }
  })

  it('nothing to do needs nothing, and the ends of every range stay numbers', () => {
    const none = judgeTool(task({ passes: [] }), hand)
    expect([none.work.value, none.blows.value, none.heats]).toEqual([0, 0, 0])
    const flat = { before: bar, after: { ...bar, height: 0.001, length: bar.length * 40 } }
    for (const tool of [hand, power, press])
      for (const T of [600, 1400])
        expect(
          Number.isFinite(judgeTool(task({ passes: [flat] }, kelvin(T)), tool).force.value),
        ).toBe(true)
  })
})
