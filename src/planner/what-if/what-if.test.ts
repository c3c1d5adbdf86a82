import { describe, expect, it } from 'vitest'
import { readValues } from '#parameters'
import { findPieceKind } from '#piece'
import { usualRates, usualShop } from '#shop'
import type { Smithy } from '#operations'
import { planRoute } from '../plan-route.ts'
import type { Route } from '../route.ts'
import { readSteps } from '../search/head.ts'
import { leversOf, outcomeOf, whatIf, withChange } from './change.ts'
import { sensitivitiesOf, slopeOf } from './sensitivity.ts'

const kind = findPieceKind('bar').ok
const sizes = { length: '300 mm', width: '28 mm', thickness: '9 mm' }
const values = kind && readValues(kind.parameters, sizes).ok?.values
const density = 7850
// With nothing burnt the account of a forged and cropped bar can be written down by hand.
const smithy: Smithy = {
  shop: { ...usualShop(), forgingScale: 0, grindStock: 0.0008, polishStock: 0.0001 },
  densities: { '1095': density },
  piece: kind?.build(values as never).ok,
}
const route: Route = {
  bars: {
    main:
      readSteps(
        [
          { do: 'take bar', steel: '1095', width: '40 mm', height: '20 mm', length: '?' },
          { do: 'draw out', width: '31 mm', height: '12 mm', heats: 3 },
          { do: 'crop', start: '10 mm', end: '8 mm' },
          { do: 'grind to shape', leave: '0.2 mm', stock: '0.5 mm' },
        ],
        'bars.main',
      ).ok ?? [],
  },
  finish: 'main',
  measured: [],
}
const rates = usualRates()
const now = outcomeOf(planRoute(route, smithy).ok as never, smithy, rates)

/** Mass of the steel taken: ρ·w·h·(piece + 2·(leave + stock) + crops), whatever bar it starts from. */
const steel = ({
  w = 0.031,
  h = 0.012,
  start = 0.01,
  end = 0.008,
  leave = 0.0002,
  stock = 0.0005,
}) => density * w * h * (0.3 + 2 * (leave + stock) + start + end)

describe('slopes against the account written down by hand', () => {
  it('the account itself', () => expect(now.steel).toBeCloseTo(steel({}), 9))
  const by = [
    ['draw out', 'width', steel({}) / 0.031],
    ['draw out', 'height', steel({}) / 0.012],
    ['crop', 'start', density * 0.031 * 0.012],
    ['crop', 'end', density * 0.031 * 0.012],
    ['grind to shape', 'stock', 2 * density * 0.031 * 0.012],
    ['grind to shape', 'leave', 2 * density * 0.031 * 0.012],
    // A thicker bar off the rack is cut shorter: the metal stays the same.
    ['take bar', 'height', 0],
  ] as const
  it.each(by)('%s, %s', (step, name, exact) => {
    const at = route.bars.main.find((s) => s.operation.name === step)?.at
    const lever = leversOf(route).find((l) => l.at === at && l.name === name)
    const slope = slopeOf(route, lever as never, smithy, rates, now)
    expect(slope?.steel).toBeCloseTo(exact, Math.abs(exact) > 1 ? 4 : 6)
    expect(slope?.stepsNearby).toBe(false)
  })
  it('the strongest comes first: both sides of the section, one for one', () => {
    const [first, second, ...rest] = sensitivitiesOf(route, smithy, rates)
    expect([first.lever.name, second.lever.name].sort()).toEqual(['height', 'width'])
    expect(first.steelForOnePercent).toBeCloseTo(0.01, 6)
    for (const { steelForOnePercent } of rest)
      expect(Math.abs(steelForOnePercent)).toBeLessThan(0.01)
  })
})

describe('one number changed', () => {
  const lever = leversOf(route).find((l) => l.name === 'start') as never
  it('moves what it must and leaves the route as it was', () => {
    const changed = whatIf(route, lever, 0.02, smithy, rates).ok
    expect(changed?.steel).toBeCloseTo(steel({ start: 0.02 }), 9)
    expect(changed?.mass).toBeCloseTo(now.mass, 12)
    expect(route.bars.main[2].values.start).toBe(0.01)
    expect(withChange(route, lever, 0.02).bars.main[2].values.start).toBe(0.02)
  })
  it('what cannot be is a problem', () => {
    const height = leversOf(route).find((l) => l.name === 'height' && l.at.endsWith('[1]')) as never
    expect(whatIf(route, height, 0.1, smithy, rates).problems).toBeDefined()
  })
})
