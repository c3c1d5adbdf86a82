import { Graph, type Node } from './graph.ts'

export type Precision = 'f32' | 'f64'

const TAU = 2 * Math.PI

/** 2^−126 … 2^127, the powers a single-precision number has. */
const POWER_OFFSET = 126
const POWERS: readonly number[] = Array.from({ length: 254 }, (_, i) => 2 ** (i - POWER_OFFSET))

function series(count: number, term: (k: number) => number): readonly number[] {
  return Array.from({ length: count }, (_, k) => term(k))
}
function factorial(n: number): number {
  return n < 2 ? 1 : n * factorial(n - 1)
}

/** Taylor series about zero, each as long as its reduced range and the precision need. */
const SERIES = {
  f64: { wave: 11, exp: 13, turn: 20 },
  f32: { wave: 6, exp: 7, turn: 9 },
}

/**
 * The same graph in plain arithmetic: sine, cosine, exponential and angle written out as range reduction and series, so
 * that every reading computes them alike, to the last bit in double precision. What is the same for all points is
 * always written out in double.
 */
export function lower(source: Graph, outputs: readonly Node[], precision: Precision) {
  const g = new Graph()
  source.tables.forEach((t) => g.table(t.slot, t.length, t.values))
  const known = new Map<Node, Node>()
  const map = (node: Node): Node => {
    const seen = known.get(node)
    if (seen) return seen
    const made = rewrite(node)
    known.set(node, made)
    return made
  }
  const rewrite = (node: Node): Node => {
    const args = node.args.map(map)
    const [a, b, c, d] = args as [Node, Node, Node, Node]
    const lengths = SERIES[node.uniform ? 'f64' : precision]
    switch (node.op) {
      case 'const':
        return g.constant(node.at)
      case 'input':
        return g.input(node.at)
      case 'param':
        return g.parameter(node.at)
      case 'fetch':
        return g.fetch(node.table, a, node.at)
      case 'less':
        return g.less(a, b, c, d)
      case 'floor':
      case 'abs':
      case 'sqrt':
        return g[node.op](a)
      case 'sin':
      case 'cos':
        return wave(g, a, node.op, lengths.wave)
      case 'exp':
        return exponential(g, a, lengths.exp)
      case 'turn':
        return angle(g, a, b, lengths.turn)
      default:
        return g[node.op](a, b)
    }
  }
  return { graph: g, outputs: outputs.map(map) }
}

/** Horner's rule; a long series as two of half its length in x², which the processor works on side by side. */
function polynomial(g: Graph, x: Node, terms: readonly number[]): Node {
  if (terms.length > 8) {
    const square = g.mul(x, x)
    const [even, odd] = [0, 1].map((first) => terms.filter((_, k) => k % 2 === first))
    return g.add(g.mul(x, polynomial(g, square, odd!)), polynomial(g, square, even!))
  }
  const last = g.constant(terms[terms.length - 1]!)
  return terms.slice(0, -1).reduceRight<Node>((sum, term) => g.add(g.mul(sum, x), term), last)
}

/**
 * The cosine falls off on both sides of a whole turn alike, so with the nearest whole turn taken off and the sign
 * dropped it is the sine of what is left to a quarter: at most a quarter either way, and no case to choose between.
 */
function wave(g: Graph, turns: Node, which: 'sin' | 'cos', length: number): Node {
  const from = which === 'cos' ? turns : g.sub(turns, 0.25)
  const away = g.abs(g.sub(from, g.floor(g.add(from, 0.5))))
  const left = g.sub(0.25, away)
  const terms = series(length, (k) => ((-1) ** k * TAU ** (2 * k + 1)) / factorial(2 * k + 1))
  return g.mul(left, polynomial(g, g.mul(left, left), terms))
}

/** e^x = 2^k · e^(f·ln 2), k whole: the power of two is looked up. */
function exponential(g: Graph, x: Node, length: number): Node {
  const t = g.clamp(g.mul(x, Math.LOG2E), -POWER_OFFSET, 126)
  const whole = g.floor(g.add(t, 0.5))
  const power = g.fetch(g.table(-1, POWERS.length, POWERS), g.add(whole, POWER_OFFSET))
  const terms = series(length, (k) => Math.LN2 ** k / factorial(k))
  return g.mul(polynomial(g, g.sub(t, whole), terms), power)
}

/** Angle in turns: folded to the octant, then about ⅛ turn, then the arctangent's series. */
function angle(g: Graph, sine: Node, cosine: Node, length: number): Node {
  const [s, c] = [g.abs(sine), g.abs(cosine)]
  const small = g.min(s, c)
  const large = g.max(g.max(s, c), 1e-30)
  const steep = g.mul(large, Math.SQRT2 - 1)
  const over = g.less(steep, small, g.sub(small, large), small)
  const under = g.less(steep, small, g.add(small, large), large)
  const ratio = g.div(over, under)
  const terms = series(length, (k) => (-1) ** k / ((2 * k + 1) * TAU))
  const arc = g.mul(ratio, polynomial(g, g.mul(ratio, ratio), terms))
  const octant = g.add(arc, g.less(steep, small, 0.125, 0))
  const quadrant = g.less(c, s, g.sub(0.25, octant), octant)
  const half = g.less(cosine, 0, g.sub(0.5, quadrant), quadrant)
  return g.less(sine, 0, g.negate(half), half)
}
