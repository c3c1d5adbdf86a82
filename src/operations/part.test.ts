import { isDeepStrictEqual } from 'node:util'
import { describe, expect, it } from 'vitest'
import { breachesOf, laws } from './laws.ts'
import { operations } from './list.ts'
import { movedExamples, movementLaws } from './movement-laws.ts'
import type { Operation } from './operation.ts'
import { partOf } from './part.ts'
import { done, examplesOf } from './trials.ts'

const gradual = operations.filter((operation) => operation.gradual)

/** Laws of a step as it is whole: how it is worked back and what force it asks is never asked of a part. */
const kept = laws.filter(({ name }) =>
  ['metal is kept', 'what comes out is a sound billet', 'movement says where metal came from'].some(
    (law) => law === name,
  ),
)
const run = { seed: 1618, runs: 1 }
/** Shares of volume are then good to about 1 %. */
const POINTS = 1500

/** Every example done to a share: the bar before, the step, and what its movement is made of. */
function doneTo(operation: Operation, share: number) {
  return examplesOf(operation).map((trial) => {
    const part = partOf(operation, share)
    const step = done(part, trial)
    if (!step.ok) throw new Error(`${operation.name}, ${trial.told}: ${step.problems[0].what}`)
    const { before, values, smithy } = trial
    const movement = part.movement(before, values as never, step.ok.after, smithy)
    return { before: before[0], step: step.ok, movement }
  })
}

/** What is not as it must be of an operation that says it is gradual. */
function faultsOf(operation: Operation): string[] {
  const whole = examplesOf(operation).map((trial) => {
    const { ok: step } = done(operation, trial)
    const { before, values, smithy } = trial
    return step && [step, operation.movement(before, values as never, step.after, smithy)]
  })
  const [few, half, all] = [1e-4, 0.5, 1].map((share) => doneTo(operation, share))
  const faults = all.flatMap(({ step, movement }, i) =>
    isDeepStrictEqual([step, movement], whole[i]) ? [] : ['all of it is not the whole step'],
  )
  for (const [i, { before, step }] of few.entries()) {
    const { after } = step
    const off = Math.abs(after.volume / before.volume - 1)
    if (off > 1e-3) faults.push(`example ${i + 1}: ${off} of the metal goes at once`)
    // What is cut or round is first brought to the section it is worked in.
    if (before.shape === 'rectangle')
      for (const side of ['length', 'width', 'height'] as const) {
        const by = Math.abs(after.size[side] / before.size[side] - 1)
        if (by > 5e-3) faults.push(`example ${i + 1}: its ${side} changes by ${by} at once`)
      }
    const [then, end] = [half[i].step.after.volume, all[i].step.after.volume]
    if (then > after.volume || then < end)
      faults.push(
        `example ${i + 1}: metal comes back on the way (${after.volume}, ${then}, ${end})`,
      )
    if (then === end && isDeepStrictEqual(half[i].movement, all[i].movement))
      faults.push(`example ${i + 1}: half of it is all of it`)
  }
  return faults
}

describe('an operation done bit by bit', () => {
  it.each(gradual.map((o) => [o.name, o] as const))(
    '%s begins at the bar as it lay and ends at the whole step',
    (_name, operation) => {
      expect(faultsOf(operation)).toEqual([])
    },
  )

  it.each(gradual.map((o) => [o.name, o] as const))(
    '%s keeps its metal on the way, and picture and account agree',
    (_name, operation) => {
      const part = partOf(operation, 0.4)
      expect(breachesOf(part, run, kept)).toEqual([])
      const moved = movedExamples(part, POINTS)
      expect(moved.length).toBeGreaterThan(0)
      const breaches = moved.flatMap((m) =>
        movementLaws.flatMap((law) => law.find(m).map((b) => `${law.name}, ${m.told}: ${b}`)),
      )
      expect(breaches).toEqual([])
    },
  )

  it('is found out where it goes all the way at once, or moves other metal than it counts', () => {
    const named = (name: string) => operations.find((o) => o.name === name) as Operation
    const drawOut = named('draw out')
    const heedless: Operation = {
      ...drawOut,
      forward: (before, values, smithy) => drawOut.forward(before, values, smithy),
    }
    expect(faultsOf(heedless).join('; ')).toMatch(/its height changes by 0\.6\d* at once/)
    const still: Operation = {
      ...drawOut,
      movement: (before, values, after, smithy) => drawOut.movement(before, values, after, smithy),
    }
    const found = movedExamples(partOf(still, 0.4), POINTS).flatMap((m) =>
      movementLaws.filter((law) => law.find(m).length > 0).map((law) => law.name),
    )
    expect(found).toContain('metal comes from inside the bar before')
  })
})
