import type { Graph, Node } from './graph.ts'

const TAU = 2 * Math.PI
/** Below any length that occurs, above zero in single precision: keeps quotients finite where a root has no slope. */
const TINY = 1e-30

/**
 * Forward derivatives, written as more graph: for each node its rates along as many directions as the seeds have.
 * A step (floor, a table's entry) has rate 0, a corner the rate of the side the value is on.
 */
export function differentiator(
  g: Graph,
  seeds: ReadonlyMap<Node, readonly Node[]>,
  directions: number,
) {
  const none = Array.from({ length: directions }, () => g.constant(0))
  const known = new Map<Node, readonly Node[]>(seeds)

  const rate = (node: Node): readonly Node[] => {
    const seen = known.get(node)
    if (seen) return seen
    const result =
      node.uniform || node.op === 'input' || node.op === 'floor' || node.op === 'fetch'
        ? none
        : derive(node)
    known.set(node, result)
    return result
  }

  const derive = (node: Node): readonly Node[] => {
    const [a, b, c, d] = node.args as [Node, Node, Node, Node]
    const each = (f: (i: number) => Node) => none.map((_, i) => f(i))
    const da = rate(a)
    const scaled = (factor: () => Node) =>
      da.every((r) => r === none[0]) ? none : each((i) => g.mul(da[i]!, factor()))
    switch (node.op) {
      case 'add':
        return each((i) => g.add(da[i]!, rate(b)[i]!))
      case 'sub':
        return each((i) => g.sub(da[i]!, rate(b)[i]!))
      case 'mul':
        return each((i) => g.add(g.mul(da[i]!, b), g.mul(rate(b)[i]!, a)))
      case 'div': {
        const over = g.div(1, b)
        return each((i) => g.mul(g.sub(da[i]!, g.mul(node, rate(b)[i]!)), over))
      }
      case 'min':
        return each((i) => g.less(b, a, rate(b)[i]!, da[i]!))
      case 'max':
        return each((i) => g.less(a, b, rate(b)[i]!, da[i]!))
      case 'abs':
        return each((i) => g.less(a, 0, g.negate(da[i]!), da[i]!))
      case 'sqrt':
        return scaled(() => g.div(0.5, g.max(node, TINY)))
      case 'less':
        return each((i) => g.less(a, b, rate(c)[i]!, rate(d)[i]!))
      case 'sin':
        return scaled(() => g.mul(g.cos(a), TAU))
      case 'cos':
        return scaled(() => g.mul(g.sin(a), -TAU))
      case 'exp':
        return scaled(() => node)
      case 'turn': {
        const square = g.max(g.add(g.mul(a, a), g.mul(b, b)), TINY)
        const over = g.div(1 / TAU, square)
        return each((i) => g.mul(g.sub(g.mul(b, da[i]!), g.mul(a, rate(b)[i]!)), over))
      }
      default:
        throw new Error(`no derivative of ${node.op}`)
    }
  }
  return rate
}
