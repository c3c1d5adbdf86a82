/**
 * Which round and which plate harden alike: those whose middles pass half the temperature
 * difference in the same time. Exact series, constant properties: for ranking, not for promises.
 */
export type SectionShape = 'round' | 'plate'

function bessel(order: 0 | 1, x: number): number {
  // Bessel's integral; the trapezoid rule is exact to rounding for periodic integrands.
  const n = 28
  let sum = 0
  for (let k = 0; k < n; k++) {
    const t = (Math.PI * (k + 0.5)) / n
    sum += Math.cos(order * t - x * Math.sin(t))
  }
  return sum / n
}

function root(low: number, high: number, f: (x: number) => number): number {
  let a = low
  let b = high
  const sign = f(a) > 0
  for (let i = 0; i < 48; i++) {
    const m = (a + b) / 2
    if (f(m) > 0 === sign) a = m
    else b = m
  }
  return (a + b) / 2
}

// Zeros of J1 and J0: between them lie the roots of z J1(z) = Bi J0(z) (Abramowitz & Stegun 9.5).
const j0 = [2.404825557695773, 5.520078110286311, 8.653727912911013]
const j1 = [0, 3.831705970207512, 7.015586669815619]

/** Fourier number, on half the thickness, at which the middle has gone half way: three terms. */
export function halfTime(shape: SectionShape, biot: number): number {
  const bi = Math.min(Math.max(biot, 1e-6), 1e6)
  const terms = [0, 1, 2].map((n) => {
    if (shape === 'round') {
      const z = root(j1[n]! + 1e-12, j0[n]!, (x) => x * bessel(1, x) - bi * bessel(0, x))
      const a = bessel(0, z)
      const b = bessel(1, z)
      return [z, ((2 / z) * b) / (a * a + b * b)] as const
    }
    const z = root(
      n * Math.PI + 1e-12,
      (n + 0.5) * Math.PI - 1e-12,
      (x) => x * Math.sin(x) - bi * Math.cos(x),
    )
    return [z, (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z))] as const
  })
  const left = (fo: number) => terms.reduce((s, [z, c]) => s + c * Math.exp(-z * z * fo), 0) - 0.5
  const first = terms[0]![0]
  return root(0.02, 3 / (first * first) + 0.05, left)
}

// Half-times by the logarithm of the Biot number, filled at first need: the series is dear.
const step = 0.125
const lowest = -14
const tables: Partial<Record<SectionShape, Float64Array>> = {}

function tabledHalfTime(shape: SectionShape, biot: number): number {
  const table = (tables[shape] ??= Float64Array.from({ length: 225 }, (_, i) =>
    Math.log(halfTime(shape, Math.exp(lowest + i * step))),
  ))
  const place = Math.min(Math.max((Math.log(Math.max(biot, 1e-9)) - lowest) / step, 1), 222)
  const i = Math.min(Math.floor(place), 221)
  const t = place - i
  const [a, b, c, d] = [table[i - 1]!, table[i]!, table[i + 1]!, table[i + 2]!]
  // cubic through the two points on each side
  const cubic = b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)))
  return Math.exp(cubic)
}

/** Thickness or diameter, m, that hardens at its middle as the ideal diameter says, in one quench. */
export function criticalSize(shape: SectionShape, idealDiameter: number, severity: number): number {
  const ideal = Math.min(Math.max(idealDiameter || 0, 1e-6), 2)
  const h = Math.min(Math.max(severity || 0, 1e-3), 1e5)
  const want = tabledHalfTime('round', 1e5) * ideal * ideal
  return root(1e-9, 3, (d) => tabledHalfTime(shape, h * d) * d * d - want)
}
