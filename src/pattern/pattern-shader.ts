import { type ShaderText, type TailStage, shaderText } from '#warp'
import { bendStage } from './bend-reader.ts'
import { layerStage, meanStage } from './coverage-stage.ts'
import { NEAR } from './mean-reader.ts'
import { type Origin, type Run, type Split, fuse, stacksOf } from './origin.ts'
import { type Weights, weighingsOf } from './tracer.ts'
import type { Weighing } from './weighing.ts'

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
    const lines = [callOf(chain, directions)]
    if (end.kind === 'stack') lines.push(...leaf(stacks.indexOf(end), directions))
    else lines.push(...splitLines(end, chain, directions, knots))
    return `  if (at == ${k}) {\n${lines.map((l) => `    ${l}`).join('\n')}\n  }`
  })
  const head =
    directions === 2
      ? `void ${name}Trace(vec3 p, vec3 u, vec3 v, out vec4 trace, out float seam) {\n  trace = vec4(0.0, 0.0, 0.0, -1.0);\n  seam = 0.0;`
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
function callOf(chain: ShaderText, directions: number): string {
  const moving = 3 + 3 * directions
  const names = chain.parameters.map((parameter, i) => {
    if (i < 3) return `p.${'xyz'[i]!}`
    if (i < moving) return `${RATES[Math.floor(i / 3) - 1]!}.${'xyz'[i % 3]!}`
    return parameter
  })
  const declared = names.slice(moving)
  const call = /void (\w+)\(/.exec(chain.text)![1]!
  const outs = declared.length > 0 ? `float ${declared.join(', ')}; ` : ''
  return `${outs}${call}(${names.join(', ')});`
}

function leaf(stack: number, directions: 2 | 3): string[] {
  return directions === 2
    ? [`trace = vec4(layer, alongU, alongV, ${stack}.0);`, 'at = -1;']
    : [`origin = vec4(p, ${stack}.0);`, 'rates = mat3(u, v, w);', 'at = -1;']
}

function splitLines(
  split: Split,
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
  // Branches are outputs of the chain in the order its maps are applied; the last decides.
  const branching = chain.parameters.filter((p) => p.startsWith('branch'))
  const list = split.branches ?? [0]
  if (split.warp < 0 || branching.length === 0) return [...lines, `at = ${to(list[0] ?? 0)};`]
  const branch = branching.at(-1)!
  lines.push(`int way = ${to(list[0] ?? 0)};`)
  // Runs of branches that lead the same way are told by one comparison each.
  for (let b = 1; b < list.length; b++)
    if (list[b] !== list[b - 1])
      lines.push(`if (${branch} > ${float(b - 0.5)}) way = ${to(list[b]!)};`)
  lines.push(`if (${branch} < -0.5) way = ${split.below === undefined ? -1 : to(split.below)};`)
  lines.push('at = way;')
  return lines
}

/** The means of a pixel by its stack, near or far (see Weighing). */
function meansText(
  name: string,
  parts: Parts,
  stacks: readonly (readonly Weighing[])[],
  count: number,
): string {
  const outs = Array.from({ length: count }, (_, i) => `means[${i}]`).join(', ')
  const calls = stacks.map((weighings, s) => {
    const [near, far] = (['near', 'far'] as const).map((reach) => {
      const own = `${name}${reach === 'near' ? 'Near' : 'Far'}${s}`
      parts.add(own, { warps: [] }, 0, meanStage(weighings, 'f32', reach))
      return `${own}(l, a, b, ${outs});`
    })
    return `  if (t.w == ${s}.0) {\n    if (abs(a) + abs(b) <= ${float(NEAR)}) ${near!}\n    else ${far!}\n  }`
  })
  return [
    `void ${name}Means(vec4 t, out float means[${count}]) {`,
    `  for (int i = 0; i < ${count}; i++) means[i] = 0.0;`,
    '  float l = t.x, a = t.y, b = t.z;',
    ...calls,
    '}',
  ].join('\n')
}

function bendText(name: string, parts: Parts): string {
  parts.add(`${name}Bends`, { warps: [] }, 2, bendStage())
  return [
    `float ${name}Bend(vec3 own, vec3 left, vec3 up, bool across) {`,
    '  float toLeft, toUp;',
    `  ${name}Bends(own.x, own.y, own.z, left.x, left.y, left.z, up.x, up.y, up.z, toLeft, toUp);`,
    '  return across ? toLeft : toUp;',
    '}',
  ].join('\n')
}

function float(value: number): string {
  const text = Math.fround(value).toString()
  return /[.e]/.test(text) ? text : `${text}.0`
}

/** Share of a pixel within `depth` of a face: see `slabShare`, whose text this is. */
const SLAB = `float patternBelow(float limit, float du, float dv) {
  float g = max(abs(du), abs(dv)), h = min(abs(du), abs(dv));
  float p = (g + h) * 0.5, q = (g - h) * 0.5;
  if (limit <= -p) return 0.0;
  if (limit >= p) return 1.0;
  if (h < 1e-6 * g) return (limit + g * 0.5) / g;
  if (limit < -q) return (limit + p) * (limit + p) / (2.0 * g * h);
  if (limit > q) return 1.0 - (p - limit) * (p - limit) / (2.0 * g * h);
  return 0.5 + limit / g;
}
float patternSlab(float value, float du, float dv, float depth) {
  float reach = (abs(du) + abs(dv)) * 0.5 + depth;
  if (abs(value) > reach) return 0.0;
  return patternBelow(depth - value, du, dv) - patternBelow(-depth - value, du, dv);
}`
