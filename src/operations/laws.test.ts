import { describe, expect, it } from 'vitest'
import { type Breach, breachesOf, laws } from './laws.ts'
import { operations } from './list.ts'
import type { Operation, Step } from './operation.ts'
import { done, examplesOf } from './trials.ts'

const run = { seed: Number(process.env.LAWS_SEED ?? 1618), runs: 10 }

const told = (breaches: readonly Breach[]) =>
  breaches.map(({ operation, law, what }) => `${operation}, ${law}: ${what}`)

describe(`laws of every operation (seed ${run.seed})`, () => {
  it('has no two operations of one name', () => {
    expect(new Set(operations.map((o) => o.name)).size).toBe(operations.length)
  })

  describe.each(operations.map((o) => [o.name, o] as const))('%s', (_name, operation) => {
    it.each(laws.map((law) => [law.name, law] as const))('%s', (_law, law) => {
      expect(told(breachesOf(operation, run, [law]))).toEqual([])
    })
  })
})

/** The operation as it would be had its author forgotten one loss. */
function forgetting(operation: Operation, cause: string): Operation {
  const without = (step: Step): Step => ({
    ...step,
    losses: step.losses.filter((loss) => loss.cause !== cause),
  })
  return {
    ...operation,
    forward(before, values, smithy) {
      const result = operation.forward(before, values, smithy)
      return result.problems ? result : { ok: without(result.ok) }
    },
  }
}

describe('a forgotten loss is caught by name', () => {
  const each = operations.flatMap((o) => o.loses.map((cause) => [o.name, cause, o] as const))
  it.each(each)('%s without its loss to %s', (name, cause, operation) => {
    const breaches = breachesOf(forgetting(operation, cause), { ...run, runs: 1 })
    const kept = breaches.filter((b) => b.law === 'metal is kept')
    expect(kept[0]?.operation).toBe(name)
    expect(kept[0]?.what).toMatch(/g of .+ is unaccounted for/)
    const said = breaches.map((b) => b.what)
    expect(said).toContain(`loss "${cause}" is declared and no example has it`)
  })

  it('and so are a loss booked twice, an altered bar and a billet out of true', () => {
    const [weld] = operations.filter((o) => o.name === 'weld')
    const spoil = (change: (step: Step) => Step): Operation => ({
      ...weld,
      forward(before, values, smithy) {
        const result = weld.forward(before, values, smithy)
        return result.problems ? result : { ok: change(result.ok) }
      },
    })
    const names = (o: Operation) => breachesOf(o, { ...run, runs: 1 }).map((b) => b.law)
    const twice = spoil((step) => ({ ...step, losses: [...step.losses, ...step.losses] }))
    expect(names(twice)).toContain('metal is kept')
    const untrue = spoil((step) => ({ ...step, after: { ...step.after, worked: 3 } }))
    expect(names(untrue)).toContain('what comes out is a sound billet')
    const altering: Operation = {
      ...weld,
      forward(before, values, smithy) {
        ;(before[0] as { worked: number }).worked = 0.9
        return weld.forward(before, values, smithy)
      },
    }
    expect(names(altering)).toContain('what goes in is not altered')
    const [trial] = examplesOf(weld)
    expect(done(weld, trial).ok).toBeDefined()
  })
})
