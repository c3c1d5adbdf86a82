import { type Weights, layerStage, weighPile } from '#share'
import { type TailStage, type Warp, shaderText } from '#warp'
import { type Origin, type Run, type Split, type Stack, fuse, stacksOf } from './origin.ts'
import { patternMeasure } from './pattern-measure.ts'
import { float, seamLines, stageText, wayLines } from './pattern-shader-text.ts'
import { type ShaderValues, Values } from './shader-values.ts'

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
 * All text needs `precision highp float; precision highp sampler2D; precision highp int;` before it, stages `uniform
 * sampler2D NAMETables;`, `measure` `uniform sampler2D NAMEWeights;`.
 *
 * Text is a thing of structure: which maps in which order, how many stacks and means. All else is values, of which the
 * same text takes any number; making text takes far longer than filling it.
 */
export interface PatternShader {
  readonly stages: readonly string[]
  readonly measure: string
  readonly tableWidth: number
  /** What the stages read, with NAMETables; nothing for a pattern of another structure, told in other text. */
  trace(origin: Origin): ShaderValues | undefined
  /** What `measure` reads, with NAMEWeights. */
  weigh(origin: Origin, weights: readonly Weights[]): ShaderValues | undefined
}

export interface PatternShaderOptions {
  readonly name: string
  readonly directions: 2 | 3
  /** How many weights are averaged over each pixel; with 2 directions only. */
  readonly means?: number
}

/** Lines of arithmetic in a stage after which the next is begun: short enough for any driver to compile. */
const LONGEST = 1600

export function patternShader(origin: Origin, options: PatternShaderOptions): PatternShader {
  const { name, directions, means = 0 } = options
  const runs = inOrder(fuse(origin))
  const stacks = stacksOf(origin)
  const shape = shapeOf(runs, stacks)
  const pieces = runs.flatMap((run, number) => cutRun(run, number, directions))
  const first = (run: Run) => pieces.findIndex((piece) => runs[piece.run] === run)
  const stages = pieces.map((piece, i) => {
    const { end, warps } = runs[piece.run]!
    const own = `${name}Run${i}`
    const made = warpsOf(runs, piece)
    const tail = tailOf(end, piece, directions)
    const chain = shaderText(made, { directions, tail, name: own, sampler: `${name}Tables` })
    const lines: string[] = []
    const declared: string[] = []
    if (end.kind === 'split' && decides(end, warps, piece))
      lines.push(...wayLines(end, chain, first))
    if (!piece.last) lines.push('at += 1.0;')
    else if (end.kind === 'split') {
      if (end.seams.length > 0) declared.push(`uniform vec4 ${own}Seams[${end.seams.length}];`)
      lines.push(...seamLines(end, `${own}Seams`), 'at = way;')
    } else {
      if (directions === 2) lines.push('p = vec3(layer, alongU, alongV);')
      lines.push(`at = ${float(-2 - stacks.indexOf(end))};`)
    }
    return { own, piece, chain, text: stageText(name, chain, directions, lines, declared) }
  })
  const measuring = directions === 2 ? patternMeasure(name, origin, means) : undefined
  return {
    stages: stages.map((stage) => stage.text),
    measure: measuring?.text ?? '',
    tableWidth: stages[0]!.chain.tableWidth,
    trace(other) {
      const others = inOrder(fuse(other))
      if (shapeOf(others, stacksOf(other)) !== shape) return undefined
      const values = new Values()
      for (const { own, piece, chain } of stages) {
        const { end } = others[piece.run]!
        const tail = tailOf(end, piece, directions)
        if (!values.add(`${own}Numbers`, chain, warpsOf(others, piece), tail)) return undefined
        if (piece.last && end.kind === 'split' && end.seams.length > 0)
          values.numbers[`${own}Seams`] = Float32Array.from(
            end.seams.flatMap(({ at, depth }) => [at, depth, 0, 0]),
          )
      }
      return values.told(this.tableWidth)
    },
    weigh: (other, weights) => measuring?.values(other, weights),
  }
}

/** All that text is made of besides the arithmetic of each chain, in a word. */
function shapeOf(runs: readonly Run[], stacks: readonly Stack[]): string {
  return JSON.stringify(
    runs.map(({ warps, end }) => [
      warps.map(({ kind, form = '' }) => `${kind} ${form}`),
      end.kind === 'stack'
        ? stacks.indexOf(end)
        : [
            end.warp,
            end.branches,
            end.below,
            end.seams.map(({ axis }) => axis),
            end.ways.map((way) => runs.indexOf(way)),
          ],
    ]),
  )
}

/** Part of a run that one stage goes through: from and to which of its warps, in pull-back order. */
interface Piece {
  readonly run: number
  readonly from: number
  readonly to: number
  readonly last: boolean
}

/** Lines a warp takes, by its kind: measured once. */
const sizes = new Map<string, number>()

function linesOf(warp: Warp, directions: 2 | 3): number {
  const key = `${directions} ${warp.kind} ${warp.form ?? ''}`
  const known = sizes.get(key) ?? shaderText([warp], { directions }).text.split('\n').length
  sizes.set(key, known)
  return known
}

/** A run in pieces of no more than so many lines; a single longer warp stands alone. */
function cutRun({ warps }: Run, run: number, directions: 2 | 3): readonly Piece[] {
  const starts = [0]
  let lines = 0
  warps.forEach((warp, i) => {
    const more = linesOf(warp, directions)
    if (lines > 0 && lines + more > LONGEST) {
      starts.push(i)
      lines = 0
    }
    lines += more
  })
  return starts.map((from, i) => ({
    run,
    from,
    to: starts[i + 1] ?? warps.length,
    last: i === starts.length - 1,
  }))
}

/** In the order of working, as chains are made of. */
function warpsOf(runs: readonly Run[], { run, from, to }: Piece): readonly Warp[] {
  return runs[run]!.warps.slice(from, to).reverse()
}

function tailOf(end: Run['end'], { last }: Piece, directions: 2 | 3): TailStage | undefined {
  if (end.kind !== 'stack' || !last || directions !== 2) return undefined
  return layerStage(weighPile(end, [{}], 0)[0]!)
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

/** Whether a piece holds the warp whose branch decides; where none does, the first piece settles the way. */
function decides(split: Split, warps: readonly Warp[], { from, to }: Piece): boolean {
  const at = warps.length === 0 || split.warp < 0 ? 0 : split.warp
  return at >= from && at < Math.max(to, from + 1)
}
