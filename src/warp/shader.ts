import type { Node } from './graph.ts'
import {
  buildProgram,
  entriesOf,
  stepsOf,
  tableStarts,
  type ChainOptions,
  type Stage,
} from './program.ts'
import type { Warp } from './warp.ts'

/** Width of the texture that holds the tables, in entries. */
const TABLE_WIDTH = 1024

export interface ShaderText {
  /**
   * GLSL ES 3.00: declarations and `void pullBack(…)`, or by another `name` (all of its globals begin with it, so that
   * a tree's bars each have their own). Its parameters are, all `inout float`: x, y, z, then rates x, y, z for each
   * direction; then, all `out float`: a branch for each step that has one, then the tail's outputs. Needs `precision
   * highp float; precision highp sampler2D;` before it.
   */
  readonly text: string
  /** Width of the tables' texture, in entries. */
  readonly tableWidth: number
  /** Names of the function's parameters in order. */
  readonly parameters: readonly string[]
  /** Whether these warps are told in this very text, by other numbers and tables. */
  fits(warps: readonly Warp[], stages?: Pick<ChainOptions, 'head' | 'tail'>): boolean
  /**
   * Values for `uniform vec4 pullBackNumbers[…]` (gl.uniform4fv); a slider changes these and nothing else. `from`: where
   * the chain's tables begin in a texture they share with others.
   */
  numbers(
    warps: readonly Warp[],
    stages?: Pick<ChainOptions, 'head' | 'tail'>,
    from?: number,
  ): Float32Array<ArrayBuffer>
  /** Values for `uniform sampler2D pullBackTables`: R32F, `tableWidth` wide; empty where there are no tables. */
  tables(
    warps: readonly Warp[],
    stages?: Pick<ChainOptions, 'head' | 'tail'>,
  ): Float32Array<ArrayBuffer>
}

export function shaderText(
  warps: readonly Warp[],
  options: Omit<ChainOptions, 'precision' | 'groupSize'> & {
    readonly name?: string
    /** A texture declared elsewhere, which holds the tables of others too. */
    readonly sampler?: string
  } = {},
): ShaderText {
  const program = buildProgram(warps, { ...options, precision: 'f32', groupSize: Infinity })
  const group = program.groups[0]!
  const name = options.name ?? 'pullBack'
  const { sampler = `${name}Tables` } = options
  const names = channelNames(program.channels, program.directions, program.branches.length)
  program.outputs.forEach(({ name, channel }) => (names[channel] = name))
  const firstOut = 3 + 3 * program.directions

  const number = (slot: number) => `${name}Numbers[${slot >> 2}].${'xyzw'[slot & 3]!}`
  const values = new Map<Node, string>()
  const value = (node: Node): string => {
    if (node.op === 'const') return literal(node.at)
    if (node.op === 'input') return names[node.at]!
    const slot = group.uniforms.get(node)
    return slot === undefined ? values.get(node)! : number(slot)
  }
  const lines = group.order.map((node, i) => {
    const local = `t${i}`
    const args = node.args.map(value)
    values.set(node, local)
    if (node.op !== 'fetch') return `  float ${local} = ${expression(node, args)};`
    // Where a table begins is a number too: one a little longer needs no other text.
    const start = number(program.uniformCount + group.tables[node.table]!)
    return `  float ${local} = ${name}Table(int(${args[0]!}) + int(${start}) + ${node.at});`
  })
  const ends = group.writes.map(({ node }, i) => `  float e${i} = ${value(node)};`)
  const writes = group.writes.map(({ channel }, i) => `  ${names[channel]!} = e${i};`)
  const parameters = names.map((name, i) => `${i < firstOut ? 'inout' : 'out'} float ${name}`)
  const vectors = Math.max(1, Math.ceil((program.uniformCount + program.tables.length) / 4))
  const text = [
    `uniform vec4 ${name}Numbers[${vectors}];`,
    ...(program.tables.length > 0
      ? [
          ...(options.sampler !== undefined ? [] : [`uniform highp sampler2D ${sampler};`]),
          `float ${name}Table(int i) { return texelFetch(${sampler}, ivec2(i & ${TABLE_WIDTH - 1}, i >> ${Math.log2(TABLE_WIDTH)}), 0).r; }`,
        ]
      : []),
    `void ${name}(${parameters.join(', ')}) {`,
    ...lines,
    ...ends,
    ...writes,
    '}',
    '',
  ].join('\n')
  return {
    text,
    tableWidth: TABLE_WIDTH,
    parameters: names,
    fits: (others, stages) => program.fits(stepsOf(others, { ...options, ...stages })),
    numbers(others, stages, from = 0) {
      const all = new Float32Array(vectors * 4)
      const steps: readonly Stage[] = stepsOf(others, { ...options, ...stages })
      all.set(program.uniforms(steps))
      const starts = tableStarts(program, steps).map((start) => from + start)
      all.set(starts, program.uniformCount)
      return all
    },
    tables(others, stages) {
      const steps: readonly Stage[] = stepsOf(others, { ...options, ...stages })
      const entries = program.tables.map((table) => entriesOf(table, steps))
      const length = entries.reduce((sum, own) => sum + own.length, 0)
      const all = new Float32Array(Math.ceil(length / TABLE_WIDTH) * TABLE_WIDTH)
      tableStarts(program, steps).forEach((start, i) => all.set(entries[i]!, start))
      return all
    },
  }
}

function channelNames(count: number, directions: number, branches: number): string[] {
  const names = ['x', 'y', 'z']
  for (let d = 0; d < directions; d++) names.push(`x${d}`, `y${d}`, `z${d}`)
  for (let b = 0; b < branches; b++) names.push(`branch${b}`)
  while (names.length < count) names.push(`out${names.length}`)
  return names
}

function literal(value: number): string {
  const text = Math.fround(value).toString()
  return /[.e]/.test(text) ? (text.includes('.') ? text : text.replace('e', '.0e')) : `${text}.0`
}

function expression(node: Node, [a, b, c, d]: readonly string[]): string {
  switch (node.op) {
    case 'add':
      return `${a} + ${b}`
    case 'sub':
      return `${a} - ${b}`
    case 'mul':
      return `${a} * ${b}`
    case 'div':
      return `${a} / ${b}`
    case 'less':
      return `${a} < ${b} ? ${c} : ${d}`
    case 'abs':
    case 'floor':
    case 'min':
    case 'max':
    case 'sqrt':
      return `${node.op}(${b === undefined ? a : `${a}, ${b}`})`
    default:
      throw new Error(`no shader text for ${node.op}`)
  }
}
