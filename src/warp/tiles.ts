import type { Node, OpName } from './graph.ts'
import { tableValues, type Group, type Program, type Stage } from './program.ts'

type Numbers = Float64Array | Float32Array

/** A program ready to run over tiles of points: fill the channels, run, read them. */
export interface Machine {
  readonly program: Program
  /** Points in a tile. */
  readonly tile: number
  /** The buffer of a channel: `tile` numbers. */
  channel(index: number): Numbers
  /** New numbers and tables; the structure must be that compiled. */
  set(steps: readonly Stage[]): void
  /** Runs the first `count` points of the tile in place. */
  run(count: number): void
}

/** Where an argument is found: a register of the tile's points, or one number for all of them. */
interface Argument {
  readonly points?: Numbers
  readonly channel?: number
  readonly slot?: number
  readonly constant?: number
}

interface Instruction {
  readonly op: OpName
  readonly to: Numbers
  readonly args: readonly Argument[]
  readonly offset: number
  readonly table: number
}

interface CompiledGroup {
  readonly instructions: readonly Instruction[]
  readonly writes: readonly { readonly channel: number; readonly from: Argument }[]
}

/**
 * The reference: one loop an operation over a tile of points, in double precision; in single precision every operation
 * is done in double and rounded, which for these operations is single precision exactly.
 */
export function interpret(program: Program, steps: readonly Stage[], tile = 512): Machine {
  const make = () => (program.precision === 'f64' ? new Float64Array(tile) : new Float32Array(tile))
  const registers = new Registers(make)
  const groups = program.groups.map((group) => compileGroup(group, registers))
  const channels = Array.from({ length: program.channels }, make)
  const spare = channels.map(make)
  const splats = Array.from({ length: 4 }, make)
  let uniforms: Numbers
  let tables: readonly Numbers[]

  const set = (values: readonly Stage[]) => {
    const single = program.precision === 'f32'
    const numbers = program.uniforms(values)
    uniforms = single ? Float32Array.from(numbers) : numbers
    const all = tableValues(program, values)
    const entries: Numbers = single ? Float32Array.from(all.values) : all.values
    tables = program.tables.map((t, i) =>
      entries.subarray(all.starts[i]!, all.starts[i]! + t.length),
    )
  }
  set(steps)

  const rounded = (value: number) => (program.precision === 'f32' ? Math.fround(value) : value)
  const scalar = (a: Argument) =>
    a.constant !== undefined ? rounded(a.constant) : uniforms[a.slot!]!
  const points = (a: Argument) => a.points ?? channels[a.channel!]!
  const isScalar = (a: Argument) => a.points === undefined && a.channel === undefined
  const spread = (a: Argument, i: number, count: number) =>
    isScalar(a) ? splats[i]!.fill(scalar(a), 0, count) : points(a)

  const runOne = ({ op, to, args, offset, table }: Instruction, count: number) => {
    const [a, b, c, d] = args as [Argument, Argument, Argument, Argument]
    if (op === 'fetch') {
      const [index, entries] = [spread(a, 0, count), tables[table]!]
      for (let i = 0; i < count; i++) to[i] = entries[index[i]! + offset]!
    } else if (op === 'less') {
      const [p, q] = [spread(a, 0, count), spread(b, 1, count)]
      const [s, t] = [spread(c, 2, count), spread(d, 3, count)]
      for (let i = 0; i < count; i++) to[i] = p[i]! < q[i]! ? s[i]! : t[i]!
    } else if (args.length === 1) one(op, to, points(a), count)
    else if (isScalar(b)) withNumber(op, to, points(a), scalar(b), count)
    else if (isScalar(a)) fromNumber(op, to, scalar(a), points(b), count)
    else two(op, to, points(a), points(b), count)
  }

  return {
    program,
    tile,
    channel: (index) => channels[index]!,
    set,
    run(count) {
      for (const { instructions, writes } of groups) {
        for (const instruction of instructions) runOne(instruction, count)
        // First all out of the way, then all in place: a turn swaps channels.
        for (const { channel, from } of writes) {
          if (isScalar(from)) spare[channel]!.fill(scalar(from), 0, count)
          else spare[channel]!.set(points(from).subarray(0, count))
        }
        for (const { channel } of writes) channels[channel]!.set(spare[channel]!.subarray(0, count))
      }
    },
  }
}

function one(op: OpName, to: Numbers, a: Numbers, n: number): void {
  if (op === 'floor') for (let i = 0; i < n; i++) to[i] = Math.floor(a[i]!)
  else if (op === 'abs') for (let i = 0; i < n; i++) to[i] = Math.abs(a[i]!)
  else for (let i = 0; i < n; i++) to[i] = Math.sqrt(a[i]!)
}

function two(op: OpName, to: Numbers, a: Numbers, b: Numbers, n: number): void {
  if (op === 'add') for (let i = 0; i < n; i++) to[i] = a[i]! + b[i]!
  else if (op === 'sub') for (let i = 0; i < n; i++) to[i] = a[i]! - b[i]!
  else if (op === 'mul') for (let i = 0; i < n; i++) to[i] = a[i]! * b[i]!
  else if (op === 'div') for (let i = 0; i < n; i++) to[i] = a[i]! / b[i]!
  else if (op === 'min') for (let i = 0; i < n; i++) to[i] = b[i]! < a[i]! ? b[i]! : a[i]!
  else for (let i = 0; i < n; i++) to[i] = a[i]! < b[i]! ? b[i]! : a[i]!
}

function withNumber(op: OpName, to: Numbers, a: Numbers, b: number, n: number): void {
  if (op === 'add') for (let i = 0; i < n; i++) to[i] = a[i]! + b
  else if (op === 'sub') for (let i = 0; i < n; i++) to[i] = a[i]! - b
  else if (op === 'mul') for (let i = 0; i < n; i++) to[i] = a[i]! * b
  else if (op === 'div') for (let i = 0; i < n; i++) to[i] = a[i]! / b
  else if (op === 'min') for (let i = 0; i < n; i++) to[i] = b < a[i]! ? b : a[i]!
  else for (let i = 0; i < n; i++) to[i] = a[i]! < b ? b : a[i]!
}

function fromNumber(op: OpName, to: Numbers, a: number, b: Numbers, n: number): void {
  if (op === 'add') for (let i = 0; i < n; i++) to[i] = a + b[i]!
  else if (op === 'sub') for (let i = 0; i < n; i++) to[i] = a - b[i]!
  else if (op === 'mul') for (let i = 0; i < n; i++) to[i] = a * b[i]!
  else if (op === 'div') for (let i = 0; i < n; i++) to[i] = a / b[i]!
  else if (op === 'min') for (let i = 0; i < n; i++) to[i] = b[i]! < a ? b[i]! : a
  else for (let i = 0; i < n; i++) to[i] = a < b[i]! ? b[i]! : a
}

/** Tile-long buffers handed out and taken back, so that a long chain works in few. */
class Registers {
  private readonly free: Numbers[] = []
  private readonly make: () => Numbers
  constructor(make: () => Numbers) {
    this.make = make
  }
  take(): Numbers {
    return this.free.pop() ?? this.make()
  }
  giveBack(register: Numbers): void {
    this.free.push(register)
  }
}

function compileGroup(group: Group, registers: Registers): CompiledGroup {
  const lastUse = new Map<Node, number>()
  group.order.forEach((node, i) => node.args.forEach((a) => lastUse.set(a, i)))
  group.writes.forEach(({ node }) => lastUse.set(node, Infinity))
  const held = new Map<Node, Numbers>()
  const argument = (node: Node): Argument => {
    if (node.op === 'const') return { constant: node.at }
    if (node.op === 'input') return { channel: node.at }
    const slot = group.uniforms.get(node)
    return slot === undefined ? { points: held.get(node)! } : { slot }
  }
  const instructions = group.order.map((node, i): Instruction => {
    const args = node.args.map(argument)
    // A register read for the last time may be written by the same operation: element by element.
    for (const a of new Set(node.args)) {
      const register = held.get(a)
      if (register && lastUse.get(a) === i) registers.giveBack(register)
    }
    const to = registers.take()
    held.set(node, to)
    const table = node.op === 'fetch' ? group.tables[node.table]! : -1
    return { op: node.op, to, args, offset: node.at, table }
  })
  const writes = group.writes.map(({ channel, node }) => ({ channel, from: argument(node) }))
  group.writes.forEach(({ node }) => {
    const register = held.get(node)
    if (register) {
      registers.giveBack(register)
      held.delete(node)
    }
  })
  return { instructions, writes }
}
