import type { Figure } from '#sources'
import { type Estimate, type TreatedSteel } from '#metallurgy'
import type { LayerClass, Ranged } from './layer-records.ts'

/** Layers that are alike, and how hard they are. */
export interface LayerRecord extends LayerClass {
  /** HRC at edges and near the faces; left out where the piece is not hardened or the steel cannot be. */
  readonly asQuenched?: Ranged
  readonly tempered?: Ranged
  /** HRC in the middle of the thickest place, where the quench does not reach it fully. */
  readonly middle?: { readonly asQuenched: Ranged; readonly tempered: Ranged }
  /** The tempering table that answered, and whether it is this steel's own. */
  readonly table?: string
  readonly published?: boolean
}

/** One steel of one bar, all its layers together. */
export interface SteelRecord extends LayerRecord {
  /** Of its layers, the least and the most carbon, wt%. */
  readonly layersFrom: number
  readonly layersTo: number
  readonly hardens?: TreatedSteel['hardening']['verdict']
  /** Share of austenite kept after the quench. */
  readonly retained?: Ranged
  /** wt% dissolved at the hardening heat; the rest stays as carbide. */
  readonly dissolved?: number
  readonly cautions: readonly string[]
}

/** At the middle of the thickest place, or as thin places and faces harden. */
export type Treat = (steel: string, carbon: number, where?: 'thin') => TreatedSteel | undefined

/** Layers of one steel differ by thousandths of a per cent: those that read alike are treated once. */
export function cached(treat: Treat): Treat {
  const known = new Map<string, TreatedSteel | undefined>()
  return (steel, carbon, where) => {
    const key = `${steel} ${carbon.toFixed(3)} ${where ?? ''}`
    if (!known.has(key)) known.set(key, treat(steel, Number(carbon.toFixed(3)), where))
    return known.get(key)
  }
}

/** Hardness at the carbon of some layers; what is not known of the carbon comes into the range. */
export function hardnessOf(
  { steel, carbon, carbonBought: { value: bought } }: LayerClass,
  treat: Treat,
  heat: number,
  measured: Figure | undefined,
): Partial<LayerRecord> {
  const thin = rangedHardness(carbon, heat, (c) => treat(steel, c, 'thin'))
  const at = treat(steel, carbon.value, 'thin')
  if (!thin || !at) return {}
  const thick = treat(steel, carbon.value)
  const middle =
    thick && thick.hardening.verdict !== 'through'
      ? rangedHardness(carbon, heat, (c) => treat(steel, c))
      : undefined
  const { table, published } = at.tempered
  const asQuenched = withMeasured(thin.asQuenched, carbon, bought, measured)
  return {
    ...thin,
    asQuenched,
    table,
    published,
    ...(middle && { middle: notOver(middle, asQuenched) }),
  }
}

/** wt% the carbon may have moved for what was measured on the steel as bought still to count. */
const STILL_ITSELF = 0.12

/** The model, and what was measured on this grade while it has about its own carbon: each counts half. */
function withMeasured(
  model: Ranged,
  carbon: Ranged,
  bought: number,
  measured: Figure | undefined,
): Ranged {
  if (!measured || Math.abs(carbon.value - bought) > STILL_ITSELF) return model
  const [low, high] = measured.range ?? [measured.value, measured.value]
  return {
    value: (model.value + measured.value) / 2,
    range: [Math.min(model.range[0], low), Math.max(model.range[1], high)],
  }
}

/** The middle is at most as hard as the edge: what was measured on the edge holds it too. */
function notOver<M extends { readonly asQuenched: Ranged }>(
  middle: M,
  { value, range }: Ranged,
): M {
  const { asQuenched: own } = middle
  const high = Math.min(own.range[1], range[1])
  const asQuenched = { value: Math.min(own.value, value), range: [own.range[0], high] as const }
  return { ...middle, asQuenched }
}

function rangedHardness(
  carbon: Ranged,
  heat: number,
  at: (carbon: number) => TreatedSteel | undefined,
): { readonly asQuenched: Ranged; readonly tempered: Ranged } | undefined {
  const likely = at(carbon.value)
  if (!likely) return undefined
  const ends = carbon.range.map((c) => at(c) ?? likely)
  const spread = (of: (t: TreatedSteel) => Estimate, most: number): Ranged => {
    const { value, range } = of(likely)
    const off = Math.max(...ends.map((e) => Math.abs(of(e).value - value)))
    const low = value - Math.hypot(value - range[0], off)
    const high = value + Math.hypot(range[1] - value, off)
    return { value, range: [Math.max(0, low), Math.max(value, Math.min(most, high))] }
  }
  const soft = softPatches(likely, heat)
  const asQuenched = soft(spread((t) => t.asQuenched, HARDEST))
  return { asQuenched, tempered: soft(spread((t) => t.tempered, asQuenched.range[1])) }
}

/** HRC of what stayed as it was: fine pearlite and spheroidite (common practice). */
const UNHARDENED = 20

/** Under its window a steel comes out patchy: the lowest falls toward the unhardened as the heat does to Ac1. */
function softPatches({ window, ac1 }: TreatedSteel, heat: number): (of: Ranged) => Ranged {
  const under = window.low - heat
  const share = Math.min(Math.max(under / Math.max(window.low - ac1.value, 1), 0), 1)
  return ({ value, range: [low, high] }) => {
    const lowest = low - share * Math.max(0, low - UNHARDENED)
    return { value, range: [Math.min(lowest, value), high] }
  }
}

/** HRC: no steel of iron and carbon is harder (from memory). */
const HARDEST = 68

export function steelRecords(
  layers: readonly LayerRecord[],
  treat: Treat,
  heat: number,
  measuredOn: (steel: string) => Figure | undefined,
): SteelRecord[] {
  const groups = Map.groupBy(layers, ({ bar, steel }) => `${bar} ${steel}`)
  return [...groups.values()].map((like): SteelRecord => {
    const share = like.reduce((sum, l) => sum + l.share, 0)
    const count = like.reduce((sum, l) => sum + l.count, 0)
    const carbon = like.reduce((sum, l) => sum + l.carbon.value * l.share, 0) / share
    const half = Math.max(...like.map((l) => l.carbon.range[1] - l.carbon.value))
    const first = like[0]!
    const whole: LayerClass = {
      ...first,
      count,
      share,
      thickness: like.reduce((sum, l) => sum + l.thickness * l.count, 0) / count,
      carbon: { value: carbon, range: [Math.max(0, carbon - half), carbon + half] },
      within: [
        Math.min(...like.map((l) => l.within[0])),
        Math.max(...like.map((l) => l.within[1])),
      ],
    }
    const at = treat(first.steel, carbon)
    return {
      ...whole,
      ...hardnessOf(whole, treat, heat, measuredOn(first.steel)),
      layersFrom: Math.min(...like.map((l) => l.carbon.value)),
      layersTo: Math.max(...like.map((l) => l.carbon.value)),
      ...(at && {
        hardens: at.hardening.verdict,
        retained: { value: at.retained.value, range: at.retained.range },
        dissolved: at.dissolved,
      }),
      cautions: at ? at.cautions.filter((c) => !said.some((s) => c.includes(s))) : [],
    }
  })
}

/** What the window and the quench say already, in the words of the job. */
const said = [
  'harden through',
  'hardening window',
  'Water may crack',
  'does not harden at that heat',
  'Much austenite',
]
