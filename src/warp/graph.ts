/**
 * Arithmetic written down instead of done. A kind of warp builds its map here once; interpreting tiles, WebAssembly,
 * shader text, C text and derivatives are readings of the result. Constants are folded, common parts shared, and
 * factors or terms that do not depend on the point are drawn together, so that two drawings in a row cost one
 * multiplication a side.
 */
export type OpName =
  | 'const'
  | 'input'
  | 'param'
  | 'fetch'
  | 'add'
  | 'sub'
  | 'mul'
  | 'div'
  | 'min'
  | 'max'
  | 'floor'
  | 'abs'
  | 'sqrt'
  | 'less'
  | 'sin'
  | 'cos'
  | 'exp'
  | 'turn'

/**
 * One operation. `at` is the constant, the slot of an input or parameter, or a fetch's fixed offset; `table` a fetch's
 * table. `uniform`: the same for all points. `sin` and `cos` take turns, `turn` gives turns of (sine, cosine) parts.
 */
export interface Node {
  readonly id: number
  readonly op: OpName
  readonly args: readonly Node[]
  readonly at: number
  readonly table: number
  readonly uniform: boolean
}
export type Term = Node | number

/** A table of numbers: `slot` says whose, `values` are given only where the arithmetic itself fixes them. */
export interface Table {
  readonly slot: number
  readonly length: number
  readonly values?: readonly number[]
}

/** The plain operations. Comparisons run in the order of the processor's own minimum, so that readings agree on ±0. */
export function doArithmetic(op: OpName, a: number, b: number, c: number, d: number): number {
  switch (op) {
    case 'add':
      return a + b
    case 'sub':
      return a - b
    case 'mul':
      return a * b
    case 'div':
      return a / b
    case 'min':
      return b < a ? b : a
    case 'max':
      return a < b ? b : a
    case 'floor':
      return Math.floor(a)
    case 'abs':
      return Math.abs(a)
    case 'sqrt':
      return Math.sqrt(a)
    case 'less':
      return a < b ? c : d
    default:
      throw new Error(`${op} is not plain arithmetic`)
  }
}

const FOLDED: ReadonlySet<OpName> = new Set<OpName>([
  'add',
  'sub',
  'mul',
  'div',
  'min',
  'max',
  'floor',
  'abs',
  'sqrt',
  'less',
])

export class Graph {
  readonly nodes: Node[] = []
  readonly tables: Table[] = []
  private readonly known = new Map<string, Node>()

  private put(op: OpName, args: readonly Node[], at = 0, table = -1): Node {
    if (FOLDED.has(op) && args.every((a) => a.op === 'const')) {
      const [a, b, c, d] = args
      return this.constant(doArithmetic(op, a!.at, b?.at ?? 0, c?.at ?? 0, d?.at ?? 0))
    }
    const key = `${op} ${args.map((a) => a.id).join(' ')} ${Object.is(at, -0) ? '-0' : at} ${table}`
    const seen = this.known.get(key)
    if (seen) return seen
    const uniform =
      op === 'const' ||
      op === 'param' ||
      (op !== 'input' && op !== 'fetch' && args.every((a) => a.uniform))
    const node: Node = { id: this.nodes.length, op, args, at, table, uniform }
    this.nodes.push(node)
    this.known.set(key, node)
    return node
  }
  private node(term: Term): Node {
    return typeof term === 'number' ? this.constant(term) : term
  }

  constant(value: number): Node {
    return this.put('const', [], value)
  }
  input(slot: number): Node {
    return this.put('input', [], slot)
  }
  parameter(slot: number): Node {
    return this.put('param', [], slot)
  }
  /** A table handed in with the numbers (`slot`), or one the arithmetic itself fixes (`values`). */
  table(slot: number, length: number, values?: readonly number[]): number {
    const same = this.tables.findIndex(
      (t) => t.slot === slot && t.length === length && t.values === values,
    )
    return same >= 0 ? same : this.tables.push({ slot, length, values }) - 1
  }

  add(a: Term, b: Term, ...more: readonly Term[]): Node {
    const sum = this.addTwo(this.node(a), this.node(b))
    return more.length === 0 ? sum : this.add(sum, ...(more as [Term, ...Term[]]))
  }
  private addTwo(a: Node, b: Node): Node {
    if (a.op === 'const' && a.at === 0) return b
    if (b.op === 'const' && b.at === 0) return a
    if (a.uniform && !b.uniform) return this.addTwo(b, a)
    // (x + u) + v = x + (u + v): the terms that do not depend on the point are added once for all points.
    if (b.uniform && !a.uniform && a.op === 'add' && a.args[1]!.uniform)
      return this.addTwo(a.args[0]!, this.addTwo(a.args[1]!, b))
    return a.uniform === b.uniform && b.id < a.id
      ? this.put('add', [b, a])
      : this.put('add', [a, b])
  }
  sub(a: Term, b: Term): Node {
    const [p, q] = [this.node(a), this.node(b)]
    if (q.op === 'const' && q.at === 0) return p
    if (p === q) return this.constant(0)
    if (q.uniform && !p.uniform) return this.addTwo(p, this.negate(q))
    return this.put('sub', [p, q])
  }
  negate(a: Term): Node {
    const p = this.node(a)
    if (p.op === 'sub' && p.args[0]!.op === 'const' && p.args[0]!.at === 0) return p.args[1]!
    return this.put('sub', [this.constant(0), p])
  }
  mul(a: Term, b: Term, ...more: readonly Term[]): Node {
    const product = this.mulTwo(this.node(a), this.node(b))
    return more.length === 0 ? product : this.mul(product, ...(more as [Term, ...Term[]]))
  }
  private mulTwo(a: Node, b: Node): Node {
    if (a.op === 'const' && (a.at === 1 || a.at === 0)) return a.at === 1 ? b : a
    if (b.op === 'const' && (b.at === 1 || b.at === 0)) return b.at === 1 ? a : b
    if (a.uniform && !b.uniform) return this.mulTwo(b, a)
    if (b.uniform && !a.uniform && a.op === 'mul' && a.args[1]!.uniform)
      return this.mulTwo(a.args[0]!, this.mulTwo(a.args[1]!, b))
    return a.uniform === b.uniform && b.id < a.id
      ? this.put('mul', [b, a])
      : this.put('mul', [a, b])
  }
  div(a: Term, b: Term): Node {
    const [p, q] = [this.node(a), this.node(b)]
    if (q.op === 'const' && q.at === 1) return p
    if (q.uniform && !p.uniform) return this.mulTwo(p, this.put('div', [this.constant(1), q]))
    if (p.op === 'const' && p.at === 0) return p
    return this.put('div', [p, q])
  }
  min(a: Term, b: Term): Node {
    return this.put('min', [this.node(a), this.node(b)])
  }
  max(a: Term, b: Term): Node {
    return this.put('max', [this.node(a), this.node(b)])
  }
  clamp(a: Term, low: Term, high: Term): Node {
    return this.min(this.max(a, low), high)
  }
  floor(a: Term): Node {
    return this.put('floor', [this.node(a)])
  }
  abs(a: Term): Node {
    return this.put('abs', [this.node(a)])
  }
  sqrt(a: Term): Node {
    return this.put('sqrt', [this.node(a)])
  }
  /** `then` where a < b, else `otherwise`. */
  less(a: Term, b: Term, then: Term, otherwise: Term): Node {
    const [p, q, t, o] = [this.node(a), this.node(b), this.node(then), this.node(otherwise)]
    return t === o ? t : this.put('less', [p, q, t, o])
  }
  /** Entry `index + offset` of a table. The caller keeps a whole index within it. */
  fetch(table: number, index: Term, offset = 0): Node {
    const at = this.node(index)
    return at.op === 'const'
      ? this.put('fetch', [this.constant(0)], at.at + offset, table)
      : this.put('fetch', [at], offset, table)
  }
  /** Sine of an angle in turns. */
  sin(turns: Term): Node {
    return this.put('sin', [this.node(turns)])
  }
  /** Cosine of an angle in turns. */
  cos(turns: Term): Node {
    return this.put('cos', [this.node(turns)])
  }
  exp(a: Term): Node {
    return this.put('exp', [this.node(a)])
  }
  /** Turns (−½ … ½) from the cosine axis to the point (cosine part, sine part); 0 at the origin. */
  turn(sine: Term, cosine: Term): Node {
    return this.put('turn', [this.node(sine), this.node(cosine)])
  }
}
