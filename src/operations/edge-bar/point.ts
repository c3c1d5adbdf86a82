/** The outline of a core the edge bar goes round: straight sides, and a point at its end. */
export interface Point {
  readonly form: 'rounded' | 'pointed'
  /** Length along the bar over which it narrows, m. */
  readonly length: number
  /** Width of the bar where the point begins, m. */
  readonly width: number
}

/** Length round the point from one side to the other, m: half an ellipse, or two straight lines. */
export function roundThePoint({ form, length, width }: Point): number {
  const half = width / 2
  return form === 'pointed' ? 2 * Math.hypot(length, half) : ellipsePerimeter(length, half) / 2
}

/** Area cut off the corners of the plain bar to make the point, m². */
export function cornersOff({ form, length, width }: Point): number {
  return length * width * (form === 'pointed' ? 1 / 2 : 1 - Math.PI / 4)
}

/** Sharpest curvature of the point, 1/m: of a half ellipse at its tip. */
export function tipCurvature({ form, length, width }: Point): number {
  return form === 'pointed' ? Infinity : length / (width / 2) ** 2
}

/** By the arithmetic-geometric mean (Gauss): exact to rounding in six steps. */
function ellipsePerimeter(a: number, b: number): number {
  let [x, y] = [Math.max(a, b), Math.min(a, b)]
  if (y === 0) return 4 * x
  let sum = 0
  let power = 0.5
  const first = x
  sum += power * (x * x - y * y)
  for (let i = 0; i < 40 && Math.abs(x - y) > 1e-16 * first; i++) {
    const [mean, root, half] = [(x + y) / 2, Math.sqrt(x * y), (x - y) / 2]
    power *= 2
    sum += power * half * half
    ;[x, y] = [mean, root]
  }
  return ((2 * Math.PI) / x) * (first * first - sum)
}
