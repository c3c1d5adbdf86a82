import { differentiator } from './differentiate.ts'
import { Graph, doArithmetic, type Node } from './graph.ts'
import { warpKind } from './kinds.ts'
import { lower, type Precision } from './lower.ts'
import type { Place, Settings, TableEntries, Warp } from './warp.ts'

/** Arithmetic of the caller's own set before or after the warps: a face's points made from its rows, steel read off. */
export interface Stage {
  readonly form?: string
  readonly numbers?: Readonly<Record<string, number>>
  readonly tables?: Readonly<Record<string, TableEntries>>
}
/** Makes the place from the three inputs, before any warp. */
export interface HeadStage extends Stage {
  pull(g: Graph, inputs: Place, at: Settings): Place
}
/** Reads results off the place reached. `rates` gives any node's derivatives along the directions carried. */
export interface TailStage extends Stage {
  readonly outputs: readonly string[]
  read(
    g: Graph,
    place: Place,
    at: Settings,
    rates: (node: Node) => readonly Node[],
  ): readonly Node[]
}

export interface ChainOptions {
  readonly precision?: Precision
  /** Directions carried along: 0 none, 2 a pixel's footprint, 3 the whole Jacobian. */
  readonly directions?: 0 | 1 | 2 | 3
  /** The forward map instead: from before to after, the first step first. Only for kinds with a closed form. */
  readonly forward?: boolean
  readonly head?: HeadStage
  readonly tail?: TailStage
  /** Plain operations a kernel holds before the next one is begun; 1: a kernel a step; Infinity: one kernel. */
  readonly groupSize?: number
}

/** One kernel: reads channels, writes channels. Channels 0–2: x, y, z; then three for each direction; then branches. */
export interface Group {
  readonly graph: Graph
  readonly reads: readonly number[]
  readonly writes: readonly { readonly channel: number; readonly node: Node }[]
  /** The nodes to compute for each point, in order. */
  readonly order: readonly Node[]
  /** Slot, in the program's uniforms, of each node that is the same for all points. */
  readonly uniforms: ReadonlyMap<Node, number>
  /** The program's number of each of the graph's tables. */
  readonly tables: readonly number[]
}

export interface ProgramTable {
  readonly length: number
  /** Whether the arithmetic asked for the length: another length is another program then. */
  readonly counted?: boolean
  /** Whose it is; absent for tables the arithmetic fixes. */
  readonly from?: { readonly step: number; readonly name: string }
  readonly values?: readonly number[]
}

export interface Program {
  readonly precision: Precision
  readonly directions: number
  readonly groups: readonly Group[]
  readonly channels: number
  /** Which step (place in the list of warps) each branch channel belongs to, and its channel. */
  readonly branches: readonly { readonly step: number; readonly channel: number }[]
  readonly outputs: readonly { readonly name: string; readonly channel: number }[]
  readonly uniformCount: number
  readonly tables: readonly ProgramTable[]
  /** Structure of the steps: equal strings may share compiled kernels. */
  readonly structure: string
  /** Whether these steps are the very same arithmetic; lengths of tables that it does not ask for may differ. */
  fits(steps: readonly Stage[]): boolean
  /** The uniforms' values for steps of this structure. */
  uniforms(steps: readonly Stage[]): Float64Array
}

/** Measured best: a kernel that carries derivatives shares more within itself, and reads and writes more channels. */
const GROUP_SIZE = { plain: 28, withDerivatives: 100 }
const stepSizes = new Map<string, number>()

export function structureOf(step: Stage): string {
  const tables = Object.entries(step.tables ?? {}).map(([name, t]) => `${name}${t.length}`)
  return `${(step as Partial<Warp>).kind ?? ''} ${step.form ?? ''} ${tables.join(' ')}`
}

/** The steps whose numbers a program is given, in the order it numbers them: the warps, then head, then tail. */
export function stepsOf(warps: readonly Warp[], options: ChainOptions): readonly Stage[] {
  return [...warps, options.head ?? {}, options.tail ?? {}]
}

interface Move {
  readonly step: number
  apply(g: Graph, place: Place, at: Settings): Place
  readonly branches: boolean
}

function movesOf(warps: readonly Warp[], options: ChainOptions): Move[] {
  const moves = warps.map((warp, step): Move => {
    const kind = warpKind(warp.kind)
    const apply = options.forward ? kind.push?.bind(kind) : kind.pull.bind(kind)
    if (!apply) throw new Error(`${warp.kind} has no forward map in closed form`)
    return { step, apply, branches: kind.branches && !options.forward }
  })
  if (!options.forward) moves.reverse()
  const head = options.head
  if (head) moves.unshift({ step: warps.length, apply: head.pull.bind(head), branches: false })
  return moves
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] }

/** Numbers and tables of the steps as slots. */
class Slots {
  readonly parameters: { step: number; name: string }[] = []
  readonly tables: Mutable<ProgramTable>[] = []
  private readonly parameterAt = new Map<string, number>()
  private readonly tableAt = new Map<string, number>()

  private readonly steps: readonly Stage[]

  constructor(steps: readonly Stage[]) {
    this.steps = steps
  }

  settings(g: Graph, step: number): Settings {
    const stage = this.steps[step]!
    return {
      form: stage.form ?? '',
      number: (name) => {
        if (stage.numbers?.[name] === undefined) throw new Error(`${name} is not among the numbers`)
        const key = `${step} ${name}`
        const slot = this.parameterAt.get(key) ?? this.parameters.push({ step, name }) - 1
        this.parameterAt.set(key, slot)
        return g.parameter(slot)
      },
      table: (name) => {
        const length = stage.tables?.[name]?.length
        if (length === undefined) throw new Error(`${name} is not among the tables`)
        const key = `${step} ${name}`
        const slot = this.tableAt.get(key) ?? this.tables.push({ length, from: { step, name } }) - 1
        this.tableAt.set(key, slot)
        const kept = this.tables[slot]!
        return {
          table: g.table(slot, length),
          get length() {
            kept.counted = true
            return length
          },
        }
      },
    }
  }
  fixed(values: readonly number[]): number {
    const seen = this.tables.findIndex((t) => t.values === values)
    return seen >= 0 ? seen : this.tables.push({ length: values.length, values }) - 1
  }
}

/** Plain operations the step takes for a point, derivatives aside. */
function stepSize(move: Move, steps: readonly Stage[], options: ChainOptions): number {
  const precision = options.precision ?? 'f64'
  const key = `${precision} ${options.forward} ${structureOf(steps[move.step]!)}`
  const seen = stepSizes.get(key)
  if (seen !== undefined && move.step < steps.length - 2) return seen
  const g = new Graph()
  const slots = new Slots(steps)
  const place = { x: g.input(0), y: g.input(1), z: g.input(2), branch: g.input(3) }
  const to = move.apply(g, place, slots.settings(g, move.step))
  const low = lower(g, [to.x, to.y, to.z], precision)
  const size = computed(low.outputs).length
  stepSizes.set(key, size)
  return size
}

/** The nodes a result needs that differ from point to point, in order. */
function computed(outputs: readonly Node[]): Node[] {
  const found = new Set<Node>()
  const visit = (node: Node) => {
    if (node.uniform || node.op === 'input' || found.has(node)) return
    node.args.forEach(visit)
    found.add(node)
  }
  outputs.forEach(visit)
  return [...found]
}

export function buildProgram(warps: readonly Warp[], options: ChainOptions = {}): Program {
  const { precision = 'f64', tail } = options
  const directions = options.forward ? 0 : (options.directions ?? 0)
  const best = directions > 0 ? GROUP_SIZE.withDerivatives : GROUP_SIZE.plain
  const groupSize = options.groupSize ?? best
  const steps = stepsOf(warps, options)
  const slots = new Slots(steps)
  const moves = movesOf(warps, options)
  const branches: { step: number; channel: number }[] = []
  const firstBranch = 3 + 3 * directions
  // The forward map reads the branch the pull gave; it takes the first channel after x, y, z.
  for (const { step } of moves.filter((m) => m.branches))
    branches.push({ step, channel: firstBranch + branches.length })
  const outputs = (tail?.outputs ?? []).map((name, i) => ({
    name,
    channel: firstBranch + branches.length + i,
  }))

  const uniformNodes: { node: Node }[] = []
  const groups: Group[] = []
  let waiting: Move[] = []
  let size = 0

  const close = (last: boolean) => {
    const g = new Graph()
    const inputs = Array.from({ length: firstBranch }, (_, i) => g.input(i))
    const [x, y, z] = inputs as [Node, Node, Node]
    const seeds = new Map(
      [x, y, z].map((node, side) => [
        node,
        Array.from({ length: directions }, (_, d) => inputs[3 + 3 * d + side]!),
      ]),
    )
    const rates = differentiator(g, seeds, directions)
    let place: Place = options.forward ? { x, y, z, branch: g.input(3) } : { x, y, z }
    const writes: { channel: number; node: Node }[] = []
    for (const move of waiting) {
      place = move.apply(g, place, slots.settings(g, move.step))
      const branch = branches.find((b) => b.step === move.step)
      if (branch && place.branch) writes.push({ channel: branch.channel, node: place.branch })
    }
    if (last && tail) {
      const read = tail.read(g, place, slots.settings(g, warps.length + 1), rates)
      outputs.forEach(({ channel }, i) => writes.push({ channel, node: read[i]! }))
    }
    // With a tail, what it reads is the result: the place itself is not written.
    const sides = last && tail ? [] : [place.x, place.y, place.z]
    sides.forEach((node, side) => {
      writes.push({ channel: side, node })
      rates(node).forEach((r, d) => writes.push({ channel: 3 + 3 * d + side, node: r }))
    })
    groups.push(finish(g, writes, precision, slots, uniformNodes))
    waiting = []
    size = 0
  }

  for (const move of moves) {
    const more = stepSize(move, steps, options) * (1 + directions)
    if (waiting.length > 0 && size + more > groupSize) close(false)
    waiting.push(move)
    size += more
  }
  close(true)

  return {
    precision,
    directions,
    groups,
    channels: firstBranch + (options.forward ? 1 : branches.length + outputs.length),
    branches,
    outputs,
    uniformCount: uniformNodes.length,
    tables: slots.tables,
    structure: steps.map(structureOf).join('; '),
    fits: (others) => fits(steps, slots.tables, others),
    uniforms: (values) => evaluateUniforms(uniformNodes, slots.parameters, values),
  }
}

function finish(
  g: Graph,
  writes: readonly { channel: number; node: Node }[],
  precision: Precision,
  slots: Slots,
  uniformNodes: { node: Node }[],
): Group {
  const low = lower(
    g,
    writes.map((w) => w.node),
    precision,
  )
  const order = computed(low.outputs)
  const uniforms = new Map<Node, number>()
  const reads = new Set<number>()
  const use = (node: Node) => {
    if (node.op === 'input') reads.add(node.at)
    else if (node.uniform && node.op !== 'const' && !uniforms.has(node))
      uniforms.set(node, uniformNodes.push({ node }) - 1)
  }
  order.forEach((node) => node.args.forEach(use))
  low.outputs.forEach(use)
  return {
    graph: low.graph,
    reads: [...reads].sort((a, b) => a - b),
    // A channel written as it was read needs no writing.
    writes: low.outputs
      .map((node, i) => ({ channel: writes[i]!.channel, node }))
      .filter(({ channel, node }) => !(node.op === 'input' && node.at === channel)),
    order,
    uniforms,
    tables: low.graph.tables.map((t) => (t.values ? slots.fixed(t.values) : t.slot)),
  }
}

function evaluateUniforms(
  wanted: readonly { node: Node }[],
  parameters: readonly { step: number; name: string }[],
  steps: readonly Stage[],
): Float64Array {
  const known = new Map<Node, number>()
  const value = (node: Node): number => {
    const seen = known.get(node)
    if (seen !== undefined) return seen
    const found = compute(node)
    known.set(node, found)
    return found
  }
  const compute = (node: Node): number => {
    if (node.op === 'const') return node.at
    if (node.op === 'param') {
      const { step, name } = parameters[node.at]!
      return steps[step]!.numbers![name]!
    }
    const [a, b, c, d] = node.args.map(value)
    return doArithmetic(node.op, a!, b ?? 0, c ?? 0, d ?? 0)
  }
  return Float64Array.from(wanted, ({ node }) => value(node))
}

function fits(
  own: readonly Stage[],
  tables: readonly ProgramTable[],
  others: readonly Stage[],
): boolean {
  const kindOf = (step: Stage) => `${(step as Partial<Warp>).kind ?? ''} ${step.form ?? ''}`
  return (
    own.length === others.length &&
    own.every((step, i) => kindOf(step) === kindOf(others[i]!)) &&
    tables.every((table) => !table.counted || entriesOf(table, others).length === table.length)
  )
}

/** A table's own entries, as these steps have them. */
export function entriesOf({ values, from }: ProgramTable, steps: readonly Stage[]): TableEntries {
  return values ?? steps[from!.step]!.tables![from!.name]!
}

/** Where each table begins when those of these steps lie end to end. */
export function tableStarts(program: Program, steps: readonly Stage[]): number[] {
  let end = 0
  return program.tables.map((table) => {
    const start = end
    end += entriesOf(table, steps).length
    return start
  })
}

/** The tables' values, end to end, and where each begins. */
export function tableValues(program: Program, steps: readonly Stage[]) {
  const starts = tableStarts(program, steps)
  const entries = program.tables.map((table) => entriesOf(table, steps))
  const values = new Float64Array(entries.reduce((sum, { length }) => sum + length, 0))
  entries.forEach((own, i) => values.set(own, starts[i]))
  return { values, starts }
}
