import { describe, expect, it } from 'vitest'
import { volumesOf } from '#billet'
import { attempt, coldFire, lostTo, mass, stepOf } from '../attempt.ts'
import { grindToShape } from '../grind-to-shape/index.ts'
import { withSpare, workBack } from '../lengthen.ts'
import { buildPiece } from '../sample-pieces.ts'
import { samplePack } from '../samples.ts'
import { usualShop } from '#shop'
import { densities } from '../attempt.ts'
import { forgeToShape } from './index.ts'

const knife = buildPiece({ kind: 'hidden-tang-knife' })

describe('forging to shape', () => {
  it('holds the piece and its skin: volume + surface × stock with the bevels forged', () => {
    const bar = samplePack(120, 32, 9, 61)
    const { after } = stepOf(forgeToShape, { bevels: 'forged', stock: '0.5 mm' }, bar, {
      piece: knife,
      shop: coldFire,
    })
    expect(after.volume).toBeCloseTo(knife.volume + knife.surface * 5e-4, 12)
    expect(after.size.height).toBeCloseTo(knife.size.height + 1e-3, 12)
    // With the bevels left it is fuller, but no fuller than its box.
    const left = stepOf(forgeToShape, { stock: '0.5 mm' }, bar, {
      piece: knife,
      shop: coldFire,
    }).after
    expect(left.volume).toBeGreaterThan(after.volume * 1.1)
    expect(left.volume).toBeLessThan(left.size.length * left.size.width * left.size.height)
  })

  it('worked back gives the shortest bar that does not run out', () => {
    const bar = samplePack(300, 32, 9, 61)
    const smithy = { shop: usualShop(), densities, piece: knife }
    const values = { bevels: 'left' }
    const [size] = workBack(forgeToShape, knife.size, values, [bar], smithy).ok ?? []
    const exact = stepOf(forgeToShape, {}, withSpare(bar, size.length), { piece: knife })
    expect(exact.setAside).toEqual([])
    expect(lostTo(exact, 'crop') / mass(bar)).toBeLessThan(1e-9)
    const short = attempt(forgeToShape, {}, withSpare(bar, size.length - 1e-4), { piece: knife })
    expect(short.problems?.[0].what).toMatch(/runs out before the piece does/)
  })

  it('forged bevels keep the core’s share; ground ones cut the jacket away', () => {
    // San mai 3 : 3 : 3 of one core. Ground flat to an edge, the jacket goes; forged, all thins alike.
    const layers = ['15N20', '1084', '15N20'].map((steel) => ({ steel, thickness: 3e-3 }))
    const bar = {
      ...samplePack(200, 34, 9),
      build: { form: 'layered' as const, axis: 'z' as const, layers, laid: 3 },
    }
    const core = (raw: object) => {
      const forged = stepOf(forgeToShape, { ...raw, stock: '0.2 mm' } as never, bar, {
        piece: knife,
        shop: coldFire,
      })
      const ground = stepOf(grindToShape, { leave: '0 mm' }, forged.after, { piece: knife })
      return volumesOf(ground.after)['1084'] / ground.after.volume
    }
    // The skin of 0.2 mm goes off both faces of every thickness: a third becomes a little more.
    expect(core({ bevels: 'forged' })).toBeGreaterThan(1 / 3)
    expect(core({ bevels: 'forged' })).toBeLessThan(0.45)
    expect(core({})).toBeGreaterThan(core({ bevels: 'forged' }) + 0.03)
  })

  it('is not gathered out of a bar too thin', () => {
    expect(
      attempt(forgeToShape, {}, samplePack(900, 20, 3, 9), { piece: knife, shop: coldFire })
        .problems?.[0].what,
    ).toMatch(/too thin in section/)
    expect(attempt(forgeToShape, {}, samplePack()).problems?.[0].what).toMatch(/no piece to forge/)
  })
})
