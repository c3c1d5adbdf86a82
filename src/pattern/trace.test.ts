import { barrel, drift, draw, restack, roll, sideBySide, turn, twist } from '#warp'
import { describe, expect, it } from 'vitest'
import { findSteel } from './find-steel.ts'
import { type Origin, fuse, moved, stack, stacksOf } from './origin.ts'

const layers = Array.from({ length: 11 }, (_, i) => ({
  steel: i % 2 ? '15N20' : '1095',
  thickness: 0.001,
}))
const bar = stack('main', layers)
const at = (origin: Origin, x: number, y: number, z: number) =>
  findSteel(origin, { x: [x], y: [y], z: [z] })[0]

describe('a point pulled back', () => {
  it('through a twist of 25.4 mm comes to the worked places', () => {
    const twisted = moved(bar, [twist({ pitch: 0.0254 })])
    const found = at(twisted, 0.003, 0.002, 0.0015)!
    expect(found.y).toBeCloseTo(2.48786e-3, 8)
    expect(found.z).toBeCloseTo(-0.24612e-3, 8)
    expect(at(twisted, 0.0127, 0, 0.0015)!.z).toBeCloseTo(-0.0015, 12)
    // −0.24612 mm lies in the middle sheet of eleven of 1 mm, 5.25388 sheets from the bottom.
    expect(found.sheet).toBe(5)
    expect(found.layer).toBeCloseTo(5.25388, 4)
    expect(found.steel).toBe('15N20')
  })

  it('through a barrelled bar comes to the worked place', () => {
    const pressed = moved(bar, [barrel({ height: 0.02, spread: 1.2, bulge: 0.2 })])
    const found = at(pressed, 0, 0.006, 0.005)!
    expect(found.y).toBeCloseTo(4.878e-3, 6)
    expect(found.z).toBeCloseTo(6.45e-3, 8)
  })

  it('goes on in the bar it came from', () => {
    const right = moved(stack('right', layers), [twist({ pitch: 0.02 })])
    const left = moved(stack('left', layers), [twist({ pitch: 0.02, hand: 'left' })])
    const joined = moved([right, left], [sideBySide({ widths: [0.011, 0.011] })], {
      branches: [0, 1],
    })
    const [a, b] = [at(joined, 0.003, -0.004, 0.002)!, at(joined, 0.003, 0.004, 0.002)!]
    expect([a.bar, b.bar]).toEqual(['right', 'left'])
    // Neighbours of opposite hand mirror one another about their seam.
    const phi = (2 * Math.PI * 3) / 20
    const inBar = (y: number, z: number, turn: number) => -y * Math.sin(turn) + z * Math.cos(turn)
    expect(a.z).toBeCloseTo(inBar(0.0015, 0.002, phi), 12)
    expect(b.z).toBeCloseTo(inBar(-0.0015, 0.002, -phi), 12)
    expect(a.z).toBeCloseTo(b.z, 12)
  })

  it('finds the sheets laid in the joints of a restack', () => {
    const sheetBetween = stack('between', [{ steel: 'nickel', thickness: 0.001 }])
    const restacked = moved(
      [bar, sheetBetween],
      [restack({ pieces: 3, length: 0.1, height: 0.011, extra: 0.001 })],
      { branches: [0, 0, 0, 1, 1, 1] },
    )
    // 3 × 11 + 2 × 1 = 35 mm high: joints at 11–12 and 23–24 mm.
    const steels = [0.5, 10.5, 11.5, 12.5, 22.5, 23.5, 24.5].map(
      (mm) => at(restacked, 0.05, 0, (mm - 17.5) * 1e-3)!.steel,
    )
    expect(steels).toEqual(['1095', '1095', 'nickel', '1095', '1095', 'nickel', '1095'])
  })

  it('finds no metal in a drifted hole, and a core in a roll', () => {
    const holed = moved(bar, [drift({ x: 0.05, radius: 0.01 })])
    expect(at(holed, 0.05, 0.009, 0)).toBeUndefined()
    expect(at(holed, 0.05, 0.012, 0)!.y).toBeCloseTo(Math.sqrt(0.012 ** 2 - 0.01 ** 2), 12)
    const rod = stack('rod', [{ steel: 'nickel', thickness: 0.01 }])
    const rolled = moved([bar, rod], [roll({ core: 0.002, thickness: 0.011, width: 0.1 })], {
      below: 1,
    })
    expect(at(rolled, 0.05, 0.001, 0.0005)!.steel).toBe('nickel')
    expect(at(rolled, 0.05, 0.008, 0.001)!.bar).toBe('main')
  })

  it('is read alike by kernels and by the interpreter, to the last bit', () => {
    const worked = moved(bar, [
      turn('quarter'),
      twist({ pitch: 0.03 }),
      draw({ length: 2, width: 0.5, height: 1 }),
    ])
    const points = { x: [0.01, 0.02, 0.3], y: [0.001, -0.002, 0.003], z: [0.002, 0.0004, -0.003] }
    expect(findSteel(worked, points, 'kernels')).toEqual(findSteel(worked, points, 'reference'))
  })
})

describe('a tree of steps', () => {
  it('is drawn together wherever one bar goes through', () => {
    const one = moved(moved(bar, [draw({ length: 2, width: 1, height: 0.5 })]), [turn('quarter')])
    const two = moved([one, one], [turn('over'), sideBySide({ widths: [0.01, 0.01] })], {
      branches: [0, 1],
    })
    const run = fuse(moved(two, [twist({ pitch: 0.1 })]))
    expect(run.warps.map((w) => w.kind)).toEqual(['twist', 'turn', 'side-by-side'])
    if (run.end.kind !== 'split') throw new Error('the run ends where the bars part')
    expect(run.end.ways[0]).toBe(run.end.ways[1])
    expect(run.end.ways[0]!.warps.map((w) => w.kind)).toEqual(['turn', 'draw'])
    expect(stacksOf(two)).toEqual([bar])
  })
})
