import { describe, expect, it } from 'vitest'
import { type Movement, input } from '#movement'
import { type Warp, draw, shift, turn } from '#warp'
import { operations } from './list.ts'
import { movedExamples, movementLaws } from './movement-laws.ts'
import type { Operation } from './operation.ts'

describe('laws of every movement', () => {
  describe.each(operations.map((o) => [o.name, o] as const))('%s', (_name, operation) => {
    const all = movedExamples(operation)
    it.each(movementLaws.map((law) => [law.name, law] as const))('%s', (_law, law) => {
      const breaches = all.flatMap((moved) => law.find(moved).map((b) => `${moved.told}: ${b}`))
      expect(breaches).toEqual([])
    })
  })
})

/** What the laws say of an operation whose movement has been spoilt. */
function spoilt(name: string, spoil: (movement: Movement) => Movement): string[] {
  const operation = operations.find((o) => o.name === name)
  if (!operation) throw new Error(`no operation is called ${name}`)
  const worse: Operation = {
    ...operation,
    movement: (...given) => spoil(operation.movement(...given)),
  }
  const all = movedExamples(worse)
  return movementLaws.filter((law) => all.some((m) => law.find(m).length > 0)).map((l) => l.name)
}

describe('a wrong movement is caught by name', () => {
  it('one that stretches, one that slides, one upside down, one that leads nowhere', () => {
    const after = (warp: Warp) => (m: Movement) => ({ ...m, warps: [...m.warps, warp] })
    const stretched = draw({ length: 1, width: 1, height: 0.999 })
    expect(spoilt('draw out', after(stretched))).toContain('shaping keeps volume')
    expect(spoilt('draw out', after(shift({ x: 1e-3 })))).toContain(
      'metal comes from inside the bar before',
    )
    expect(spoilt('restack', after(turn('over')))).toContain(
      'flat layers lie where the account has them',
    )
    const first = (m: Movement): Movement => ({ ...m, branches: m.branches?.map(() => input(0)) })
    expect(spoilt('lay side by side', first)).toContain('every branch leads to a bar that went in')
    expect(spoilt('clad', first)).toContain('the picture holds the steels of the account')
  })
})
