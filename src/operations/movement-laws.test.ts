import { describe, expect, it } from 'vitest'
import { operations } from './list.ts'
import { movedExamples, movementLaws } from './movement-laws.ts'

describe('laws of every movement', () => {
  describe.each(operations.map((o) => [o.name, o] as const))('%s', (_name, operation) => {
    const all = movedExamples(operation)
    it.each(movementLaws.map((law) => [law.name, law] as const))('%s', (_law, law) => {
      const breaches = all.flatMap((moved) => law.find(moved).map((b) => `${moved.told}: ${b}`))
      expect(breaches).toEqual([])
    })
  })
})
