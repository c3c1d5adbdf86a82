import { type Reach, type Weighing, NEAR, aloneTo, layerStage, meanStage } from '#share'
import { type ShaderText, type TailStage, type Warp, shaderText } from '#warp'
import { LEAST, bendStage } from './bend-reader.ts'
import { cutsOf } from './joints.ts'
import { type Origin, type Run, type Split, fuse, stacksOf } from './origin.ts'
import { type Weights, weighingsOf } from './tracer.ts'

/**
 * The whole tree of a pattern as text for a graphics card, made of the same graphs as the tracer's kernels and cut, as
 * those are, into stages none of which is long: a card is given them one after another. Each stage's text has
 * `void NAMEStep(inout vec3 p, inout vec3 u, inout vec3 v, inout vec3 w, inout float at, inout float way, inout float
 * seam)`: the place, how it changes along two directions (a pixel's sides) or three (w is left alone with two), and
 * which stage comes next, from 0. Done, `at` is −1 where there is no metal, else −2 less the number of the stack; then
 * with 2 directions p is the layer coordinate and its runs along u and v (cells), with 3 the place in the stack (m).
 *
 * `measure` has, with 2 directions, `void NAMEMeans(vec3 layer, float stack, out float means[COUNT])`: the mean of
 * each weight over such a pixel; and `float NAMEBend(vec3 own, vec3 other, bool across)`: above 0 where a pixel and
 * its left (across), or a pixel and its upper neighbour do not lie on one straight run.
 *
 * All text needs `precision highp float; precision highp sampler2D; precision highp int;` and `uniform sampler2D
 * NAMETables;` before it.
 */
export interface PatternShader {
  readonly stages: readonly string[]
  readonly measure: string
  /** By the names of `uniform vec4 …[]`; the texts have them each where it is used. */
  readonly numbers: Readonly<Record<string, Float32Array>>
  /** For `NAMETables`: R32F, `tableWidth` wide. */
  readonly tables: Float32Array
  readonly tableWidth: number
}

export interface PatternShaderOptions {
  readonly name: string
  readonly directions: 2 | 3
  /** What is averaged over each pixel; taken with 2 directions only. */
  readonly weights?: readonly Weights[]
}

/** Lines of arithmetic in a stage after which the next is begun: short enough for any driver to compile. */
const LONGEST = 1600

export function patternShader(origin: Origin, options: PatternShaderOptions): PatternShader {
  const { name, directions, weights = [] } = options
  const stacks = stacksOf(origin)
  const parts = new Parts(name)
  const runs = inOrder(fuse(origin)).map((run) => ({ run, pieces: cutRun(run, directions) }))
  const firsts = new Map<Run, number>()
  let count = 0
  for (const { run, pieces } of runs) {
    firsts.set(run, count)
    count += pieces.length
  }
  const stages = runs.flatMap(({ run: { end, warps }, pieces }) => {
    let from = 0
    return pieces.map((piece, i) => {
      const own = end.kind === 'stack' && i === pieces.length - 1
      const tail = own && directions === 2 ? layerStage(weighingsOf(end, [{}], 0)[0]!) : undefined
      const chain = parts.add(`${name}Run${parts.count}`, piece, directions, tail)
      const lines = [callOf(chain, directions)]
      const to = (run: Run) => firsts.get(run)!
      if (end.kind === 'split' && decides(end, warps, from, piece))
        lines.push(...wayLines(end, chain, to))
      if (own) {
        if (directions === 2) lines.push('p = vec3(layer, alongU, alongV);')
        lines.push(`at = ${float(-2 - stacks.indexOf(end))};`)
      } else if (i < pieces.length - 1) lines.push('at += 1.0;')
      else if (end.kind === 'split') lines.push(...seamsAt(end), 'at = way;')
      from += piece.length
      const head = `void ${name}Step(inout vec3 p, inout vec3 u, inout vec3 v, inout vec3 w, inout float at, inout float way, inout float seam) {`
      return [SLAB, chain.text, head, ...lines.map((l) => `  ${l}`), '}', ''].join('\n')
    })
  })
  const measure =
    directions === 2
      ? [
          ...(weights.length > 0
            ? [
                meansText(
                  name,
                  parts,
                  stacks.map((s, i) => weighingsOf(s, weights, i, cutsOf(origin))),
                  weights.length,
                ),
              ]
            : []),
          bendText(name, parts),
          '',
        ].join('\n')
      : ''
  return {
    stages,
    measure,
    numbers: parts.numbers,
    tables: parts.tables(),
    tableWidth: parts.width,
  }
}

/** Lines a warp takes, by its structure: measured once. */
const sizes = new Map<string, number>()

function linesOf(warp: Warp, directions: 2 | 3): number {
  const tables = Object.values(warp.tables ?? {}).map((t) => t.length)
  const key = `${directions} ${warp.kind} ${warp.form ?? ''} ${tables.join(' ')}`
  const known = sizes.get(key) ?? shaderText([warp], { directions }).text.split('\n').length
  sizes.set(key, known)
  return known
}

/** A run's warps, in pull-back order, in pieces of no more than so many lines; a single longer warp stands alone. */
function cutRun({ warps }: Run, directions: 2 | 3): readonly (readonly Warp[])[] {
  const pieces: Warp[][] = [[]]
  let lines = 0
  for (const warp of warps) {
    const more = linesOf(warp, directions)
    if (lines > 0 && lines + more > LONGEST) {
      pieces.push([])
      lines = 0
    }
    pieces.at(-1)!.push(warp)
    lines += more
  }
  return pieces
}

/** Chains of warps with their numbers, and all their tables end to end. */
class Parts {
  readonly numbers: Record<string, Float32Array> = {}
  width = 1024
  count = 0
  private readonly sampler: string
  private readonly kept: Float32Array[] = []
  private length = 0

  constructor(name: string) {
    this.sampler = `${name}Tables`
  }

  /** `piece` in pull-back order. */
  add(
    name: string,
    piece: readonly Warp[],
    directions: 0 | 2 | 3,
    tail: TailStage | undefined,
  ): ShaderText {
    const warps = piece.toReversed()
    const shared = { sampler: this.sampler, from: this.length }
    const chain = shaderText(warps, { directions, tail, name, shared })
    this.numbers[`${name}Numbers`] = chain.numbers(warps, { tail })
    const tables = chain.tables(warps, { tail })
    this.kept.push(tables)
    this.length += tables.length
    this.width = chain.tableWidth
    this.count++
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

/** The call of a chain on the step's variables, its branches and outputs declared. */
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

/** Welded skins are looked for where the run ends. */
function seamsAt(split: Split): string[] {
  return split.seams.map(
    ({ axis, at, depth }) =>
      `seam = 1.0 - (1.0 - seam) * (1.0 - patternSlab(p.${axis} - ${float(at)}, u.${axis}, v.${axis}, ${float(depth)}));`,
  )
}
/** Whether a piece holds the warp whose branch decides; where none does, the first piece settles the way. */
function decides(
  split: Split,
  warps: readonly Warp[],
  from: number,
  piece: readonly Warp[],
): boolean {
  const at = warps.length === 0 || split.warp < 0 ? 0 : split.warp
  return at >= from && at < from + Math.max(piece.length, 1)
}

/** Which run comes after this one. */
function wayLines(split: Split, chain: ShaderText, first: (run: Run) => number): string[] {
  const to = (way: number) => float(way < 0 ? -1 : first(split.ways[way]!))
  const list = split.branches ?? [0]
  // Branches are outputs of the chain in the order its maps are applied; of the run's, the last decides.
  const branch = chain.parameters.filter((p) => p.startsWith('branch')).at(-1)
  const lines = [`way = ${to(list[0] ?? 0)};`]
  if (split.warp < 0 || branch === undefined) return lines
  // Branches in a row that lead the same way take one comparison.
  for (let b = 1; b < list.length; b++)
    if (list[b] !== list[b - 1])
      lines.push(`if (${branch} > ${float(b - 0.5)}) way = ${to(list[b]!)};`)
  lines.push(`if (${branch} < -0.5) way = ${to(split.below ?? -1)};`)
  return lines
}

const REACH_NAMES: Readonly<Record<Reach, string>> = { near: 'Near', alone: 'Alone', far: 'Far' }

/** The means of a pixel by its stack, near or far (see Weighing). */
function meansText(
  name: string,
  parts: Parts,
  stacks: readonly (readonly Weighing[])[],
  count: number,
): string {
  const outs = Array.from({ length: count }, (_, i) => `means[${i}]`).join(', ')
  const texts: string[] = []
  const calls = stacks.map((weighings, s) => {
    const alone = aloneTo(weighings[0]!)
    const call = (reach: Reach) => {
      const own = `${name}${REACH_NAMES[reach]}${s}`
      texts.push(parts.add(own, [], 0, meanStage(weighings, 'f32', reach)).text)
      return `${own}(l, a, b, ${outs});`
    }
    const reach = 'abs(a) + abs(b)'
    return [
      `  if (stack == ${float(s)}) {`,
      `    if (${reach} <= ${float(NEAR)}) ${call('near')}`,
      ...(alone > 0 ? [`    else if (${reach} <= ${float(alone)}) ${call('alone')}`] : []),
      `    else ${call('far')}`,
      '  }',
    ].join('\n')
  })
  return [
    ...texts,
    `void ${name}Means(vec3 layer, float stack, out float means[${count}]) {`,
    `  for (int i = 0; i < ${count}; i++) means[i] = 0.0;`,
    '  float l = layer.x, a = layer.y, b = layer.z;',
    ...calls,
    '}',
  ].join('\n')
}

function bendText(name: string, parts: Parts): string {
  const bends = parts.add(`${name}Bends`, [], 2, bendStage(LEAST))
  return [
    bends.text,
    `float ${name}Bend(vec3 own, vec3 other, bool across) {`,
    '  float x = own.x, y = own.y, z = own.z;',
    '  vec3 left = other, up = other;',
    '  float toLeft, toUp;',
    `  ${name}Bends(x, y, z, left.x, left.y, left.z, up.x, up.y, up.z, toLeft, toUp);`,
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
