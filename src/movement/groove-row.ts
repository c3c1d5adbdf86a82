import type { GrooveRow } from '#billet'
import { grooveShape } from './groove-shape.ts'

/**
 * Depths of a row of grooves at `count` places evenly along the bar, ends included, in shares of its
 * height; `slender` is its length over its height. The row is moved along by less than half a pitch
 * so that just the row's mean is cut away: a stretch between two ends holds a broken number of
 * grooves, and the last is cut as far as it goes.
 */
export function depthsOf(row: GrooveRow, count: number, slender: number): Float64Array {
  const key = `${JSON.stringify(row)} ${count} ${slender}`
  const seen = known.get(key)
  if (seen) return seen
  const depths = place(row, count, slender)
  known.set(key, depths)
  if (known.size > KEPT) known.delete(known.keys().next().value as string)
  return depths
}

const known = new Map<string, Float64Array>()
const KEPT = 12

function place(row: GrooveRow, count: number, slender: number): Float64Array {
  const depthAt = profileOf(row, slender)
  const cut = (shift: number) => sample(row, depthAt, shift, count)
  const shift = nearestShift((s) => meanOf(cut(s)) - row.mean)
  const depths = cut(shift)
  // What sampling straight walls leaves over is taken up by the depth.
  const scale = row.mean / meanOf(depths)
  return depths.map((depth) => depth * scale)
}

function sample(
  row: GrooveRow,
  depthAt: (away: number) => number,
  shift: number,
  count: number,
): Float64Array {
  const depths = new Float64Array(count)
  const first = row.first + shift * row.pitch
  for (let i = 0; i < count; i++) {
    const x = i / (count - 1)
    if (x < row.from || x > row.to) continue
    const k = Math.round((x - first) / row.pitch)
    depths[i] = depthAt(x - (first + k * row.pitch))
  }
  return depths
}

/** Mean over the bar, the places joined by straight lines. */
function meanOf(depths: Float64Array): number {
  const n = depths.length - 1
  let sum = -(depths[0] + depths[n]) / 2
  for (const depth of depths) sum += depth
  return sum / n
}

/** The shift nearest to none, in pitches, at which the excess is nothing; failing that, where it is least. */
function nearestShift(excess: (shift: number) => number): number {
  const steps = 12
  const grid = Array.from({ length: steps + 1 }, (_, i) => -0.5 + i / steps)
  const over = grid.map(excess)
  let best: readonly [number, number] | undefined
  for (let i = 1; i <= steps; i++) {
    if (over[i - 1] > 0 === over[i] > 0) continue
    const [a, b] = [grid[i - 1], grid[i]]
    if (!best || Math.abs(a + b) < Math.abs(best[0] + best[1])) best = [a, b]
  }
  if (!best) return grid[over.map(Math.abs).indexOf(Math.min(...over.map(Math.abs)))]
  let [a, b] = best
  const rising = excess(b) > 0
  for (let i = 0; i < 20; i++) {
    const middle = (a + b) / 2
    if (excess(middle) > 0 === rising) b = middle
    else a = middle
  }
  return (a + b) / 2
}

/** Depth at a distance from the middle of one groove (share of the length), as a share of the height. */
function profileOf(row: GrooveRow, slender: number): (away: number) => number {
  if (row.shape === 'ridges') {
    const wave = waveOfMean(row.mean / row.depth / (row.to - row.from))
    return (away) => row.depth * wave(away / row.pitch)
  }
  const shape = grooveShape(row.shape, row.width * slender, row.depth)
  return (away) => shape.depthAt(away * slender)
}

/** A wave from 1 at its middle to 0, as sharp or as broad as its mean asks: ((1 + cos)/2)^p or its like upside down. */
export function waveOfMean(mean: number): (turns: number) => number {
  const power = powerOf(Math.min(mean, 1 - mean))
  const plain = (turns: number) => ((1 + Math.cos(2 * Math.PI * turns)) / 2) ** power
  return mean <= 0.5 ? plain : (turns) => 1 - plain(turns + 0.5)
}

/** p for which the mean of ((1 + cos)/2)^p over a turn is this, by halving. */
function powerOf(mean: number): number {
  const of = (power: number) => {
    const n = 512
    let sum = 0
    for (let i = 0; i < n; i++) sum += ((1 + Math.cos((2 * Math.PI * (i + 0.5)) / n)) / 2) ** power
    return sum / n
  }
  let [low, high] = [1, 4000]
  for (let i = 0; i < 40; i++) {
    const middle = Math.sqrt(low * high)
    if (of(middle) > mean) low = middle
    else high = middle
  }
  return low
}
