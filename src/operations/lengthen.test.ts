import { describe, expect, it } from 'vitest'
import type { Size } from '#geometry'
import { readValues } from '#parameters'
import { densities } from './attempt.ts'
import { usualShop } from '#shop'
import { drawOut } from './draw-out/index.ts'
import { workBack } from './lengthen.ts'
import type { Operation } from './operation.ts'
import { loose, samplePack } from './samples.ts'
import { squareUp } from './square-up/index.ts'
import { weld } from './weld/index.ts'

const smithy = { shop: usualShop(), densities }

function valuesOf(operation: Operation, raw: Readonly<Record<string, unknown>>) {
  const read = readValues(operation.parameters, raw)
  if (read.problems) throw new Error(JSON.stringify(read.problems))
  return read.ok.values
}

const none: Size = { length: 0, width: 0, height: 0 }

describe('working a bar back', () => {
  it('a weld after a turn: the side that gives is the height, and it closes by a share of it', () => {
    // 80 % of 25 mm is 20 mm.
    const before = { ...loose(samplePack(60, 40, 40)), spare: 'z' as const }
    const values = valuesOf(weld, { close: '80 %', heats: 2 })
    const [needed] = workBack(weld, { ...none, height: 0.02 }, values, [before], smithy).ok!
    expect(needed.height * 1000).toBeCloseTo(25, 8)
    expect(needed.length).toBe(before.size.length)
  })

  it('a width that nothing has settled gives on through a draw to a height', () => {
    const before = { ...samplePack(200, 30, 20), spare: 'y' as const }
    const values = valuesOf(drawOut, { height: '12 mm', heats: 2 })
    const demand = { ...none, width: 0.06 }
    const [needed] = workBack(drawOut, demand, values, [before], smithy).ok!
    const bar = { ...samplePack(200, 1000 * needed.width, 20), spare: 'y' as const }
    const { after } = drawOut.forward([bar], values as never, smithy).ok!
    expect(after.size.width * 1000).toBeCloseTo(60, 6)
  })

  it('where a bar short enough cannot be worked so, the least that can is asked for', () => {
    // A square of 30 mm needs 900 mm² of section whatever length is wanted of it.
    const before = { ...samplePack(60, 44, 40), spare: 'z' as const }
    const values = valuesOf(squareUp, { side: '30 mm', heats: 1 })
    const [needed] = workBack(squareUp, { ...none, length: 0.01 }, values, [before], smithy).ok!
    const at = (height: number) =>
      squareUp.forward(
        [{ ...samplePack(60, 44, 1000 * height), spare: 'z' }],
        values as never,
        smithy,
      )
    expect(at(needed.height).problems).toBeUndefined()
    expect(at(needed.height * 0.9999).problems).toBeDefined()
    // The step takes a section a ten-thousandth too small for its square.
    expect(needed.height * 44 * 1.0001).toBeCloseTo(0.9, 6)
    const again = workBack(
      squareUp,
      { ...none, length: 0.01 },
      values,
      [{ ...before, size: needed, volume: needed.length * needed.width * needed.height }],
      smithy,
    ).ok!
    expect(again[0].height).toBe(needed.height)
  })
})
