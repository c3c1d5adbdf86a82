import { type ShaderText, type TailStage, shaderText } from '#warp'
import { bendStage } from './bend-reader.ts'
import { layerStage, meanStage } from './coverage-stage.ts'
import { NEAR } from './mean-reader.ts'
import { type Origin, type Run, type Split, fuse, stacksOf } from './origin.ts'
import { type Weights, weighingsOf } from './tracer.ts'
import { heightOf } from './weighing.ts'

/**
 * The whole tree of a pattern as text for a graphics card, made of the same graphs as the tracer's kernels.
 *
 * With 2 directions, `void NAMETrace(vec3 place, vec3 u, vec3 v, out vec4 trace, out float seam)` follows a pixel and
 * its two sides: trace = layer coordinate, its runs along u and v (cells), number of the stack or −1 for no metal;
 * `void NAMEMeans(vec4 trace, out float means[COUNT])` gives the mean of each weight over it; `float NAMEBend(vec3
 * own, vec3 left, vec3 up, bool across)` is above 0 where a pixel and its left (across) or upper neighbour do not lie
 * on one straight run. With 3 directions, `void NAMEMove(vec3 place, out vec4 origin, out mat3 rates)` gives the place
 * in the stack (m) with the stack's number, and by columns how it changes along x, y and z.
 *
 * The text needs `precision highp float; precision highp sampler2D; precision highp int;` before it.
 */
export interface PatternShader {
  readonly text: string
  /** By the names of `uniform vec4 …[]`. */
  readonly numbers: Readonly<Record<string, Float32Array>>
  /** For `uniform sampler2D NAMETables`: R32F, `tableWidth` wide. */
  readonly tables: Float32Array
  readonly tableWidth: number
  readonly stacks: number
}

export interface PatternShaderOptions {
  readonly name: string
  readonly directions: 2 | 3
  /** What is averaged over each pixel; taken with 2 directions only. */
  readonly weights?: readonly Weights[]
}

export function patternShader(origin: Origin, options: PatternShaderOptions): PatternShader {
  const { name, directions, weights = [] } = options
  const stacks = stacksOf(origin)
  const parts = new Parts(name)
  const knots = inOrder(fuse(origin))
  const blocks = knots.map((run, k) => {
    const { end } = run
    const own = end.kind === 'stack' ? weighingsOf(end, [{}])[0]! : undefined
    const tail = own && directions === 2 ? layerStage(own) : undefined
    const chain = parts.add(`${name}Run${k}`, run, directions, tail)
    const lines = [callOf(chain, directions, tail !== undefined)]
    if (end.kind === 'stack') lines.push(...leaf(stacks.indexOf(end), directions))
    else lines.push(...splitLines(end, run, chain, directions, knots))
    return `  if (at == ${k}) {\n${lines.map((l) => `    ${l}`).join('\n')}\n  }`
  })
  const rates = directions === 2 ? 'vec3 u, vec3 v' : ''
  const head =
    directions === 2
      ? `void ${name}Trace(vec3 p, ${rates}, out vec4 trace, out float seam) {\n  trace = vec4(0.0, 0.0, 0.0, -1.0);\n  seam = 0.0;`
      : `void ${name}Move(vec3 p, out vec4 origin, out mat3 rates) {\n  origin = vec4(0.0, 0.0, 0.0, -1.0);\n  rates = mat3(1.0);\n  vec3 u = vec3(1.0, 0.0, 0.0), v = vec3(0.0, 1.0, 0.0), w = vec3(0.0, 0.0, 1.0);`
  const walk = [head, '  int at = 0;', ...blocks, '}'].join('\n')
  const means =
    weights.length === 0
      ? ''
      : meansText(
          name,
          parts,
          stacks.map((s) => weighingsOf(s, weights)),
          weights.length,
        )
  const bend = directions === 2 ? bendText(name, parts) : ''
  return {
    text: [
      `uniform highp sampler2D ${name}Tables;`,
      SLAB,
      ...parts.texts,
      walk,
      means,
      bend,
      '',
    ].join('\n'),
    numbers: parts.numbers,
    tables: parts.tables(),
    tableWidth: parts.width,
    stacks: stacks.length,
  }
}

/** Chains of warps with their numbers, and all their tables end to end. */
class Parts {
  readonly texts: string[] = []
  readonly numbers: Record<string, Float32Array> = {}
  width = 1024
  private readonly sampler: string
  private readonly kept: Float32Array[] = []
  private length = 0

  constructor(name: string) {
    this.sampler = `${name}Tables`
  }

  add(
    name: string,
    run: Pick<Run, 'warps'>,
    directions: 0 | 2 | 3,
    tail: TailStage | undefined,
  ): ShaderText {
    const warps = run.warps.toReversed()
    const shared = { sampler: this.sampler, from: this.length }
    const chain = shaderText(warps, { directions, tail, name, shared })
    this.texts.push(chain.text)
    this.numbers[`${name}Numbers`] = chain.numbers(warps, { tail })
    const tables = chain.tables(warps, { tail })
    this.kept.push(tables)
    this.length += tables.length
    this.width = chain.tableWidth
    return chain
  }

  tables(): Float32Array {
    const all = new Float32Array(Math.max(this.length, this.width))
    let at = 0
    for (const part of this.kept) {
      all.set(part, at)
      at += part.length
    }
    return all
  }
}

/** Every run once, each before all that it leads to. */
function inOrder(root: Run): Run[] {
  const done = new Set<Run>()
  const order: Run[] = []
  const visit = (run: Run) => {
    if (done.has(run)) return
    done.add(run)
    if (run.end.kind === 'split') run.end.ways.toReversed().forEach(visit)
    order.push(run)
  }
  visit(root)
  return order.reverse()
}

const RATES = ['u', 'v', 'w']

/** The call of a chain on the walk's variables, its branches and outputs declared. */
function callOf(chain: ShaderText, directions: number, ends: boolean): string {
  const moving = 3 + 3 * directions
  const names = chain.parameters.map((parameter, i) => {
    if (i < 3) return `p.${'xyz'[i]!}`
    if (i < moving) return `${RATES[Math.floor(i / 3) - 1]!}.${'xyz'[i % 3]!}`
    return parameter
  })
  const declared = names.slice(moving)
  const call = /void (\w+)\(/.exec(chain.text)![1]!
  const outs = declared.length > 0 ? `float ${declared.join(', ')}; ` : ''
  return `${outs}${call}(${names.join(', ')});${ends ? '' : ''}`
}

function leaf(stack: number, directions: 2 | 3): string[] {
  return directions === 2
    ? [`trace = vec4(layer, alongU, alongV, ${stack}.0);`, 'at = -1;']
    : [`origin = vec4(p, ${stack}.0);`, 'rates = mat3(u, v, w);', 'at = -1;']
}

function splitLines(
  split: Split,
  run: Run,
  chain: ShaderText,
  directions: 2 | 3,
  knots: readonly Run[],
): string[] {
  const lines: string[] = []
  if (directions === 2)
    for (const { axis, at, depth } of split.seams)
      lines.push(
        `{ float s = patternSlab(p.${axis} - ${float(at)}, u.${axis}, v.${axis}, ${float(depth)});` +
          ' seam = 1.0 - (1.0 - seam) * (1.0 - s); }',
      )
  const to = (way: number) => (way < 0 ? -1 : knots.indexOf(split.ways[way]!))
  // Branches are outputs of the chain in the order its maps are applied.
  const branching = chain.parameters.filter((p) => p.startsWith('branch'))
  const list = split.branches ?? [0]
  if (split.warp < 0 || branching.length === 0) return [...lines, `at = ${to(list[0] ?? 0)};`]
  const branch = branching[branchPlace(run, split.warp)]!
  lines.push(`int way = ${to(list[0] ?? 0)};`)
  // Runs of branches that lead the same way are told by one comparison each.
  for (let b = 1; b < list.length; b++)
    if (list[b] !== list[b - 1]) lines.push(`if (${branch} > ${float(b - 0.5)}) way = ${to(list[b]!)};`)
  lines.push(`if (${branch} < -0.5) way = ${split.below === undefined ? -1 : to(split.below)};`)
  lines.push('at = way;')
  return lines
}
