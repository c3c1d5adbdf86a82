/**
 * How fast a face is drawn with exact coverage, how it grows with layers and steps, what exactness costs, and the same
 * twist by a general-purpose geometry kernel with the layers as solids. Every time is the best of several runs, every
 * ratio taken in this one run; targets stand beside. Run on a quiet machine: `node bench/pattern.ts`.
 */
import { cpus } from 'node:os'
import Module from 'manifold-3d'
import { type Warp, compile, draw, restack, turn, twist } from '#warp'
import {
  type Crew,
  type Origin,
  drawFace,
  drawFaceNow,
  findSteel,
  moved,
  openCrew,
  stack,
} from '#pattern'
import { type FaceView, faceOfBar, sectionOfBar } from '#view'
import { FACE, STACK, chain, chainOf, readSteel } from './warp-chain.ts'

const weights = [{ dark: 0, bright: 1 }]
const sheets = (count: number, height = STACK) =>
  Array.from({ length: count }, (_, i) => ({
    steel: i % 2 ? 'bright' : 'dark',
    thickness: height / count,
  }))
const worked = (count: number, warps: readonly Warp[]): Origin =>
  moved(stack('main', sheets(count)), warps.toReversed())

function best(runs: number, once: () => void): number {
  let least = Infinity
  for (let k = 0; k < runs; k++) {
    const start = performance.now()
    once()
    least = Math.min(least, performance.now() - start)
  }
  return least
}
function say(what: string, figure: string, target = ''): void {
  console.log(`${what.padEnd(62)} ${figure.padStart(24)}   ${target}`)
}
/** Least-squares slope of log time over log size. */
function exponent(sizes: readonly number[], times: readonly number[]): number {
  const [x, y] = [sizes.map(Math.log), times.map(Math.log)]
  const mean = (v: readonly number[]) => v.reduce((a, b) => a + b, 0) / v.length
  const [mx, my] = [mean(x), mean(y)]
  const across = x.reduce((sum, v, i) => sum + (v - mx) * (y[i]! - my), 0)
  return across / x.reduce((sum, v) => sum + (v - mx) ** 2, 0)
}

/** A face that slants through the bar, side × side pixels. */
function slant(side: number, size = 0.02): FaceView {
  const look = { through: [0.1, 0, 0.0011], out: [0.01, 0.1, 1], up: [0, 1, 0] } as const
  const view = sectionOfBar({ length: 0.2, width: size, height: 0.03 }, look, {
    ppmm: side / (size * 1e3),
  })
  return { ...view, width: Math.min(view.width, side), height: Math.min(view.height, side) }
}

const counts = [
  [45, 5, 3, 3, 1],
  [300, 25, 2, 2, 3],
  [1_200, 25, 4, 3, 4],
  [10_000, 25, 10, 8, 5],
  [100_000, 25, 20, 20, 10],
  [1_500_000, 25, 50, 40, 30],
] as const

async function largeFace(crew: Crew): Promise<void> {
  const view = faceOfBar({ length: 0.2, width: 0.2, height: 0.01 }, 'front', {
    ppmm: 20.48,
    depth: 0.0011,
  })
  const origin = worked(25, chain(2, 2, 3))
  let [least, first, split] = [Infinity, Infinity, 0]
  let alone = Infinity
  for (let k = 0; k < 4; k++) {
    const start = performance.now()
    const map = await drawFace(view, origin, { weights, crew })
    least = Math.min(least, performance.now() - start)
    split = map.splitShare
  }
  for (let k = 0; k < 3; k++) {
    const start = performance.now()
    await drawFace(view, origin, {
      weights,
      crew,
      onCoarse: () => (first = Math.min(first, performance.now() - start)),
    })
  }
  alone = best(2, () => drawFaceNow(view, origin, { weights }))
  say(
    `${view.width} × ${view.height} face, 12 steps, 300 layers, ${crew.hands.length} workers`,
    `${least.toFixed(0)} ms`,
    '≤ 300 ms',
  )
  say(
    '  on one thread; by workers',
    `${alone.toFixed(0)} ms; ${(alone / least).toFixed(2)}×`,
    'P4 ≥ 1.85×',
  )
  say('  pixels split where not smooth', `${(100 * split).toFixed(2)} %`)
  say('  first picture, of 60 000 pixels', `${first.toFixed(1)} ms`, '≤ 30 ms')
}

function growth(): void {
  const view = slant(768)
  const plain = counts.map(([, leaf, a, b, c]) =>
    best(4, () => drawFaceNow(view, worked(leaf, chain(a, b, c)), { weights, fine: 1 })),
  )
  const whole = counts.map(([, leaf, a, b, c]) =>
    best(2, () => drawFaceNow(view, worked(leaf, chain(a, b, c)), { weights })),
  )
  const splits = counts.map(
    ([, leaf, a, b, c]) => drawFaceNow(view, worked(leaf, chain(a, b, c)), { weights }).splitShare,
  )
  counts.forEach(([layers], i) =>
    say(
      `  ${layers} layers, ${view.width}²: unsplit; with joints split`,
      `${plain[i]!.toFixed(0)}; ${whole[i]!.toFixed(0)} ms`,
      `${(100 * splits[i]!).toFixed(1)} % split`,
    ),
  )
  const sizes = counts.map(([layers]) => layers)
  say('P5 exponent against layers, unsplit', exponent(sizes, plain).toFixed(3), '≤ 0.03')
  const steps = [6, 12, 24, 48]
  const times = steps.map((n) =>
    best(4, () => drawFaceNow(view, worked(25, chainOf(n)), { weights, fine: 1 })),
  )
  steps.forEach((n, i) => say(`  ${n} steps`, `${times[i]!.toFixed(0)} ms`))
  say('P5 exponent against steps', exponent(steps, times).toFixed(2), '≤ 1.1')
}

/** Shares of bright steel by points, k × k a pixel, in double precision. */
function sampled(view: FaceView, origin: Origin, k: number): Float64Array {
  const { width, height, pixel, frame } = view
  const result = new Float64Array(width * height)
  for (let j = 0; j < height; j++) {
    const points = [0, 1, 2].map((axis) =>
      Float64Array.from({ length: width * k * k }, (_, s) => {
        const [a, b] = [(s % k) + 0.5, (Math.floor(s / k) % k) + 0.5]
        const [right, up] = [
          (Math.floor(s / (k * k)) + a / k) * pixel,
          (height - j - b / k) * pixel,
        ]
        return frame.origin[axis]! + right * frame.right[axis]! + up * frame.up[axis]!
      }),
    )
    findSteel(origin, { x: points[0]!, y: points[1]!, z: points[2]! }).forEach((f, s) => {
      const at = j * width + Math.floor(s / (k * k))
      if (f?.steel === 'bright') result[at] = result[at]! + 1 / (k * k)
    })
  }
  return result
}

/** Steps that keep every point looked at within the metal, where there is one truth: no lean, no ladder. */
function within(leaf: number, n: number, last: number): Origin {
  const square = (by: number) => draw({ length: by, width: 1, height: 1 / by })
  const steps = [
    square(4),
    restack({ pieces: n, length: 1.2 / n, height: 0.0075 }),
    draw({ length: n / 2, width: 1, height: 2 / n }),
    turn('quarter'),
    twist({ pitch: 0.02 }),
    square(1.5),
    restack({ pieces: n, length: 0.1, height: 0.01, turn: 'over' }),
    square(n),
    restack({ pieces: last, length: 0.1, height: 0.01 }),
    square(last),
  ]
  return moved(stack('main', sheets(leaf, 0.03)), steps.toReversed())
}

function exactness(): void {
  const small = slant(64, 0.004)
  for (const [layers, leaf, n, last] of [
    [45, 5, 3, 1],
    [300, 25, 2, 3],
    [1875, 25, 5, 3],
    [10_000, 50, 10, 2],
  ] as const) {
    const origin = within(leaf, n, last)
    const truth = sampled(small, origin, 32)
    const error = (of: (i: number) => number) => {
      let [square, sum] = [0, 0]
      truth.forEach((t, i) => {
        square += (of(i) - t) ** 2
        sum += of(i) - t
      })
      return { rms: Math.sqrt(square / truth.length), bias: sum / truth.length }
    }
    const map = drawFaceNow(small, origin, { weights })
    const ours = error((i) => map.means[0]![i]! / 65535)
    const others = [1, 4, 8]
      .map((k) => sampled(small, origin, k))
      .map((s) => error((i) => s[i]!).rms)
    say(
      `P8 ${layers} layers: rms (bias) against 32 × 32`,
      `${ours.rms.toFixed(4)} (${(100 * ours.bias).toFixed(3)} %)`,
      `1²: ${others[0]!.toFixed(3)}, 4²: ${others[1]!.toFixed(4)}, 8²: ${others[2]!.toFixed(4)}; ${(100 * map.splitShare).toFixed(1)} % split`,
    )
  }
  const view = slant(1024)
  const warps = chain(2, 2, 3)
  const evaluator = compile(warps, { precision: 'f32', tail: readSteel(25, STACK) })
  const rows = [0, 1, 2].map((k) => evaluator.channel(k))
  const one = best(5, () => {
    for (let j = 0; j < view.height; j++)
      for (let i = 0; i < view.width; i += evaluator.tile) {
        const count = Math.min(evaluator.tile, view.width - i)
        rows.forEach((row, k) => {
          const start =
            view.frame.origin[k]! +
            i * view.pixel * view.frame.right[k]! +
            (view.height - j - 0.5) * view.pixel * view.frame.up[k]!
          const step = view.pixel * view.frame.right[k]!
          for (let p = 0; p < count; p++) row[p] = start + (p + 0.5) * step
        })
        evaluator.run(count)
      }
  })
  const origin = worked(25, warps)
  const unsplit = best(5, () => drawFaceNow(view, origin, { weights, fine: 1 }))
  const whole = best(5, () => drawFaceNow(view, origin, { weights }))
  say(
    'P8 cost against one sample a pixel: unsplit; whole picture',
    `${(unsplit / one).toFixed(2)}×; ${(whole / one).toFixed(2)}×`,
    '≤ 2×',
  )
}

/** One twist of 169 layers of 24 mm: the bright ones as solids refined, warped, sliced and rastered. */
async function solids(): Promise<void> {
  const [layers, bar, length, pitch, z0] = [169, 24, 100, 60, 8]
  const kernel = await Module()
  kernel.setup()
  const view = faceOfBar({ length: length * 1e-3, width: 0.016, height: 0.024 }, 'front', {
    ppmm: 10,
    depth: (bar / 2 - z0) * 1e-3,
  })
  const origin = moved(stack('main', sheets(layers, bar * 1e-3)), [twist({ pitch: pitch * 1e-3 })])
  const truth = drawFaceNow(view, origin, { weights, precision: 'f64' })
  const time = best(5, () => drawFaceNow(view, origin, { weights }))
  for (const edge of [1, 0.5]) {
    const start = performance.now()
    const inside = new Uint8Array(view.width * view.height)
    let triangles = 0
    for (let i = 1; i < layers; i += 2) {
      const t = bar / layers
      const solid = kernel.Manifold.cube([length, bar, t])
        .translate([0, -bar / 2, -bar / 2 + i * t])
        .refineToLength(edge)
        .warp((v) => {
          const turn = (2 * Math.PI * v[0]) / pitch
          const [c, s, y, z] = [Math.cos(turn), Math.sin(turn), v[1], v[2]]
          v[1] = y * c - z * s
          v[2] = y * s + z * c
        })
      triangles += solid.numTri()
      fillLoops(inside, view, solid.slice(z0).toPolygons())
      solid.delete()
    }
    const theirs = performance.now() - start
    let [off, seen] = [0, 0]
    inside.forEach((v, i) => {
      const share = truth.means[0]![i]! / 65535
      // Pixels a boundary crosses are nobody's fault.
      if (share > 0.02 && share < 0.98) return
      seen++
      if (share > 0.5 !== (v === 1)) off++
    })
    say(
      `P7 ${layers} layers as solids, edges ${edge} mm (${(triangles / 1e6).toFixed(1)} M triangles)`,
      `${(theirs / 1e3).toFixed(1)} s: ${(theirs / time).toFixed(0)}×`,
      `≥ 1000× at equal error; ${((100 * off) / seen).toFixed(1)} % of their pixels off; ours ${time.toFixed(1)} ms`,
    )
  }
}

/** Even-odd by scan lines. */
function fillLoops(
  inside: Uint8Array,
  view: FaceView,
  loops: readonly (readonly (readonly number[])[])[],
): void {
  const mm = view.pixel * 1e3
  const half = (view.height * mm) / 2
  for (let j = 0; j < view.height; j++) {
    const y = half - (j + 0.5) * mm
    const cuts: number[] = []
    for (const loop of loops)
      loop.forEach((a, k) => {
        const b = loop[(k + 1) % loop.length]!
        if (a[1]! > y !== b[1]! > y)
          cuts.push(a[0]! + ((b[0]! - a[0]!) * (y - a[1]!)) / (b[1]! - a[1]!))
      })
    cuts.sort((a, b) => a - b)
    for (let k = 0; k + 1 < cuts.length; k += 2)
      inside.fill(
        1,
        j * view.width + Math.max(0, Math.ceil(cuts[k]! / mm - 0.5)),
        j * view.width + Math.min(view.width, Math.ceil(cuts[k + 1]! / mm - 0.5)),
      )
  }
}

console.log(
  `${cpus()[0]!.model}, ${cpus().length} cores, Node ${process.version}; face ${FACE.length * 1e3} mm`,
)
const crew = openCrew()
await largeFace(crew)
crew.close()
growth()
exactness()
await solids()
