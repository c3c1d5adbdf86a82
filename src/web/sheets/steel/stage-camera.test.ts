import { beforeAll, afterAll, describe, expect, it, vi } from 'vitest'
import { StageCamera } from './stage-camera.ts'

/** A bar of 200 × 40 × 4 mm in a picture of 444 × 244 px, which has a clear rim of 22 px. */
const BAR = { low: [0, -0.02, -0.002], high: [0.2, 0.02, 0.002] } as const
const X = [1, 0, 0] as const

beforeAll(() => {
  vi.stubGlobal('cancelAnimationFrame', () => undefined)
  // What the eye would do a moment later must not come when another test has the floor.
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
})
afterAll(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

function looking(): StageCamera {
  const camera = new StageCamera(() => undefined)
  camera.resize(444, 244)
  camera.setBox(BAR)
  camera.goTo('face', true)
  return camera
}

describe('where the eye stands', () => {
  it('has all that is left of cut metal in the middle, as large as it may be', () => {
    const camera = looking()
    expect(camera.pixel).toBeCloseTo(0.2 / 400, 12)
    camera.setCut({ out: X, at: 0.15 }, true)
    expect(camera.middle[0]).toBeCloseTo(0.075, 12)
    expect(camera.pixel).toBeCloseTo(0.15 / 400, 12)
    camera.setCut({ out: [0, -1, 0], at: 0.01 }, true)
    camera.fit()
    expect(camera.middle[1]).toBeCloseTo(0.005, 12)
  })

  it('stands as it stood when the cut is taken away', () => {
    const camera = looking()
    camera.showCut(X, true)
    camera.setCut({ out: X, at: 0.1 }, true)
    expect(camera.view).toBeUndefined()
    camera.hideCut(true)
    camera.setCut(undefined, true)
    expect([camera.view, camera.pose.out]).toEqual(['face', [0, 0, 1]])
    expect(camera.pixel).toBeCloseTo(0.2 / 400, 12)
    expect(camera.middle[0]).toBeCloseTo(0.1, 12)
  })

  it('leaves alone what was turned or brought near by hand', () => {
    const camera = looking()
    camera.showCut(X, true)
    camera.turn(30, 0)
    camera.zoom(4)
    const { pose, pixel } = camera
    camera.hideCut(true)
    camera.setCut(undefined, true)
    expect([camera.pose, camera.pixel]).toEqual([pose, pixel])
  })
})
