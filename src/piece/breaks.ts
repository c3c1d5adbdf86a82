import type { HeightField } from '#geometry'

/** Puts numbers in order and inside the first and last, for `yBreaks`. */
export function orderBreaks(low: number, high: number, between: readonly number[]): number[] {
  const inside = between.map((y) => Math.min(Math.max(y, low), high)).sort((a, b) => a - b)
  return [low, ...inside, high]
}

/** Ascending breaks inside the ends, those closer than a nanometre taken as one. */
export function joinBreaks(length: number, between: readonly number[]): number[] {
  const all = [...between.filter((x) => x > 1e-9 && x < length - 1e-9)].sort((a, b) => a - b)
  return [0, ...all.filter((x, i) => i === 0 || x - all[i - 1] > 1e-9), length]
}

/** The field moved by dy across. */
export function moveAcross(field: HeightField, dy: number): HeightField {
  return {
    xBreaks: field.xBreaks,
    yBreaks: (x) => field.yBreaks(x).map((y) => y + dy),
    top: (x, y) => field.top(x, y - dy),
    bottom: (x, y) => field.bottom(x, y - dy),
  }
}

/** How far the sides reach: least and greatest y, to about a nanometre. */
export function sideLimits(field: HeightField): readonly [number, number] {
  const sides = (x: number) => {
    const ys = field.yBreaks(x)
    return [-ys[0], ys[ys.length - 1]] as const
  }
  const reach = (side: 0 | 1) => {
    let most = -Infinity
    for (let i = 1; i < field.xBreaks.length; i++) {
      const [a, b] = [field.xBreaks[i - 1] + 1e-13, field.xBreaks[i] - 1e-13]
      const n = 16
      const at = (k: number) => a + ((b - a) * k) / n
      let best = 0
      for (let k = 1; k <= n; k++) if (sides(at(k))[side] > sides(at(best))[side]) best = k
      let [low, high] = [at(Math.max(0, best - 1)), at(Math.min(n, best + 1))]
      for (let turn = 0; turn < 60 && high - low > 1e-12; turn++) {
        const [p, q] = [low + (high - low) / 3, high - (high - low) / 3]
        if (sides(p)[side] < sides(q)[side]) low = p
        else high = q
      }
      most = Math.max(most, sides(at(best))[side], sides((low + high) / 2)[side])
    }
    return most
  }
  return [-reach(0), reach(1)]
}
