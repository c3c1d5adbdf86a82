import { sheet } from './sheet/index.ts'
import type { Warp } from './warp.ts'

/** Mulberry32. */
function seeded(seed: number): () => number {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

const WAVES = 24
/** Cells to the dominant wavelength. */
const FINENESS = 8

/**
 * The unevenness of hammer and hand: thickness errs by `amplitude` (rms, as a share), over about `wavelength` (the bite
 * or the hammer's face), and the layers' mid-height wanders by `wander` (rms, m; by default half the thickness error).
 * By hand 1–4 %, under flat dies 0.5–1.5 %, 10–40 mm: common practice, no source. The metal moved sideways is moved, so
 * volume is kept exactly. The same seed gives the same bar. Sizes are the bar's after.
 */
export function uneven(given: {
  seed: number
  length: number
  width: number
  height: number
  amplitude: number
  wavelength: number
  wander?: number
}): Warp {
  const { seed, length, width, height, amplitude, wavelength } = given
  const { wander = (amplitude * height) / 2 } = given
  const next = seeded(seed)
  const waves = Array.from({ length: WAVES }, () => {
    const k = (2 * Math.PI) / (wavelength * (0.7 + 0.8 * next()))
    const angle = 2 * Math.PI * next()
    return {
      kx: k * Math.cos(angle),
      ky: k * Math.sin(angle),
      k,
      phase: 2 * Math.PI * next(),
      other: 2 * Math.PI * next(),
    }
  })
  const each = Math.sqrt(2 / WAVES)
  const cell = wavelength / FINENESS
  const columns = Math.ceil(length / cell) + 2
  const rows = Math.ceil(width / cell) + 2
  // A spline coefficient stands half a cell before its number.
  const field = (f: (x: number, y: number) => number) =>
    Array.from({ length: columns * rows }, (_, i) =>
      f(((i % columns) - 0.5) * cell, (Math.floor(i / columns) - 0.5) * cell - width / 2),
    )
  const sum = (x: number, y: number, part: (w: (typeof waves)[number], angle: number) => number) =>
    waves.reduce((total, w) => total + part(w, w.kx * x + w.ky * y), 0) * each
  return sheet({
    x: 0,
    y: -width / 2,
    cellX: cell,
    cellY: cell,
    columns,
    along: field((x, y) =>
      sum(x, y, (w, a) => (amplitude * w.kx * Math.cos(a + w.phase)) / (w.k * w.k)),
    ),
    across: field((x, y) =>
      sum(x, y, (w, a) => (amplitude * w.ky * Math.cos(a + w.phase)) / (w.k * w.k)),
    ),
    middle: field((x, y) => sum(x, y, (w, a) => wander * Math.sin(a + w.other))),
  })
}
