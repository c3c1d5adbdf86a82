import type { Problem } from '#problem'
import { type Composition, percent } from '#steel'
import { outOfRange } from '../estimate.ts'
import { type TemperatureHistory, integrateRate, tidyHistory } from '../history.ts'
import { type Matrix, type NickelSet, alloyed, matrixOf } from '../mobility/activity.ts'
import { activityLaw, fickLaw, heldFace, stillBelow } from '../mobility/carbon-law.ts'
import { agren } from '../mobility/diffusivity.ts'
import { type Spell, march } from '../march/march.ts'
import { type Reduction, type Zone, reduceStack } from './stack-symmetry.ts'

export interface SteelLayer {
  readonly composition: Composition
  /** m, at the start of the history. */
  readonly thickness: number
  /** Carbon across the layer, wt%, evenly spaced; left out, the composition's carbon throughout. */
  readonly carbon?: readonly number[]
}

export interface CarbonHistory {
  readonly points: TemperatureHistory
  /** Thickness multiplied by `factor` at `time`: 0.8 for a heat that thins the stack by a fifth. */
  readonly thinning?: readonly { readonly time: number; readonly factor: number }[]
}

export interface CarbonOptions {
  /** Finite volumes in each whole layer; a repeating pair then has twice as many. Default 12. */
  readonly nodesPerLayer?: number
  /** Error allowed in each step, wt%. Default 3e-4: about 1e-4 at the end of a route. */
  readonly tolerance?: number
  /** What carbon follows: its activity (default), or its own concentration. */
  readonly driving?: 'activity' | 'fick'
  /** The outside: sealed (default), or its carbon held at `surfaceCarbon` by the fire. */
  readonly surface?: 'sealed' | 'open'
  /** wt% at an open surface. Default 0: an oxidising fire. */
  readonly surfaceCarbon?: number
  readonly nickelSet?: NickelSet
}

export interface LayerCarbon {
  readonly mean: number
  readonly lowest: number
  readonly highest: number
  /** Carbon across the layer from the first face to the last, wt%, evenly spaced. */
  readonly across: readonly number[]
}

export interface CarbonOutcome {
  /** One for each layer given, in order. */
  readonly layers: readonly LayerCarbon[]
  /** Thickness at the end over thickness at the start. */
  readonly stretch: number
  readonly reduction: Pick<Reduction, 'kind' | 'unit' | 'repeats'> & { readonly nodes: number }
  readonly steps: number
  /** Carbon gained or lost by rounding, against what was laid; an open surface is not counted. */
  readonly drift: number
  /** Carbon lost through open surfaces, as a share of what was laid. */
  readonly lost: number
  readonly notes: readonly string[]
  readonly outOfRange: readonly Problem[]
}

/** Units kept at each end of a long repeating run: what a face does reaches no deeper than this. */
const deepest = 24

/**
 * Carbon in every layer after a temperature history: one-dimensional finite volumes on a material
 * coordinate that thins with each step, Ågren mobility, activity as the driving force. Symmetry of
 * the stack is used, so the cost does not grow with the number of repeats. Never throws; nothing
 * it returns is NaN.
 */
export function evolveCarbon(
  layers: readonly SteelLayer[],
  history: CarbonHistory,
  options: CarbonOptions = {},
): CarbonOutcome {
  const nodes = Math.min(Math.max(Math.round(options.nodesPerLayer ?? 12), 2), 2000)
  const tolerance = Math.min(Math.max(options.tolerance ?? 3e-4, 1e-10), 0.01)
  const open = options.surface === 'open'
  const good = layers.filter((l) => l.thickness > 0 && Number.isFinite(l.thickness))
  const spells = spellsOf(history)
  const notes: string[] = []
  const warnings: Problem[] = rangeWarnings(good, history, spells)
  if (good.length < layers.length) notes.push('Layers without thickness were left out.')
  const stretch = spells[spells.length - 1]?.stretch ?? 1
  if (good.length === 0) {
    return {
      layers: [],
      stretch,
      reduction: { kind: 'whole', unit: 0, repeats: 0, nodes: 0 },
      steps: 0,
      drift: 0,
      lost: 0,
      notes,
      outOfRange: warnings,
    }
  }
  const keys = good.map(keyOf)
  const reduction = reduceStack(keys, depthFor(good, spells), !open)
  const solved = reduction.zones.map((zone) =>
    solveZone(zone, good, spells, nodes, tolerance, open, options),
  )
  const lost = open ? lossOf(solved, reduction) : 0
  const drift = Math.max(
    ...solved.map((s, i) => (open && reduction.zones[i]!.surface ? 0 : Math.abs(s.drift))),
  )
  if (reduction.kind === 'repeat') notes.push(repeatNote(reduction, solved))
  if (solved.some((s) => s.unfinished)) notes.push('The march was stopped at its step limit.')
  const outside = new Set(
    good.flatMap((l) => ['Mo', 'V', 'W'].filter((e) => percent(l.composition, e as 'Mo') > 0.1)),
  )
  if (outside.size > 0) {
    notes.push(`${[...outside].join(', ')} not in the activity model: counted as iron.`)
  }
  if (good.some((l) => alloyed.some((m) => m === 'Ni' && percent(l.composition, m) > 0.2))) {
    notes.push('Nickel: two published descriptions differ by about 0.01 wt% carbon on each side.')
  }
  return {
    layers: good.map((_, i) => layerOf(reduction, solved, i)),
    stretch,
    reduction: {
      kind: reduction.kind,
      unit: reduction.unit,
      repeats: reduction.repeats,
      nodes: solved.reduce((sum, s) => sum + s.nodes, 0),
    },
    steps: solved.reduce((sum, s) => sum + s.steps, 0),
    drift,
    lost,
    notes,
    outOfRange: warnings,
  }
}

/** Straight spells of the history, cut where the stack is thinned and where austenite begins. */
export function spellsOf(history: CarbonHistory): Spell[] {
  const points = tidyHistory(history.points)
  const cuts = (history.thinning ?? [])
    .filter((c) => c.factor > 0 && Number.isFinite(c.factor) && Number.isFinite(c.time))
    .map((c) => ({ time: c.time, factor: Math.min(Math.max(c.factor, 1e-3), 1e3) }))
    .sort((a, b) => a.time - b.time)
  const spells: Spell[] = []
  let stretch = 1
  let next = 0
  const start = points[0]?.time ?? 0
  while (next < cuts.length && cuts[next]!.time <= start)
    stretch = thinned(stretch, cuts[next++]!.factor)
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!
    const b = points[i]!
    const span = b.time - a.time
    const at = (time: number) =>
      span > 0
        ? a.temperature + ((b.temperature - a.temperature) * (time - a.time)) / span
        : b.temperature
    const breaks = [b.time]
    const rise = b.temperature - a.temperature
    if ((a.temperature - stillBelow) * (b.temperature - stillBelow) < 0)
      breaks.push(a.time + (span * (stillBelow - a.temperature)) / rise)
    for (let k = next; k < cuts.length && cuts[k]!.time <= b.time; k++) breaks.push(cuts[k]!.time)
    let from = a.time
    for (const to of breaks.sort((x, y) => x - y)) {
      if (to > from) {
        // Kept clear of the threshold itself, so that a spell is hot or cold throughout.
        const hot = at((from + to) / 2) >= stillBelow
        const side = (t: number) => (hot ? Math.max(t, stillBelow) : Math.min(t, stillBelow - 1e-6))
        spells.push({ seconds: to - from, from: side(at(from)), to: side(at(to)), stretch })
      }
      from = Math.max(from, to)
      while (next < cuts.length && cuts[next]!.time <= from)
        stretch = thinned(stretch, cuts[next++]!.factor)
    }
  }
  while (next < cuts.length) stretch = thinned(stretch, cuts[next++]!.factor)
  // A thinning after the last point still counts for the thickness at the end.
  const hot = spells.filter((s) => Math.max(s.from, s.to) >= stillBelow)
  hot.push({ seconds: 0, from: 293.15, to: 293.15, stretch })
  return hot
}

/** Thickness after one more thinning, held to what a bar can be drawn or upset to. */
function thinned(stretch: number, factor: number): number {
  return Math.min(Math.max(stretch * factor, 1e-4), 1e4)
}

/** Sum of D dt over stretch², m²: how far carbon has spread, on the starting thickness. */
export function spreadOf(carbon: number, spells: readonly Spell[]): number {
  return spells.reduce((sum, s) => {
    const piece = [
      { time: 0, temperature: s.from },
      { time: s.seconds, temperature: s.to },
    ]
    return sum + integrateRate(piece, (t) => agren(carbon, Math.min(t, 1650))) / s.stretch ** 2
  }, 0)
}

function keyOf(layer: SteelLayer): string {
  const metals = alloyed.map((m) => percent(layer.composition, m)).join(',')
  const carbon =
    layer.carbon === undefined ? percent(layer.composition, 'C') : layer.carbon.join(',')
  return `${layer.thickness.toPrecision(12)}|${metals}|${carbon}`
}

function depthFor(layers: readonly SteelLayer[], spells: readonly Spell[]): number {
  const pair = layers.slice(0, 2).reduce((sum, l) => sum + l.thickness, 0)
  const reach = 4 * Math.sqrt(spreadOf(0.8, spells))
  return Math.min(deepest, Math.max(3, Math.ceil(reach / pair)))
}

interface SolvedZone {
  /** Carbon of each segment's cells, from the outside in. */
  readonly bySegment: readonly (readonly number[])[]
  readonly shares: readonly number[]
  readonly nodes: number
  readonly steps: number
  readonly drift: number
  readonly before: number
  readonly after: number
  readonly thickness: number
  readonly unfinished: boolean
}

function solveZone(
  zone: Zone,
  layers: readonly SteelLayer[],
  spells: readonly Spell[],
  nodesPerLayer: number,
  tolerance: number,
  open: boolean,
  options: CarbonOptions,
): SolvedZone {
  const counts = zone.segments.map((s) => Math.max(2, Math.round(nodesPerLayer * s.share)))
  const n = counts.reduce((sum, c) => sum + c, 0)
  const width = new Float64Array(n)
  const carbon = new Float64Array(n)
  const matrixOfNode = new Int32Array(n)
  let at = 0
  // One matrix a steel, not one a layer: the activity sums are shared.
  const metals = new Map<Composition, number>()
  const matrices: Matrix[] = []
  zone.segments.forEach((segment, k) => {
    const layer = layers[segment.layer]!
    const known = metals.get(layer.composition) ?? matrices.length
    if (known === matrices.length) {
      metals.set(layer.composition, known)
      matrices.push(matrixOf(layer.composition, options.nickelSet))
    }
    for (let i = 0; i < counts[k]!; i++) {
      width[at] = (layer.thickness * segment.share) / counts[k]!
      carbon[at] = startingCarbon(layer, ((i + 0.5) / counts[k]!) * segment.share)
      matrixOfNode[at++] = known
    }
  })
  const law = options.driving === 'fick' ? fickLaw() : activityLaw(matrices, matrixOfNode)
  const total = () => carbon.reduce((sum, c, i) => sum + c * width[i]!, 0)
  const before = total()
  const held =
    open && zone.surface ? Math.min(Math.max(options.surfaceCarbon ?? 0, 0), 2) : undefined
  const row = { width, value: carbon, law, ends: zone.ends ?? ('sealed' as const) }
  const report = march(
    held === undefined ? row : { ...row, skin: heldFace(held, law) },
    spells,
    tolerance,
  )
  const after = total()
  const bySegment: number[][] = []
  at = 0
  for (const count of counts) {
    bySegment.push(Array.from(carbon.subarray(at, at + count)))
    at += count
  }
  return {
    bySegment,
    shares: zone.segments.map((s) => s.share),
    nodes: n,
    steps: report.steps,
    drift: before > 0 ? (after - before) / before : after - before,
    before,
    after,
    thickness: width.reduce((sum, w) => sum + w, 0),
    unfinished: report.unfinished,
  }
}

function startingCarbon(layer: SteelLayer, place: number): number {
  const given = layer.carbon
  const one = (c: number | undefined) => (c !== undefined && c > 0 ? Math.min(c, 6.6) : 0)
  if (given === undefined || given.length === 0) return one(percent(layer.composition, 'C'))
  // Values stand at the middles of equal parts, as `across` gives them.
  const f = place * given.length - 0.5
  const i = Math.min(Math.max(Math.floor(f), 0), given.length - 1)
  const j = Math.min(i + 1, given.length - 1)
  const t = Math.min(Math.max(f - i, 0), 1)
  return one(given[i]) * (1 - t) + one(given[j]) * t
}

function layerOf(reduction: Reduction, solved: readonly SolvedZone[], i: number): LayerCarbon {
  const { zone, segment, turned } = reduction.where[i]!
  const cells = solved[zone]!.bySegment[segment]!
  const half = solved[zone]!.shares[segment] === 0.5
  // A half segment is the layer from its face to its middle, or in the first place of an inner
  // zone from its middle to its face: the layer is that and its mirror image.
  const fromMiddle = half && segment === 0 && reduction.zones[zone]!.surface === false
  const outward = fromMiddle ? [...cells].reverse() : cells
  const mirrored = half ? [...outward, ...[...outward].reverse()] : cells
  const mean = cells.reduce((sum, c) => sum + c, 0) / cells.length
  return {
    mean,
    lowest: Math.min(...cells),
    highest: Math.max(...cells),
    across: turned ? [...mirrored].reverse() : mirrored,
  }
}

function lossOf(solved: readonly SolvedZone[], reduction: Reduction): number {
  const before = solved.reduce((sum, s) => sum + s.before, 0)
  const gone = solved.reduce(
    (sum, s, i) => sum + (reduction.zones[i]!.surface ? s.before - s.after : 0),
    0,
  )
  return before > 0 ? gone / before : 0
}

function repeatNote(reduction: Reduction, solved: readonly SolvedZone[]): string {
  const end = solved[0]!
  const inner = solved[1]!
  const lastMean = (s: SolvedZone, k: number) =>
    s.bySegment[k]!.reduce((sum, c) => sum + c, 0) / s.bySegment[k]!.length
  // The deepest layer read from the end, against the inside layer of the same steel.
  const deepest = reduction.where.findLastIndex((w, i) => w.zone === 0 && w.segment === i)
  const like = reduction.where.find(
    (w, i) => i > deepest && w.zone === 1 && (i - deepest) % reduction.unit === 0,
  )
  const gap = Math.abs(lastMean(end, deepest) - lastMean(inner, like?.segment ?? 0))
  return (
    `${reduction.repeats} repeats of ${reduction.unit} layers: the outer layers and one unit of the ` +
    `inside were solved; where they meet they differ by ${gap.toFixed(4)} wt% carbon.`
  )
}

function rangeWarnings(
  layers: readonly SteelLayer[],
  history: CarbonHistory,
  spells: readonly Spell[],
): Problem[] {
  const found: Problem[] = []
  const hottest = Math.max(0, ...history.points.map((p) => p.temperature).filter(Number.isFinite))
  if (hottest > 1573)
    found.push(
      outOfRange('temperature', hottest, [1023, 1573], 'K', 'carbon diffusivity (Ågren 1986)'),
    )
  const richest = Math.max(
    0,
    ...layers.map((l) => percent(l.composition, 'C')).filter(Number.isFinite),
  )
  if (richest > 2.03) found.push(outOfRange('carbon', richest, [0, 2.03], 'wt%', 'austenite'))
  if (history.points.some((p) => !Number.isFinite(p.time) || !Number.isFinite(p.temperature)))
    found.push({
      at: 'history',
      what: 'A point of the temperature history has no number.',
      why: 'Such points were left out.',
      try: ['Give every point a time and a temperature.'],
    })
  if (spells.every((s) => s.seconds === 0) && history.points.length > 1)
    found.push({
      at: 'history',
      what: 'The steel never became austenite, so no carbon moved.',
      why: 'Below 727 °C carbon is held in carbide (CTHERM); the history stays below it.',
      try: ['Heat above 727 °C.'],
    })
  return found
}
