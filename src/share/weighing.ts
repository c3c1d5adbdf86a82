import type { Layer } from '#billet'

/**
 * A property of the steels (how bright, how high they stand) across a stack, ready for exact averages. The property
 * W(u) is level within each sheet; u counts cells of equal height, none of which holds more than one boundary. A pixel
 * through which u runs linearly, by g along one side and h along the other, has u spread as a trapezoid:
 * p = (g+h)/2, q = |g−h|/2.
 * Near (p ≤ 1) the mean is the level before the reach plus each of three joints' step times its smoothed step.
 * Far it is a second difference of the second integral: φ + [D(u+p) − D(u+q) − D(u−q) + D(u−p)] / (g·h), with D of
 * W − φ, its drift taken off so that little is lost in the difference. D within cell c, s = u − c from its start, is
 * start + rise·s + bow·s² + kink·max(0, s − joint)².
 */
export interface Weighing {
  readonly cells: number
  /** Height of a cell, m. */
  readonly cell: number
  /** z of the first cell's start, m. */
  readonly bottom: number
  /** φ, by volume; and of the lowest and the highest sheet. */
  readonly mean: number
  readonly first: number
  readonly last: number
  /** Width of the edge between two sheets, cells; no more than half the thinnest. */
  readonly soft: number
  /** Least g·h (cells²) at which the far difference is good to 1e-4: in double, in single precision. */
  readonly least: { readonly f64: number; readonly f32: number }
  /** The five numbers of each cell. */
  readonly tables: Readonly<Record<WeighingTable, readonly number[]>>
  /**
   * The same of what a joint leaves of the stack: what repeats beyond its ends, and is read far. Left out, all of it is
   * left.
   */
  readonly joined?: Weighing
  /** How unlike the joints are: the standard deviation of what they leave, cells. */
  readonly unlike: number
  /** How far a mean can lie from φ: no more than once/g, nor than twice/(g·h), with g, h in cells. */
  readonly sway: { readonly once: number; readonly twice: number }
}
/** What joints take off the lower and the upper side of a stack. */
export interface Cut {
  readonly low: readonly Ground[]
  readonly high: readonly Ground[]
}
/** So much of a side, m, is ground off in this share of its joints. */
export interface Ground {
  readonly off: number
  readonly share: number
}
export type WeighingTable = 'start' | 'rise' | 'bow' | 'kink' | 'joint'
export const WEIGHING_TABLES: readonly WeighingTable[] = ['start', 'rise', 'bow', 'kink', 'joint']

/** Finer tables serve no picture; where a foil is thinner than this share of the stack its cell holds more sheets. */
const MOST_CELLS = 4096

/** The cells of a stack: as many as needed for one boundary each. */
export function cellsOf(layers: readonly Layer[]): number {
  const whole = heightOf(layers)
  const inner = layers.slice(1, -1).map((l) => l.thickness)
  if (inner.length === 0) return Math.max(1, layers.length)
  const edge = Math.min(layers[0]!.thickness, layers[layers.length - 1]!.thickness)
  const thinnest = Math.min(...inner, Math.max(edge, whole / MOST_CELLS))
  // A hair more than needed: a cell as high as a sheet would hold both its boundaries by rounding.
  return Math.min(MOST_CELLS, Math.ceil((whole / thinnest) * (1 + 1e-9)))
}

export function heightOf(layers: readonly Layer[]): number {
  return layers.reduce((sum, layer) => sum + layer.thickness, 0)
}

/** z of the lower side of each sheet and of the upper side of the last, the pile centred. */
export function boundariesOf(layers: readonly Layer[]): number[] {
  const edges = [-heightOf(layers) / 2]
  for (const layer of layers) edges.push(edges[edges.length - 1]! + layer.thickness)
  return edges
}

/** A sheet with what it has of the property. */
interface Weighted extends Layer {
  readonly weight: number
}

/** `weightOf` a sheet and its place in the stack. */
export function weigh(
  layers: readonly Layer[],
  weightOf: (layer: Layer, place: number) => number,
  soft = 0,
  cut?: Cut,
): Weighing {
  const laid = layers.map((layer, i): Weighted => ({ ...layer, weight: weightOf(layer, i) }))
  const whole = weighWhole(laid, soft)
  if (!cut) return whole
  const joined = weighWhole(leftOf(laid, cut), soft)
  const middle = (meanOff(cut.low) - meanOff(cut.high)) / 2
  const unlike = Math.hypot(spreadOf(cut.low), spreadOf(cut.high)) / whole.cell
  return { ...whole, unlike, joined: { ...joined, bottom: joined.bottom + middle } }
}

function spreadOf(faces: readonly Ground[]): number {
  const mean = meanOff(faces)
  return Math.sqrt(faces.reduce((sum, { off, share }) => sum + share * (off - mean) ** 2, 0))
}

/** Joints less unlike than this share of the pile are alike. */
const ALIKE = 0.01

/**
 * Runs of no more cells than this are read off the pile alone, though far: its joints are unlike, and the one or two in
 * so short a run are not what they are in the mean.
 */
export function aloneTo({ joined, unlike, cells }: Weighing): number {
  return joined && unlike > ALIKE * cells ? cells : 0
}

/** What joints leave of a pile in the mean: where they are ground unlike, some of a sheet is left by some of them. */
function leftOf(layers: readonly Weighted[], cut: Cut): Weighted[] {
  const edges = boundariesOf(layers)
  const end = edges[layers.length]!
  const ground = (faces: readonly Ground[], from: number, to: number) =>
    faces.reduce(
      (sum, { off, share }) => sum + share * Math.max(0, Math.min(off, to) - Math.max(0, from)),
      0,
    )
  const left = layers.map((layer, i) => {
    const [from, to] = [edges[i]!, edges[i + 1]!]
    const off = ground(cut.low, from + end, to + end) + ground(cut.high, end - to, end - from)
    return { ...layer, thickness: Math.max(0, layer.thickness - off) }
  })
  const half = layers.length >> 1
  const least = Math.min(...layers.map((layer) => layer.thickness)) / FINEST
  const lower = withoutSlivers(left.slice(0, half), least)
  const upper = withoutSlivers(left.slice(half).reverse(), least)
  return [...lower, ...upper.reverse()]
}

/** Left of a sheet, as a share of the thinnest of the pile, less is laid to the next sheet of its steel: tables stay small. */
const FINEST = 4

/** `sheets` from the outermost inwards. */
function withoutSlivers(sheets: readonly Weighted[], least: number): Weighted[] {
  const carried = new Map<string, Weighted>()
  return sheets.flatMap((sheet, i) => {
    const whole = together(sheet, carried.get(sheet.steel))
    const last = !sheets.some((s, k) => k > i && s.steel === sheet.steel)
    const keep = whole.thickness >= least || (last && whole.thickness > 0)
    if (keep) carried.delete(sheet.steel)
    else carried.set(sheet.steel, whole)
    return keep ? [whole] : []
  })
}

/** Two sheets as one, with as much of the property as both. */
function together(sheet: Weighted, sliver: Weighted | undefined): Weighted {
  if (!sliver || sliver.thickness === 0) return sheet
  const thickness = sheet.thickness + sliver.thickness
  const share = sliver.thickness / thickness
  return { ...sheet, thickness, weight: sheet.weight + share * (sliver.weight - sheet.weight) }
}

/** What is ground off a side, m, over its joints. */
export function meanOff(faces: readonly Ground[]): number {
  return faces.reduce((sum, { off, share }) => sum + share * off, 0)
}

function weighWhole(layers: readonly Weighted[], soft: number): Weighing {
  const cells = cellsOf(layers)
  const whole = heightOf(layers)
  const cell = whole / cells
  const bottom = -whole / 2
  const weights = layers.map((l) => l.weight)
  const mean = layers.reduce((sum, l, i) => sum + l.thickness * weights[i]!, 0) / whole
  const edges = boundariesOf(layers).map((z) => (z - bottom) / cell)
  const tables = { start: [], rise: [], bow: [], kink: [], joint: [] } as Record<
    WeighingTable,
    number[]
  >
  let [start, rise, k] = [0, 0, 0]
  for (let c = 0; c < cells; c++) {
    // The sheet the cell begins in, then the boundary within it, if any.
    while (k + 1 < weights.length && edges[k + 1]! <= c) k++
    // One at its very end is its own: the next begins beyond it.
    const inside = k + 1 < weights.length && edges[k + 1]! <= c + 1
    const joint = inside ? edges[k + 1]! - c : 1
    const bow = (weights[k]! - mean) / 2
    const kink = inside ? (weights[k + 1]! - weights[k]!) / 2 : 0
    tables.start.push(start)
    tables.rise.push(rise)
    tables.bow.push(bow)
    tables.kink.push(kink)
    tables.joint.push(joint)
    const past = 1 - joint
    start += rise + bow + kink * past * past
    rise += 2 * bow + 2 * kink * past
  }
  // A straight line has no second difference: the drift from end to end is taken off, and half the range.
  const drift = start / cells
  const low = Math.min(...tables.start.map((v, c) => v - drift * c))
  const high = Math.max(...tables.start.map((v, c) => v - drift * c))
  for (let c = 0; c < cells; c++) {
    tables.start[c] = tables.start[c]! - drift * c - (low + high) / 2
    tables.rise[c] = tables.rise[c]! - drift
  }
  const size = Math.max((high - low) / 2, 0.25)
  const least = (rounding: number) => (4 * rounding * size) / 1e-4
  // Ends of the first integral lie at boundaries: the cells' starts and the joints in them.
  const rises = tables.rise.flatMap((r, c) => [r, r + 2 * tables.bow[c]! * tables.joint[c]!])
  return {
    cells,
    cell,
    bottom,
    mean,
    first: weights[0]!,
    last: weights[weights.length - 1]!,
    soft: Math.min(soft / cell, 0.5),
    unlike: 0,
    least: { f64: least(2 ** -52), f32: least(2 ** -23) },
    tables,
    sway: { once: Math.max(...rises) - Math.min(...rises), twice: 2 * (high - low) },
  }
}

/** D at u, in cells; beyond the stack the same stack follows, as after a restack. */
function second(w: Weighing, u: number): number {
  const whole = Math.floor(u)
  const c = whole - w.cells * Math.floor((whole + 0.5) / w.cells)
  const s = u - whole
  const past = Math.max(0, s - w.tables.joint[c]!)
  return (
    w.tables.start[c]! +
    s * (w.tables.rise[c]! + s * w.tables.bow[c]!) +
    w.tables.kink[c]! * past * past
  )
}

/** A pixel's run is taken as no less than this share of its greater run, and than this many cells. */
export const THINNEST = 4e-3
export const SMALLEST = 1e-5
/** A pixel's middle is kept this far (cells) inside the stack, so that rounding shows no face the sheet opposite. */
export const INSIDE = 0.01

/** Mean of the property over a pixel about z, through which z runs by dzdu and dzdv (m): the reference. */
export function meanOver(w: Weighing, z: number, dzdu: number, dzdv: number): number {
  const [a, b] = [Math.abs(dzdu) / w.cell, Math.abs(dzdv) / w.cell]
  const g = Math.max(a, b, SMALLEST, w.soft)
  const h = Math.max(Math.min(a, b), THINNEST * g, w.soft)
  const [p, q] = [(g + h) / 2, (g - h) / 2]
  const raw = (z - w.bottom) / w.cell
  const u = Math.min(Math.max(raw, INSIDE), w.cells - INSIDE)
  if (p <= 1) return near(w, u, p, q, g * h)
  const left = (2 * p > aloneTo(w) && w.joined) || w
  const scale = w.cell / left.cell
  // A middle beyond the whole stack lies in no joint: there the outer sheet goes on.
  const outside = Math.min(1, Math.max(0, -raw, raw - w.cells) / p)
  const mean = far(left, (z - left.bottom) / left.cell, p * scale, q * scale)
  return mean + outside * ((raw < 0 ? left.first : left.last) - mean)
}

function far(w: Weighing, raw: number, p: number, q: number): number {
  const u = Math.min(Math.max(raw, INSIDE), w.cells - INSIDE)
  const difference = second(w, u + p) - second(w, u + q) - second(w, u - q) + second(w, u - p)
  return w.mean + difference / Math.max(p * p - q * q, w.least.f64)
}

function near(w: Weighing, u: number, p: number, q: number, product: number): number {
  const c = Math.floor(u)
  const cell = (i: number) => Math.min(Math.max(c + i, 0), w.cells - 1)
  let mean = w.mean + 2 * w.tables.bow[cell(-1)]!
  for (const i of [-1, 0, 1]) {
    if (c + i < 0 || c + i >= w.cells) continue
    const t = Math.min(Math.max(u - (c + i) - w.tables.joint[c + i]!, -p), p)
    const half = (v: number) => Math.max(0, v) ** 2
    const step = half(t + p) - half(t + q) - half(t - q) + half(t - p)
    mean += (w.tables.kink[c + i]! * step) / product
  }
  return mean
}
