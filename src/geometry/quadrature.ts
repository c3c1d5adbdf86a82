/** Nodes and weights of Gauss–Legendre quadrature on −1…1 (Newton on the three-term recurrence). */
function gaussLegendre(n: number): { readonly x: Float64Array; readonly w: Float64Array } {
  const x = new Float64Array(n)
  const w = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    let z = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5))
    let slope = 1
    for (let turn = 0; turn < 50; turn++) {
      let p = 1
      let before = 0
      for (let j = 0; j < n; j++) [p, before] = [((2 * j + 1) * z * p - j * before) / (j + 1), p]
      slope = (n * (z * p - before)) / (z * z - 1)
      const step = p / slope
      z -= step
      if (Math.abs(step) < 1e-15) break
    }
    x[i] = z
    w[i] = 2 / ((1 - z * z) * slope * slope)
  }
  return { x, w }
}

const { x: node, w: weight } = gaussLegendre(14)

/** Places and weights of the rule below on −1…1, with the sine already in them. */
const place = node.map((t) => Math.sin((Math.PI / 2) * t))
const share = node.map((t, i) => (Math.PI / 2) * Math.cos((Math.PI / 2) * t) * weight[i])

/**
 * Integral of f from a to b. f must be smooth inside, and may start or end like a square root
 * (the side of a round bar, a blunt point): y = m + h·sin θ makes such ends smooth in θ.
 * 14 points; about 1e-12 relative for arcs of circles, parabolas, straight lines. f is never
 * asked at a or b.
 */
export function integrate(f: (y: number) => number, a: number, b: number): number {
  if (!(b > a)) return 0
  const middle = (a + b) / 2
  const half = (b - a) / 2
  let sum = 0
  for (let i = 0; i < place.length; i++) sum += share[i] * f(middle + half * place[i])
  return sum * half
}

/** Integral over a chain of smooth pieces; `breaks` ascending. */
export function integratePieces(f: (y: number) => number, breaks: readonly number[]): number {
  let sum = 0
  for (let i = 1; i < breaks.length; i++) sum += integrate(f, breaks[i - 1], breaks[i])
  return sum
}

/**
 * Integral of a function with kinks at unknown places: halves a piece until two halves agree with
 * the whole within `within` (absolute, shared out by length) or it has been halved 12 times.
 */
export function integrateAdaptively(
  f: (y: number) => number,
  breaks: readonly number[],
  within: number,
): number {
  const length = breaks[breaks.length - 1] - breaks[0]
  const refine = (a: number, b: number, whole: number, depth: number): number => {
    const middle = (a + b) / 2
    const left = integrateFew(f, a, middle)
    const right = integrateFew(f, middle, b)
    const allowed = (within * (b - a)) / length
    if (depth === 0 || Math.abs(left + right - whole) <= allowed) return left + right
    return refine(a, middle, left, depth - 1) + refine(middle, b, right, depth - 1)
  }
  let sum = 0
  for (let i = 1; i < breaks.length; i++) {
    const [a, b] = [breaks[i - 1], breaks[i]]
    if (b > a) sum += refine(a, b, integrateFew(f, a, b), 12)
  }
  return sum
}

const few = gaussLegendre(8)
const fewPlace = few.x.map((t) => Math.sin((Math.PI / 2) * t))
const fewShare = few.x.map((t, i) => (Math.PI / 2) * Math.cos((Math.PI / 2) * t) * few.w[i])

function integrateFew(f: (y: number) => number, a: number, b: number): number {
  const middle = (a + b) / 2
  const half = (b - a) / 2
  let sum = 0
  for (let i = 0; i < fewPlace.length; i++) sum += fewShare[i] * f(middle + half * fewPlace[i])
  return sum * half
}

/** Where f passes zero between a and b, by halving, to `within`; f(a) and f(b) must differ in sign. */
export function findZero(f: (x: number) => number, a: number, b: number, within = 0): number {
  let [low, high] = [a, b]
  const lowIsPositive = f(low) > 0
  for (let i = 0; i < 80 && high - low > within; i++) {
    const middle = (low + high) / 2
    if (middle === low || middle === high) break
    if (f(middle) > 0 === lowIsPositive) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** The nodes and weights of `integratePieces`, for several integrals of one function at once. */
export function nodesOf(
  breaks: readonly number[],
): { readonly at: number; readonly weight: number }[] {
  const nodes = []
  for (let i = 1; i < breaks.length; i++) {
    const [a, b] = [breaks[i - 1], breaks[i]]
    if (!(b > a)) continue
    const [middle, half] = [(a + b) / 2, (b - a) / 2]
    for (let k = 0; k < place.length; k++)
      nodes.push({ at: middle + half * place[k], weight: half * share[k] })
  }
  return nodes
}
