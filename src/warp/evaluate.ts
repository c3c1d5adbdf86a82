import { compileKernels } from './kernels.ts'
import type { Precision } from './lower.ts'
import { buildProgram, stepsOf, type ChainOptions, type Program } from './program.ts'
import { interpret, type Machine } from './tiles.ts'
import type { Warp } from './warp.ts'

type Numbers = Float64Array | Float32Array
type Row = Numbers | readonly number[]

/** Points side by side: x[i], y[i], z[i] (m). `rates`: for each direction carried, how x, y, z change along it. */
export interface Points {
  readonly x: Row
  readonly y: Row
  readonly z: Row
  readonly rates?: readonly { readonly x: Row; readonly y: Row; readonly z: Row }[]
}

export interface Places {
  readonly x: Numbers
  readonly y: Numbers
  readonly z: Numbers
  readonly rates: readonly { readonly x: Numbers; readonly y: Numbers; readonly z: Numbers }[]
  /** For each step that joins, cuts or folds: its place in the list of warps, and the branch of every point. */
  readonly branches: readonly { readonly step: number; readonly of: Numbers }[]
  /** What the tail read. */
  readonly outputs: Readonly<Record<string, Numbers>>
}

export interface Evaluator extends Machine {
  /** Pulls any number of points back; the input is not altered. */
  evaluate(points: Points): Places
  /** New numbers and tables of the same structure: compiles nothing. */
  setWarps(warps: readonly Warp[], stages?: Pick<ChainOptions, 'head' | 'tail'>): void
}

export interface CompileOptions extends ChainOptions {
  /** `kernels`: WebAssembly SIMD. `reference`: the interpreter it is held against. */
  readonly engine?: 'kernels' | 'reference'
  readonly tile?: number
}

/**
 * Makes a list of warps, in the order of working, ready to pull points back through all of them, the last step first.
 * 'f32' for the screen; 'f64' (default) for what is counted or exported, equal to the reference bit for bit.
 */
export function compile(warps: readonly Warp[], options: CompileOptions = {}): Evaluator {
  const program = buildProgram(warps, options)
  const make = options.engine === 'reference' ? interpret : compileKernels
  const machine = make(program, stepsOf(warps, options), options.tile)
  return {
    ...machine,
    evaluate: (points) => evaluateOn(machine, points),
    setWarps: (values, stages) => machine.set(stepsOf(values, { ...options, ...stages })),
  }
}

function numbers(precision: Precision, length: number): Numbers {
  return precision === 'f64' ? new Float64Array(length) : new Float32Array(length)
}

function evaluateOn(machine: Machine, points: Points): Places {
  const { program, tile } = machine
  const total = points.x.length
  const result = Array.from({ length: program.channels }, () => numbers(program.precision, total))
  const inputs = inputRows(program, points)
  for (let start = 0; start < total; start += tile) {
    const count = Math.min(tile, total - start)
    inputs.forEach((row, i) => {
      const channel = machine.channel(i)
      if (row === undefined) channel.fill(0, 0, count)
      else if (ArrayBuffer.isView(row)) channel.set(row.subarray(start, start + count))
      else channel.set(row.slice(start, start + count))
    })
    machine.run(count)
    result.forEach((row, i) => row.set(machine.channel(i).subarray(0, count), start))
  }
  return placesOf(program, result)
}

function inputRows(program: Program, points: Points): (Row | undefined)[] {
  const rows: (Row | undefined)[] = [points.x, points.y, points.z]
  for (let d = 0; d < program.directions; d++) {
    const rate = points.rates?.[d]
    rows.push(rate?.x, rate?.y, rate?.z)
  }
  return rows
}

function placesOf(program: Program, channels: readonly Numbers[]): Places {
  const [x, y, z] = channels as [Numbers, Numbers, Numbers]
  return {
    x,
    y,
    z,
    rates: Array.from({ length: program.directions }, (_, d) => ({
      x: channels[3 + 3 * d]!,
      y: channels[4 + 3 * d]!,
      z: channels[5 + 3 * d]!,
    })),
    branches: program.branches.map(({ step, channel }) => ({ step, of: channels[channel]! })),
    outputs: Object.fromEntries(
      program.outputs.map(({ name, channel }) => [name, channels[channel]!]),
    ),
  }
}
