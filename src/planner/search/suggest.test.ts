import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readValues } from '#parameters'
import { findPieceKind } from '#piece'
import { densityOf, grades } from '#steel'
import { readShop, usualRates, usualShop } from '#shop'
import type { Smithy } from '#operations'
import { planRoute } from '../plan-route.ts'
import type { Route } from '../route.ts'
import { headsOf, readSteps, withHead } from './head.ts'
import { stepsOf } from './recipe.ts'
import { type Suggestions, measures, suggestRoutes } from './suggest.ts'

/** The plate of the gallery, read without the job room: the planner stands below it. */
function plate(): { route: Route; smithy: Smithy } {
  const job = JSON.parse(readFileSync('jobs/builders-plate.json', 'utf8'))
  const { kind: name, ...sizes } = job.piece
  const kind = findPieceKind(name).ok
  const values = kind && readValues(kind.parameters, sizes).ok?.values
  const piece = kind?.build(values as never).ok
  const bars = Object.fromEntries(
    Object.entries(job.bars as Record<string, Record<string, unknown>[]>).map(([bar, steps]) => [
      bar,
      readSteps(steps, `bars.${bar}`).ok ?? [],
    ]),
  )
  const densities = Object.fromEntries(grades.map((g) => [g.name, densityOf(g).value]))
  return {
    route: { bars, finish: 'plate', measured: [] },
    smithy: { shop: readShop(job.shop).ok?.values ?? usualShop(), densities, piece },
  }
}

const { route, smithy } = plate()
const rates = usualRates()
const wished = { lines: 1200, sheets: 15 }
let kept: Suggestions | undefined
const found = () => (kept ??= suggestRoutes(route, smithy, rates, wished).ok as Suggestions)

describe('the plate: 1.2 lines per mm over 140 mm from stacks of 15 sheets or fewer', () => {
  it('holds 15 → ×3 → ×4, 169 layers, and three other recipes at least', () => {
    const names = found().routes.map((r) => r.name)
    expect(names).toContain('15 → ×3 → ×4')
    expect(found().routes.find((r) => r.name === '15 → ×3 → ×4')?.figures.layers).toBe(169)
    expect(new Set(names).size).toBe(names.length)
    expect(names.length).toBeGreaterThanOrEqual(4)
  })

  it('keeps to the wishes in the full account', () => {
    for (const { plan, figures } of found().routes) {
      const sheets = plan.steps[0].step.taken.reduce((sum, s) => sum + s.count, 0)
      expect(sheets).toBeLessThanOrEqual(15)
      expect(Math.abs((figures.lines as number) / 1200 - 1)).toBeLessThanOrEqual(0.12)
    }
  })

  it('shows no route that another is better than in everything', () => {
    const worth = found().routes.map((r) =>
      measures.map(({ of, better }) => (better === 'less' ? of(r) : -of(r))),
    )
    for (const a of worth)
      for (const b of worth)
        expect(a !== b && a.every((v, k) => v <= b[k]) && a.some((v, k) => v < b[k])).toBe(false)
  })

  it('each works out again from its own steps to the same figures', () => {
    const head = headsOf(route)[0]
    for (const { steps, plan } of found().routes) {
      if (!steps) continue
      const read = readSteps(steps, '').ok ?? []
      const again = planRoute(
        withHead(route, head, () => read),
        smithy,
      ).ok
      expect(again?.solved[0].value).toBeCloseTo(plan.solved[0].value, 12)
    }
  })

  it('is the same every time', () => {
    const again = suggestRoutes(route, smithy, rates, wished).ok
    expect(again?.routes.map((r) => [r.name, r.figures])).toEqual(
      found().routes.map((r) => [r.name, r.figures]),
    )
  })

  it('stops when it is told to', () => {
    const signal = AbortSignal.abort()
    expect(() => suggestRoutes(route, smithy, rates, wished, { signal })).toThrow()
  })
})

describe('wishes that cannot be had together', () => {
  const ask = (wanted: object) => suggestRoutes(route, smithy, rates, { lines: 1200, ...wanted })

  it('names a wish that cannot be had at all, and what could', () => {
    const { problems } = ask({ heats: 5 })
    expect(problems).toHaveLength(1)
    expect(problems?.[0].what).toBe('at most 5 heats cannot be had')
    expect(problems?.[0].try[0]).toMatch(/^allow \d+ heats$/)
  })

  it('names the fewest that clash: give up any one of them and there is a way', () => {
    const wanted = { sheets: 7, steel: 1.2 }
    const [problem] = ask(wanted).problems ?? []
    expect(problem.what).toBe(
      '1.2 per mm on the face, at most 7 sheets and at most 1.2 kg of steel cannot be had together',
    )
    expect(problem.try).toHaveLength(3)
    const sheets = Number(/lay (\d+) sheets/.exec(problem.try.join(' '))?.[1])
    const steel = Number(/take ([\d.]+) kg/.exec(problem.try.join(' '))?.[1])
    // Each cure is taken at its word: with it, and all other wishes kept, there is a way.
    expect(ask({ ...wanted, sheets }).ok?.routes.length).toBeGreaterThan(0)
    expect(ask({ ...wanted, steel: steel * 1.01 }).ok?.routes.length).toBeGreaterThan(0)
  })
})

describe('recipes as steps', () => {
  it('the route as written is its own recipe', () => {
    const [head] = headsOf(route)
    expect(head.own?.restacks.map((r) => r.pieces)).toEqual([3, 4])
    expect(head.own?.sheets).toBe(15)
    const steps = stepsOf(head.own as NonNullable<typeof head.own>, head.style)
    const again = readSteps(steps, 'bars.plate').ok
    expect(again?.map((s) => s.operation.name)).toEqual(
      route.bars.plate.slice(0, head.length).map((s) => s.operation.name),
    )
    const both = [route, withHead(route, head, () => again ?? [])].map(
      (r) => planRoute(r, smithy).ok,
    )
    expect(both[1]?.solved[0].value).toBeCloseTo(both[0]?.solved[0].value as number, 9)
  })
})
