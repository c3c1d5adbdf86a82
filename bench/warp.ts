/**
 * How fast a face is pulled back through a chain of twelve operations, and how it grows. Every figure is the best of
 * several runs; targets stand beside ratios taken in this one run. Run on a quiet machine: `node bench/warp.ts`.
 */
import { Worker, isMainThread, parentPort, workerData } from 'node:worker_threads'
import { compile, type Evaluator, type TailStage, type Warp } from '#warp'
import { buildProgram, stepsOf } from '../src/warp/program.ts'
import { FACE, STACK, chain, chainOf, faceRamp, faceRow, readSteel } from './warp-chain.ts'
import { closures } from './warp-closures.ts'
import { runHalide } from './warp-halide.ts'
import { runNative } from './warp-native.ts'

const SIDE = 2048
const BAND = 64
const RAMP = faceRamp(SIDE)
const RAMP32 = Float32Array.from(RAMP)
const SHEETS = 25
type Counts = readonly [sheets: number, n1: number, n2: number, n3: number]

/** Fills the rows of the face into `out` and returns the milliseconds it took. */
function drawRows(
  evaluator: Evaluator,
  out: Float32Array | Float64Array,
  from: number,
  to: number,
): number {
  const line = evaluator.program.precision === 'f32' ? RAMP32 : RAMP
  const [x, y, z] = [0, 1, 2].map((c) => evaluator.channel(c)) as [
    Float32Array,
    Float32Array,
    Float32Array,
  ]
  const steel = evaluator.channel(evaluator.program.outputs[0]!.channel)
  const tile = Math.min(evaluator.tile, SIDE)
  const start = performance.now()
  for (let row = from; row < to; row++) {
    const at = faceRow(row, SIDE)
    for (let column = 0; column < SIDE; column += tile) {
      x.set(line.subarray(column, column + tile))
      y.fill(at.y)
      z.fill(at.z)
      evaluator.run(tile)
      out.set(steel, row * SIDE + column)
    }
  }
  return performance.now() - start
}

function pictureOf(evaluator: Evaluator) {
  const points = SIDE * SIDE
  return evaluator.program.precision === 'f32' ? new Float32Array(points) : new Float64Array(points)
}
function best(runs: number, once: () => number): number {
  return Math.min(...Array.from({ length: runs }, once))
}
/** Each band of rows at its best of several runs, and their sum: what the machine does besides falls out. */
function inBands(runs: number, draw: (from: number, to: number) => number): number {
  const bands = new Array<number>(SIDE / BAND).fill(Infinity)
  for (let k = 0; k < runs; k++)
    bands.forEach((least, i) => {
      bands[i] = Math.min(least, draw(i * BAND, (i + 1) * BAND))
    })
  return bands.reduce((a, b) => a + b, 0)
}
function time(evaluator: Evaluator, runs = 9): { milliseconds: number; out: ArrayLike<number> } {
  const out = pictureOf(evaluator)
  return { milliseconds: inBands(runs, (from, to) => drawRows(evaluator, out, from, to)), out }
}
const make = (
  [sheets, n1, n2, n3]: Counts,
  precision: 'f32' | 'f64',
  engine: 'kernels' | 'reference' = 'kernels',
) => compile(chain(n1, n2, n3), { precision, engine, tail: readSteel(sheets, STACK) })

function print(label: string, value: string, target = ''): void {
  console.log(`${label.padEnd(58)}${value.padStart(22)}${target && `   target ${target}`}`)
}
const ratio = (a: number, b: number | undefined) =>
  b === undefined ? 'not installed' : `${(a / b).toFixed(2)}×`
const ms = (t: number | undefined) => (t === undefined ? 'not installed' : `${t.toFixed(1)} ms`)

function slope(points: readonly (readonly [number, number])[]): number {
  const logs = points.map(([a, b]) => [Math.log(a), Math.log(b)] as const)
  const mean = (i: 0 | 1) => logs.reduce((sum, p) => sum + p[i], 0) / logs.length
  const [mx, my] = [mean(0), mean(1)]
  const top = logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0)
  return top / logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0)
}

async function onThreads(threads: number): Promise<number> {
  const shared = new SharedArrayBuffer(SIDE * SIDE * 4)
  const workers = Array.from(
    { length: threads },
    (_, i) => new Worker(new URL(import.meta.url), { workerData: { shared, i, threads } }),
  )
  const round = (message: string) =>
    Promise.all(
      workers.map(
        (w) =>
          new Promise((done) => {
            w.once('message', done)
            w.postMessage(message)
          }),
      ),
    )
  await round('warm')
  let least = Infinity
  for (let k = 0; k < 40; k++) {
    const start = performance.now()
    await round('draw')
    least = Math.min(least, performance.now() - start)
  }
  await Promise.all(workers.map((w) => w.terminate()))
  return least
}

function workAsThread(): void {
  const { shared, i, threads } = workerData as {
    shared: SharedArrayBuffer
    i: number
    threads: number
  }
  const evaluator = make([SHEETS, 2, 2, 3], 'f32')
  const out = new Float32Array(shared)
  parentPort!.on('message', (message: string) => {
    const [from, to] = [i, i + 1].map((k) => Math.round((SIDE * k) / threads)) as [number, number]
    for (let k = 0; k < (message === 'warm' ? 5 : 1); k++) drawRows(evaluator, out, from, to)
    parentPort!.postMessage('done')
  })
}

function different(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let count = 0
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) count++
  return count / a.length
}

function editTime(): number {
  const tail = readSteel(SHEETS, STACK)
  let turns = 0
  return best(40, () => {
    turns++
    const warps: Warp[] = [...chain(2, 2, 3)]
    // A different structure each time: nothing can be kept from before but the kinds themselves.
    warps.splice(turns % 11, 1, warps[(turns * 5) % 12]!)
    const start = performance.now()
    const evaluator = compile(warps, { precision: 'f32', tail })
    evaluator.run(4)
    return performance.now() - start
  })
}

async function main(): Promise<void> {
  const counts: Counts = [SHEETS, 2, 2, 3]
  const warps = chain(2, 2, 3)
  const tail: TailStage = readSteel(SHEETS, STACK)
  const face = { columns: SIDE, rows: SIDE, band: BAND, tile: 1024, repeats: 12, ...FACE }
  const native = (compiler: string, flags: readonly string[]) => {
    const builds = [1, 40, 56].map((groupSize) => {
      const options = { precision: 'f32', tail, groupSize } as const
      const program = buildProgram(warps, options)
      return runNative(
        { name: '', compiler, flags, precision: 'f32' },
        program,
        stepsOf(warps, options),
        face,
      )
    })
    const times = builds.flatMap((b) => (b ? [b.milliseconds] : []))
    return times.length > 0 ? Math.min(...times) : undefined
  }
  const least = (...all: (number | undefined)[]) => {
    const found = all.filter((t) => t !== undefined)
    return found.length > 0 ? Math.min(...found) : undefined
  }

  console.log(`${SIDE} × ${SIDE} points, 12 operations, 300 layers; best of several runs\n`)
  const single = make(counts, 'f32')
  const double = make(counts, 'f64')
  const reference = make(counts, 'f64', 'reference')
  const f32 = time(single, 15)
  const narrow = ['-msse4.1', '-ffp-contract=off']
  const wide = ['-march=native', '-mprefer-vector-width=512', '-ffp-contract=fast']
  const [gcc128, clang128] = [native('gcc', narrow), native('clang-14', narrow)]
  const [gcc512, clang512] = [native('gcc', wide), native('clang-14', wide)]
  const again = time(single, 15)
  const ours = Math.min(f32.milliseconds, again.milliseconds)
  const whole = buildProgram(warps, { precision: 'f32', tail, groupSize: Infinity })
  const halide = runHalide(whole, stepsOf(warps, { tail }), face)
  print('WebAssembly f32x4', `${ms(ours)} ${((SIDE * SIDE) / ours / 1e3).toFixed(0)} Mpt/s`)
  print('C, 128 bits: gcc / clang', `${ms(gcc128)} / ${ms(clang128)}`)
  print('C, AVX-512: gcc / clang', `${ms(gcc512)} / ${ms(clang512)}`)
  print('P1  against the best C at 128 bits', ratio(ours, least(gcc128, clang128)), '≤ 1.0×')
  print('P1  against the best C with AVX-512', ratio(ours, least(gcc512, clang512)), '≤ 3.5×')
  print(
    'P2  against the Halide JIT, one thread',
    `${ms(halide?.milliseconds)} ${ratio(ours, halide?.milliseconds)}`,
    '≤ 1.25×',
  )

  const f64 = time(double, 7)
  const tiles = time(reference, 3)
  const point = closures(warps, SHEETS, STACK)
  const picture = new Float32Array(SIDE * SIDE)
  const objects = inBands(3, (from, to) => {
    const start = performance.now()
    for (let row = from; row < to; row++) {
      const at = faceRow(row, SIDE)
      for (let i = 0; i < SIDE; i++) picture[row * SIDE + i] = point({ x: RAMP[i]!, ...at })
    }
    return performance.now() - start
  })
  print('WebAssembly f64x2', ms(f64.milliseconds))
  print(
    'P3  tile reference against f32x4',
    `${ms(tiles.milliseconds)} ${ratio(tiles.milliseconds, ours)}`,
    '≥ 10×',
  )
  print('P3  closures on objects against f32x4', `${ms(objects)} ${ratio(objects, ours)}`, '≥ 40×')

  const [one, two] = [await onThreads(1), await onThreads(2)]
  print('P4  two threads against one', `${ms(one)} / ${ms(two)} ${ratio(one, two)}`, '≥ 1.85×')

  print('P6  f64 kernels against the reference, points', `${different(f64.out, tiles.out)}`, '0')
  const layers: Counts[] = [
    [5, 1, 3, 3],
    [25, 2, 2, 3],
    [25, 2, 4, 5],
    [25, 8, 5, 10],
    [25, 20, 20, 10],
    [30, 50, 50, 20],
  ]
  const growth = layers.map((c): [number, number] => {
    const picture = time(make(c, 'f32'), 7)
    const exact = time(make(c, 'f64'), 1)
    const count = c.reduce((a, b) => a * b, 1)
    const share = different(picture.out, exact.out).toExponential(1)
    const target = count === 300 ? '≤ 2e-5' : count === 10_000 ? '≤ 3e-4' : ''
    print(
      `P6  steel differs f32 / f64, ${count} layers`,
      `${ms(picture.milliseconds)} ${share}`,
      target,
    )
    return [count, picture.milliseconds]
  })
  print('P5  time against layers, 45 → 1 500 000: exponent', slope(growth).toFixed(3), '≤ 0.03')
  const lengths = [12, 24, 36, 48].map((count): [number, number] => {
    const evaluator = compile(chainOf(count), { precision: 'f32', tail })
    return [count, time(evaluator, 7).milliseconds]
  })
  print('    12, 24, 36, 48 operations', lengths.map(([, t]) => t.toFixed(0)).join(' / ') + ' ms')
  print('P5  time against operations, 12 → 48: exponent', slope(lengths).toFixed(3), '≤ 1.1')
  const [plain, footprints] = ([0, 2] as const).map((directions) => {
    const evaluator = compile(warps, { precision: 'f32', directions })
    return best(400, () => {
      const start = performance.now()
      for (let k = 0; k < 20; k++) evaluator.run(evaluator.tile)
      return performance.now() - start
    })
  }) as [number, number]
  print('    footprints (two directions) against plain points', ratio(footprints, plain), '≤ 2×')
  print(
    'P11 structural edit → first tile from new kernels',
    `${editTime().toFixed(2)} ms`,
    '≤ 3 ms',
  )
}

if (isMainThread) await main()
else workAsThread()
