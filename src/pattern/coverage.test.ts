import { draw, restack, turn } from '#warp'
import { describe, expect, it } from 'vitest'
import { meanOff } from '#share'
import { faceOfMesh, sectionOfBar } from '#view'
import { drawBand } from './band.ts'
import { cutsOf } from './joints.ts'
import { moved, stack } from './origin.ts'
import { traceOrigin } from './tracer.ts'

const uneven = [
  { steel: 'dark', thickness: 0.003 },
  { steel: 'bright', thickness: 0.0011 },
  { steel: 'dark', thickness: 0.0007 },
  { steel: 'middle', thickness: 0.002 },
  { steel: 'bright', thickness: 0.0005 },
  { steel: 'dark', thickness: 0.004 },
]
const weights: Record<string, number> = { dark: 0, middle: 0.4, bright: 1 }

describe('what joints leave of a pile', () => {
  it('is found by following the faces of a bar into its restacks', () => {
    const pile = stack('main', uneven)
    const length = 0.1
    const bar = moved(pile, [
      // 10 mm, then 5 mm high before they are stacked: 0.25 and 0.1 mm ground off them.
      restack({ pieces: 2, length, height: 0.005, grind: 0.0001 }),
      draw({ length: 5.8, width: 1, height: 0.005 / 0.029 }),
      restack({ pieces: 3, length, height: 0.01, grind: 0.00025 }),
      draw({ length: 1.13, width: 1, height: 1 / 1.13 }),
    ])
    // Of five joints four are of the first kind; a millimetre off the second is 5.8 of the first.
    const first = 0.00025 * 1.13
    const second = 0.0001 * (0.029 / 0.005) * 1.13
    const off = (4 * first + second) / 5
    const found = cutsOf(bar).get(pile)!
    expect(meanOff(found.low)).toBeCloseTo(off, 6)
    expect(meanOff(found.high)).toBeCloseTo(off, 6)
  })

  it('is none where the sheets stand in the joint', () => {
    const bar = moved(stack('main', uneven), [
      restack({ pieces: 2, length: 0.1, height: 0.01, grind: 0.0003 }),
      turn('quarter'),
    ])
    expect(cutsOf(bar).size).toBe(0)
  })
})

describe('a pixel that joints run through, along its rows', () => {
  it('is the share that is left between them, to a hundredth', () => {
    const [height, grind, pieces] = [0.01, 0.0013, 7]
    const two = ['dark', 'bright'].map((steel) => ({ steel, thickness: height / 2 }))
    const bar = moved(stack('main', two), [restack({ pieces, length: 0.1, height, grind })])
    // Upward from the lower face: outer faces are not ground.
    const edges = [0]
    for (let k = 0; k < pieces; k++) {
      const [low, high] = [k > 0 ? grind : 0, k < pieces - 1 ? grind : 0]
      edges.push(edges.at(-1)! + height / 2 - low, edges.at(-1)! + height - low - high)
    }
    const whole = edges.at(-1)!
    const brightBelow = (z: number) =>
      edges.reduce((sum, from, i) => {
        const to = edges[i + 1] ?? from
        return i % 2 ? sum + Math.max(0, Math.min(z, to) - from) : sum
      }, 0)
    const size = { length: 0.004, width: 0.02, height: whole }
    let most = 0
    for (const ppmm of [0.31, 0.37, 0.43]) {
      const view = sectionOfBar(size, { axis: 'x', at: 0.002 }, { ppmm })
      const tracer = traceOrigin(bar, { precision: 'f64', weights: [weights] })
      const { means, alpha } = drawBand(view, tracer, 0, view.height, { fine: 4 })
      for (let row = 0; row < view.height; row++) {
        const at = row * view.width + (view.width >> 1)
        if (alpha[at]! < 255) continue
        const low = (view.height - 1 - row) * view.pixel
        const share = (brightBelow(low + view.pixel) - brightBelow(low)) / view.pixel
        most = Math.max(most, Math.abs(means[0]![at]! / 65535 - share))
      }
    }
    expect(most).toBeLessThan(0.01)
  })
})

describe('a pixel on a ridge seen along its steep sides', () => {
  it('is the share that both sides show, to a hundredth', () => {
    // A roof 3 mm long and wide, its ridge 60 mm high, within an outer part of its pixel.
    const [ridge, high, sheet] = [0.00169, 0.06, 0.0031]
    const at = [0, 0, 0, 3, 0, 0, 0, 1.69, 60, 3, 1.69, 60, 0, 3, 0, 3, 3, 0]
    const mesh = {
      positions: Float64Array.from(at, (v) => v / 1000),
      triangles: Uint32Array.of(0, 1, 2, 1, 3, 2, 2, 3, 4, 3, 5, 4),
    }
    const sheets = Array.from({ length: 42 }, (_, i) => ({
      steel: i % 2 ? 'bright' : 'dark',
      thickness: sheet,
    }))
    const tracer = traceOrigin(stack('main', sheets), { precision: 'f64', weights: [weights] })
    const view = faceOfMesh(mesh, 'front', { ppmm: 1 })
    const { means } = drawBand(view, tracer, 0, view.height, { fine: 4 })
    // Heights under the pixel's rows, the pile centred on height 0.
    const count = 20_000
    let bright = 0
    for (let i = 0; i < count; i++) {
      const y = 0.001 * (1 + (i + 0.5) / count)
      const out = high * (y < ridge ? y / ridge : (0.003 - y) / (0.003 - ridge))
      if (Math.floor(out / sheet + 21) % 2) bright++
    }
    expect(Math.abs(means[0]![4]! / 65535 - bright / count)).toBeLessThan(0.01)
  })
})

describe('a face', () => {
  it('is the same however it is cut in bands', () => {
    // Joints run along the rows: whichever row is a band's last, its neighbour below is looked at.
    const bar = moved(stack('main', uneven), [
      restack({ pieces: 9, length: 0.1, height: 0.0113, turn: 'over' }),
    ])
    const size = { length: 0.004, width: 0.004, height: 0.1017 }
    const view = sectionOfBar(size, { axis: 'x', at: 0.002 }, { ppmm: 2.3 })
    const tracer = traceOrigin(bar, { precision: 'f32', weights: [weights] })
    const whole = drawBand(view, tracer, 0, view.height, { fine: 4 })
    for (const rows of [1, 3, 16]) {
      const means: number[] = []
      for (let top = 0; top < view.height; top += rows) {
        const bottom = Math.min(view.height, top + rows)
        means.push(...drawBand(view, tracer, top, bottom, { fine: 4 }).means[0]!)
      }
      expect(means).toEqual(Array.from(whole.means[0]!))
    }
  })
})
