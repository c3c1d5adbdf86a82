import type { Node, OpName } from './graph.ts'
import { tableValues, type Group, type Program, type Stage } from './program.ts'
import type { Machine } from './tiles.ts'
import * as wasm from './wasm-bytes.ts'

type Bytes = wasm.Bytes

/**
 * SIMD opcodes of the two precisions, and the number to which a whole one is added to find `size` times it in the last
 * digits. Minimum and maximum are the processor's own (pmin, pmax): see Graph.
 */
const OPCODES = {
  f32: { lanes: 4, size: 4, load: 0x5c, lane: 0x56, splat: 0x09, wholes: 2 ** 21 },
  f64: { lanes: 2, size: 8, load: 0x5d, lane: 0x57, splat: 0x0a, wholes: 2 ** 49 },
} as const
const ARITHMETIC: Record<'f32' | 'f64', Partial<Record<OpName, number>>> = {
  f32: {
    floor: 0x68,
    abs: 0xe0,
    sqrt: 0xe3,
    add: 0xe4,
    sub: 0xe5,
    mul: 0xe6,
    div: 0xe7,
    min: 0xea,
    max: 0xeb,
  },
  f64: {
    floor: 0x75,
    abs: 0xec,
    sqrt: 0xef,
    add: 0xf0,
    sub: 0xf1,
    mul: 0xf2,
    div: 0xf3,
    min: 0xf6,
    max: 0xf7,
  },
}
const LESS = { f32: 0x43, f64: 0x49 }
const V128_LOAD = 0x00
const V128_STORE = 0x0b
const SHUFFLE = 0x0d
const BITSELECT = 0x52
const AND = 0x4e
const AND_NOT = 0x4f
const EXTRACT_LANE = 0x1b

/** Where everything lies in the kernels' memory (bytes). */
interface Layout {
  readonly uniforms: number
  /** Constants are kept in memory too: one load each, where the engine takes three steps to make one up. */
  readonly constants: ReadonlyMap<number, number>
  /** A mask of the byte offsets that the longest table has. */
  readonly reach: number
  readonly reachBytes: number
  readonly tables: readonly number[]
  readonly channels: readonly number[]
  readonly end: number
}

const STAGGER = 5 * 64

function layOut(program: Program, tile: number): Layout {
  const { size } = OPCODES[program.precision]
  let at = 64
  const take = (bytes: number) => {
    const start = at
    at += (bytes + 15) & ~15
    return start
  }
  const uniforms = take(program.uniformCount * 16)
  const constants = new Map<number, number>([[OPCODES[program.precision].wholes, take(16)]])
  const reach = take(16)
  const longest = Math.max(1, ...program.tables.map((t) => t.length))
  const reachBytes = 2 ** Math.ceil(Math.log2(longest)) * size
  const keep = (node: Node) => {
    if (node.op === 'const' && !constants.has(node.at)) constants.set(node.at, take(16))
  }
  for (const { order, writes } of program.groups) {
    order.forEach((node) => node.args.forEach(keep))
    writes.forEach(({ node }) => keep(node))
  }
  const tables = program.tables.map((t) => take(t.length * size))
  // A few cache lines apart: channels a whole page from one another would push each other out of the cache.
  const channels = Array.from({ length: program.channels }, () => take(tile * size + STAGGER))
  return { uniforms, constants, reach, reachBytes, tables, channels, end: at + reachBytes + 64 }
}

/** The program as WebAssembly SIMD kernels, a kernel a group, parameters in memory: a slider compiles nothing. */
export function compileKernels(program: Program, steps: readonly Stage[], tile = 1024): Machine {
  const layout = layOut(program, tile)
  const { lanes, size } = OPCODES[program.precision]
  const memory = new WebAssembly.Memory({ initial: Math.ceil(layout.end / 65536) })
  const bytes = encodeKernels(program, layout)
  const instance = new WebAssembly.Instance(new WebAssembly.Module(bytes), { m: { m: memory } })
  const kernels = program.groups.map((_, i) => instance.exports[`f${i}`] as (bytes: number) => void)
  const view = (start: number, length: number) =>
    program.precision === 'f64'
      ? new Float64Array(memory.buffer, start, length)
      : new Float32Array(memory.buffer, start, length)
  const channels = layout.channels.map((start) => view(start, tile))

  new Int32Array(memory.buffer, layout.reach, 4).fill(layout.reachBytes - size)
  for (const [value, at] of layout.constants) view(at, lanes).fill(value)

  const set = (values: readonly Stage[]) => {
    const splat = view(layout.uniforms, program.uniformCount * lanes)
    program.uniforms(values).forEach((value, i) => splat.fill(value, i * lanes, (i + 1) * lanes))
    const tables = tableValues(program, values)
    program.tables.forEach((t, i) => {
      const start = tables.starts[i]!
      view(layout.tables[i]!, t.length).set(tables.values.subarray(start, start + t.length))
    })
  }
  set(steps)
  return {
    program,
    tile,
    channel: (index) => channels[index]!,
    set,
    run(count) {
      // Whole vectors: the points beyond the last are computed and not looked at.
      const length = Math.ceil(count / lanes) * lanes * size
      for (const kernel of kernels) kernel(length)
    },
  }
}

function encodeKernels(program: Program, layout: Layout): Uint8Array<ArrayBuffer> {
  return wasm.encodeModule(
    program.groups.map((group) => new Emitter(program, layout, group).body()),
  )
}

/** Fetches of an entry and the next one, each with its pair: the two are loaded together. */
function pairNeighbours(order: readonly Node[]): Map<Node, readonly [Node, Node]> {
  const pairs = new Map<Node, readonly [Node, Node]>()
  const fetches = order.filter((node) => node.op === 'fetch' && node.args[0]!.op !== 'const')
  for (const first of [...fetches].sort((a, b) => a.at - b.at)) {
    const next = fetches.find(
      (f) => f.table === first.table && f.args[0] === first.args[0] && f.at === first.at + 1,
    )
    if (!next || pairs.has(first) || pairs.has(next)) continue
    pairs.set(first, [first, next]).set(next, [first, next])
  }
  return pairs
}

const LENGTH = 0
const OFFSET = 1
const FIRST_LANE = 2

/** One kernel: a loop over the tile, 16 bytes at a time. Local 0 is its length in bytes, 1 the place, then indices. */
class Emitter {
  private readonly program: Program
  private readonly layout: Layout
  private readonly group: Group
  private readonly uses = new Map<Node, number>()
  /** A fetch's index as whole numbers: the first of its lanes' locals. */
  private readonly indices = new Map<Node, number>()
  private readonly locals = new Map<Node, number>()
  private readonly steady = new Map<number, number>()
  private vectors = 0
  private integers = 1
  private readonly code: Bytes = []

  constructor(program: Program, layout: Layout, group: Group) {
    this.program = program
    this.layout = layout
    this.group = group
  }

  body(): wasm.FunctionBody {
    const { order, writes, reads } = this.group
    const count = (node: Node) => this.uses.set(node, (this.uses.get(node) ?? 0) + 1)
    order.forEach((node) => node.args.forEach(count))
    writes.forEach(({ node }) => count(node))
    const { lanes } = OPCODES[this.program.precision]
    for (const node of order)
      if (node.op === 'fetch' && node.args[0]!.op !== 'const' && !this.indices.has(node.args[0]!)) {
        this.indices.set(node.args[0]!, FIRST_LANE + this.indices.size * lanes)
      }
    this.integers += this.indices.size * lanes
    for (const channel of reads) {
      const node = this.group.graph.input(channel)
      this.emit(wasm.localGet(OFFSET))
      this.emit(wasm.simd(V128_LOAD, ...wasm.memoryAt(4, this.layout.channels[channel]!)))
      this.emit(wasm.localSet(this.local(node)))
      if (this.indices.has(node)) this.toWhole(node)
    }
    for (const node of this.indices.keys())
      if (node.uniform) {
        this.value(node)
        this.emit(wasm.localSet(this.local(node)))
        this.toWhole(node)
      }
    const pairs = pairNeighbours(order)
    // Shared parts go to locals in order; the rest is computed where it is used.
    for (const node of order) {
      const pair = pairs.get(node)
      if (pair) {
        if (!this.locals.has(node)) this.fetchPair(...pair)
        continue
      }
      const shared = this.uses.get(node)! > 1 || this.indices.has(node)
      if (!shared) continue
      this.expand(node)
      this.emit(wasm.localSet(this.local(node)))
      if (this.indices.has(node)) this.toWhole(node)
    }
    for (const { channel, node } of writes) {
      this.emit(wasm.localGet(OFFSET))
      this.value(node)
      this.emit(wasm.simd(V128_STORE, ...wasm.memoryAt(4, this.layout.channels[channel]!)))
    }
    const tail: Bytes = [
      ...wasm.localGet(OFFSET),
      ...wasm.i32Const(16),
      0x6a,
      ...wasm.localTee(OFFSET),
      ...wasm.localGet(LENGTH),
      ...[0x49, 0x0d, 0x00, 0x0b],
    ]
    const head = [...this.steady].flatMap(([at, local]) => [
      ...wasm.i32Const(0),
      ...wasm.simd(V128_LOAD, ...wasm.memoryAt(4, at)),
      ...wasm.localSet(local),
    ])
    const loop: Bytes = [0x03, 0x40]
    return {
      locals: [
        { count: this.integers, type: wasm.I32 },
        { count: this.vectors, type: wasm.V128 },
      ],
      code: [...head, ...loop, ...this.code, ...tail],
    }
  }

  private emit(bytes: Bytes): void {
    for (const byte of bytes) this.code.push(byte)
  }
  private local(node: Node): number {
    const seen = this.locals.get(node)
    if (seen !== undefined) return seen
    const index = 1 + this.integers + this.vectors++
    this.locals.set(node, index)
    return index
  }

  /** The whole-number byte offsets of an index, one local a lane. */
  private toWhole(node: Node): void {
    const codes = OPCODES[this.program.precision]
    const first = this.indices.get(node)!
    this.emit(wasm.localGet(this.local(node)))
    this.constant(codes.wholes)
    this.emit(wasm.simd(ARITHMETIC[this.program.precision].add!))
    // Kept within the tables' reach whatever the number was: a kernel never reads outside its memory.
    this.loaded(this.layout.reach)
    this.emit(wasm.simd(AND))
    const stride = codes.size / 4
    for (let lane = 0; lane < codes.lanes; lane++) {
      this.emit(lane === 0 ? wasm.localTee(this.scratch()) : wasm.localGet(this.scratch()))
      this.emit(wasm.simd(EXTRACT_LANE, lane * stride))
      this.emit(wasm.localSet(first + lane))
    }
  }
  private scratchLocal = -1
  private scratch(): number {
    if (this.scratchLocal < 0) this.scratchLocal = 1 + this.integers + this.vectors++
    return this.scratchLocal
  }

  private value(node: Node): void {
    const local = this.locals.get(node)
    if (local !== undefined) this.emit(wasm.localGet(local))
    else if (node.op === 'const') this.constant(node.at)
    else if (node.uniform) this.loaded(this.layout.uniforms + this.group.uniforms.get(node)! * 16)
    else this.expand(node)
  }

  private constant(value: number): void {
    this.loaded(this.layout.constants.get(value)!)
  }

  /** A vector that is the same all through, loaded once before the loop. */
  private loaded(at: number): void {
    let local = this.steady.get(at)
    if (local === undefined) {
      local = 1 + this.integers + this.vectors++
      this.steady.set(at, local)
    }
    this.emit(wasm.localGet(local))
  }

  private expand(node: Node): void {
    const precision = this.program.precision
    if (node.op === 'fetch') return this.fetch(node)
    if (node.op === 'less') return this.choose(node)
    node.args.forEach((arg) => this.value(arg))
    this.emit(wasm.simd(ARITHMETIC[precision][node.op]!))
  }

  private choose(node: Node): void {
    const [a, b, then, otherwise] = node.args as [Node, Node, Node, Node]
    const compare = () => {
      this.value(a)
      this.value(b)
      this.emit(wasm.simd(LESS[this.program.precision]))
    }
    const zero = (side: Node) => side.op === 'const' && Object.is(side.at, 0)
    if (zero(then) || zero(otherwise)) {
      this.value(zero(then) ? otherwise : then)
      compare()
      return this.emit(wasm.simd(zero(then) ? AND_NOT : AND))
    }
    this.value(then)
    this.value(otherwise)
    compare()
    this.emit(wasm.simd(BITSELECT))
  }

  /** Two neighbouring entries for each lane in one load a lane, then sorted into first and second. */
  private fetchPair(first: Node, second: Node): void {
    const { lanes, size } = OPCODES[this.program.precision]
    const table = this.layout.tables[this.group.tables[first.table]!]! + first.at * size
    const lane = this.indices.get(first.args[0]!)!
    const halves = [this.local(first), this.local(second)] as const
    halves.forEach((half, k) => {
      this.emit(wasm.localGet(lane + (k * lanes) / 2))
      if (lanes === 2) this.emit(wasm.simd(V128_LOAD, ...wasm.memoryAt(3, table)))
      else {
        this.emit(wasm.simd(OPCODES.f64.load, ...wasm.memoryAt(2, table)))
        this.emit(wasm.localSet(half))
        this.emit(wasm.localGet(lane + k * 2 + 1))
        this.emit(wasm.localGet(half))
        this.emit(wasm.simd(OPCODES.f64.lane, ...wasm.memoryAt(2, table), 1))
      }
      this.emit(wasm.localSet(half))
    })
    for (const which of [0, 1]) {
      halves.forEach((half) => this.emit(wasm.localGet(half)))
      const picked = Array.from({ length: 16 }, (_, b) => {
        const entry = Math.floor(b / size)
        return entry * 2 * size + which * size + (b % size)
      })
      this.emit(wasm.simd(SHUFFLE, ...picked))
    }
    this.emit(wasm.localSet(halves[1]))
    this.emit(wasm.localSet(halves[0]))
  }

  private fetch(node: Node): void {
    const codes = OPCODES[this.program.precision]
    const table = this.layout.tables[this.group.tables[node.table]!]! + node.at * codes.size
    const index = node.args[0]!
    if (index.op === 'const') {
      this.emit(wasm.i32Const(0))
      return this.emit(wasm.simd(codes.splat, ...wasm.memoryAt(2, table)))
    }
    const first = this.indices.get(index)!
    for (let lane = 0; lane < codes.lanes; lane++) {
      // Address below, vector above on the stack: the vector so far waits in the scratch local.
      if (lane === 0) {
        this.emit(wasm.localGet(first))
        this.emit(wasm.simd(codes.load, ...wasm.memoryAt(2, table)))
      } else {
        this.emit(wasm.localSet(this.scratch()))
        this.emit(wasm.localGet(first + lane))
        this.emit(wasm.localGet(this.scratch()))
        this.emit(wasm.simd(codes.lane, ...wasm.memoryAt(2, table), lane))
      }
    }
  }
}
