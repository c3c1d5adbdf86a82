import type { Problem } from '#problem'
import type { Composition } from '#steel'
import { type Billet, flatAxis } from '#billet'
import {
  type Estimate,
  type TreatedSteel,
  contrastOf,
  distort,
  etchRelief,
  temperChart,
} from '#metallurgy'
import { type Computed, compositionsFor } from '../compute-job.ts'
import { type FollowOptions, type PlanFollowed, followPlan, unlike } from './follow-plan.ts'
import {
  type Hardening,
  THIN,
  TOO_LEAN,
  type Window,
  findHardening,
  hardenSteel,
  hardensByRule,
  windowOf,
  windowProblems,
} from './hardening.ts'
import { type HeatRecord, heatRecords, ironBased } from './heat-records.ts'
import { type LayerClass, type Ranged, layerClasses } from './layer-records.ts'
import type { Metal } from './metal.ts'
import { heatProblems } from './heat-problems.ts'
import { type QuenchAdvice, adviseQuench } from './quench-advice.ts'
import { smithyOf } from './smithy.ts'
import { type BarJoint, type WeldLine, barJoints, skinLeft, weldLines } from './skin-and-lines.ts'

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

export interface EtchPair {
  readonly steels: readonly [string, string]
  readonly contrast: 'strong' | 'fair' | 'faint' | 'none'
  readonly tones: readonly [string, string]
  /** min in the bath to the relief wanted, and that relief, m; left out where neither stands proud. */
  readonly minutes?: Ranged
  readonly relief?: number
}

/** What the heats of a job leave. */
export interface Treated {
  readonly heats: readonly HeatRecord[]
  readonly layers: readonly LayerRecord[]
  readonly steels: readonly SteelRecord[]
  readonly hardening?: Hardening
  readonly window?: Window
  readonly quench?: QuenchAdvice
  readonly temperChart: readonly {
    readonly temperature: number
    readonly steels: readonly {
      readonly steel: string
      readonly bar: string
      readonly hardness: Ranged
    }[]
  }[]
  /** Length growth in the quench, m/m, and bow over one metre if nothing is done, m. */
  readonly growth?: {
    readonly growth: Estimate
    readonly bow?: Estimate
    readonly risk?: 'even' | 'slight' | 'marked'
  }
  readonly etch: readonly EtchPair[]
  /** m: skin that has lost carbon, on the finished faces. */
  readonly skin: Ranged
  readonly lines: readonly WeldLine[]
  readonly joints: readonly BarJoint[]
  readonly cautions: readonly string[]
  readonly notes: readonly string[]
  readonly warnings: readonly Problem[]
}

/** Follows the metal of a worked-out job through every heat and says what is left. Never throws but when stopped. */
export function treatJob(computed: Computed, options: FollowOptions = {}): Treated {
  const { job, plan } = computed
  const compositions = compositionsFor(job.steels)
  const compositionOf = (steel: string): Composition => compositions[steel] ?? {}
  const smithy = smithyOf(job, computed.densities, compositions, computed.solid)
  const followed = followPlan(plan, smithy, compositionOf, options)
  const metal = followed.steps.at(-1)?.metal ?? []
  const { build } = plan.finished
  const hardening = findHardening(plan.steps)
  const treat = cached((steel, carbon, where) =>
    hardening && hardensByRule(compositionOf(steel), carbon)
      ? hardenSteel(
          { steel, carbon },
          hardening,
          compositionOf,
          where && Math.min(THIN, hardening.size),
        )
      : undefined,
  )
  const layers = layerClasses(metal, build, compositionOf, job.steels).map(
    (layer): LayerRecord => ({ ...layer, ...hardnessOf(layer, treat) }),
  )
  const steels = steelRecords(layers, treat, hardening)
  const window = windowOf(
    steels.map(({ steel, bar, carbon }) => ({ steel, bar, carbon: carbon.value })),
    compositionOf,
    hardening?.temperature,
  )
  const quench = hardening && adviseQuench(steels, hardening, compositionOf)
  const heats = heatRecords(followed, smithy.shop, compositionOf)
  const able = steels.filter((s) => s.asQuenched)
  const chart = temperChart(
    able.map((s) => ({
      composition: { ...compositionOf(s.steel), C: s.carbon.value },
      quenched: s.asQuenched!.value,
    })),
    chartAt,
  )
  return {
    heats,
    layers,
    steels,
    hardening,
    window,
    quench,
    temperChart: chart.map(({ temperature, steels: row }) => ({
      temperature,
      steels: row.map(({ value, range }, i) => ({
        steel: able[i]!.steel,
        bar: able[i]!.bar,
        hardness: { value, range },
      })),
    })),
    growth: hardening && growthOf(metal, plan.finished, treat),
    etch: etchPairs(steels, computed, compositionOf),
    skin: skinLeft(followed.steps, smithy.shop),
    lines: weldLines(followed.steps, smithy.shop),
    joints: barJoints(followed.steps, compositionOf),
    cautions: cautionsOf(steels, heats, compositionOf, hardening),
    notes: followed.notes,
    warnings: unlike([
      ...heatProblems(heats),
      ...windowProblems(window, hardening?.at ?? ''),
      ...rangeProblems(
        followed,
        heats,
        able.map(({ steel, carbon }) => ({ steel, treated: treat(steel, carbon.value) })),
        hardening,
      ),
    ]),
  }
}

/** At the middle of the thickest place, or as thin places and faces harden. */
type Treat = (steel: string, carbon: number, where?: 'thin') => TreatedSteel | undefined

/** Tempers of the chart, K: 150 to 650 °C. */
const chartAt = [150, 175, 200, 225, 250, 275, 300, 350, 400, 450, 500, 550, 600, 650].map(
  (celsius) => celsius + 273.15,
)

/** Layers of one steel differ by thousandths of a per cent: those that read alike are treated once. */
function cached(treat: Treat): Treat {
  const known = new Map<string, TreatedSteel | undefined>()
  return (steel, carbon, where) => {
    const key = `${steel} ${carbon.toFixed(3)} ${where ?? ''}`
    if (!known.has(key)) known.set(key, treat(steel, Number(carbon.toFixed(3)), where))
    return known.get(key)
  }
}

/** Hardness at the carbon of some layers; what is not known of the carbon comes into the range. */
function hardnessOf({ steel, carbon }: LayerClass, treat: Treat): Partial<LayerRecord> {
  const thin = rangedHardness(carbon, (c) => treat(steel, c, 'thin'))
  const at = treat(steel, carbon.value, 'thin')
  if (!thin || !at) return {}
  const thick = treat(steel, carbon.value)
  const middle =
    thick && thick.hardening.verdict !== 'through'
      ? rangedHardness(carbon, (c) => treat(steel, c))
      : undefined
  const { table, published } = at.tempered
  return { ...thin, table, published, ...(middle && { middle }) }
}

function rangedHardness(
  carbon: Ranged,
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
  const asQuenched = spread((t) => t.asQuenched, HARDEST)
  return { asQuenched, tempered: spread((t) => t.tempered, asQuenched.range[1]) }
}

/** HRC: no steel of iron and carbon is harder (from memory). */
const HARDEST = 68

function steelRecords(
  layers: readonly LayerRecord[],
  treat: Treat,
  hardening: Hardening | undefined,
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
      ...hardnessOf(whole, treat),
      layersFrom: Math.min(...like.map((l) => l.carbon.value)),
      layersTo: Math.max(...like.map((l) => l.carbon.value)),
      ...(at && {
        hardens: at.hardening.verdict,
        retained: { value: at.retained.value, range: at.retained.range },
        dissolved: at.dissolved,
      }),
      cautions: at && hardening ? at.cautions.filter((c) => !said.some((s) => c.includes(s))) : [],
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
/** Austenite kept that one temper does not see to, and that two do not (common practice), shares. */
const KEPT = [0.15, 0.22] as const

function growthOf(metal: Metal, finished: Billet, treat: Treat): Treated['growth'] {
  const through = metal.length === 1 && ['y', 'z'].includes(flatOf(finished) ?? '')
  const layers = metal.flat().map((ply) => {
    const mean = ply.carbon.reduce((a, b) => a + b, 0) / ply.carbon.length
    const at = treat(ply.steel, mean)
    return {
      thickness: ply.thickness,
      carbon: at?.dissolved ?? mean,
      martensite: at?.hardening.martensite.value ?? 0,
      retained: at ? at.retained.value * at.hardening.martensite.value : 0,
    }
  })
  const { growth, bow, risk } = distort(layers)
  return through ? { growth, bow, risk } : { growth }
}

/** The axis the layers lie flat to, whatever was ground off them. */
function flatOf({ build }: Billet): string | undefined {
  return build.form === 'worked' && build.shares
    ? flatOf({ build: build.of } as Billet)
    : flatAxis(build)
}

function etchPairs(
  steels: readonly SteelRecord[],
  { plan, job }: Computed,
  compositionOf: (steel: string) => Composition,
): EtchPair[] {
  const etched = plan.steps.find((s) => s.operation.name === 'etch')
  if (!etched) return []
  const hard = ['hardened', 'tempered'].includes(plan.finished.temper)
  const condition = hard ? 'hardened' : 'soft'
  const wanted = (etched.values.depth as number | undefined) ?? job.shop.etchDepth
  const water = etched.values.water as number
  const byName = new Map(
    steels.map((s) => [s.steel, { ...compositionOf(s.steel), C: s.carbon.value }]),
  )
  const names = [...byName.keys()]
  return names.flatMap((a, i) =>
    names.slice(i + 1).map((b): EtchPair => {
      const [first, second] = [byName.get(a)!, byName.get(b)!]
      const { contrast, tones } = contrastOf(first, second, condition)
      const relief = etchRelief(first, second, { minutes: 1, water, condition })
      const acid = etched.values.acid === 'ferric chloride' && relief.value > 2e-7
      return {
        steels: [a, b],
        contrast,
        tones,
        ...(acid && {
          minutes: {
            value: wanted / relief.value,
            range: [wanted / relief.range[1], wanted / Math.max(relief.range[0], 1e-9)],
          },
          relief: wanted,
        }),
      }
    }),
  )
}

function cautionsOf(
  steels: readonly SteelRecord[],
  heats: readonly HeatRecord[],
  compositionOf: (steel: string) => Composition,
  hardening: Hardening | undefined,
): string[] {
  const lines: string[] = []
  const group = Map.groupBy(
    steels.flatMap((s) => s.cautions.map((c) => ({ c, steel: s.steel }))),
    ({ c }) => c,
  )
  for (const [c, of] of group)
    lines.push(
      `${[...new Set(of.map((o) => o.steel))].join(' and ')}: ${c.charAt(0).toLowerCase()}${c.slice(1)}`,
    )
  const least = KEPT[(hardening?.tempers.length ?? 0) < 2 ? 0 : 1]
  for (const { steel, retained } of steels)
    if (retained && retained.value > least)
      lines.push(
        `${steel} keeps about ${Math.round(retained.value * 100)} % austenite: ${least === KEPT[0] ? 'temper twice' : 'harden cooler, or cool it well below freezing before the temper'}.`,
      )
  for (const { steel, carbon } of steels) {
    const composition = compositionOf(steel)
    if (!ironBased(composition))
      lines.push(`${steel} is no steel: it stays soft, and takes carbon from nothing.`)
    else if (carbon.value < TOO_LEAN)
      lines.push(
        `${steel} ends with ${carbon.value.toFixed(2)} % carbon: too little to harden for an edge.`,
      )
    else if (!hardensByRule(composition, carbon.value) && hardening)
      lines.push(
        `${steel} has too much chromium for the rules of plain steels: its window and hardness are not worked out. Go by its maker's sheet.`,
      )
  }
  for (const { cautions, step, times, do: verb } of heats)
    for (const c of cautions)
      lines.push(`Step ${step}, ${verb}${times > 1 ? ` (${times} heats)` : ''}: ${c}`)
  return [...new Set(lines)]
}

/** Where a model was asked beyond what it was published for: each once, in its place, in the words of the shop. */
function rangeProblems(
  followed: PlanFollowed,
  heats: readonly HeatRecord[],
  steels: readonly { readonly steel: string; readonly treated?: TreatedSteel }[],
  hardening: Hardening | undefined,
): Problem[] {
  const ofSteel = steels.flatMap(({ steel, treated }) =>
    (treated?.outOfRange ?? []).map((p) => ({
      ...p,
      at: hardening?.at ?? p.at,
      what: `${steel}: ${p.what}`,
    })),
  )
  const all = [...followed.warnings, ...heats.flatMap((h) => h.outOfRange), ...ofSteel]
  return all.map((p) => ({
    ...p,
    what: inCelsius(p.what),
    why: inCelsius(p.why),
    try: p.try.map(inCelsius),
  }))
}

/** Models speak kelvin; smiths do not. */
function inCelsius(text: string): string {
  const degrees = (k: string) => String(Math.round(Number(k) - 273.15))
  return text
    .replace(
      /([\d.]+) to ([\d.]+) K\b/g,
      (_, a: string, b: string) => `${degrees(a)} to ${degrees(b)} °C`,
    )
    .replace(/([\d.]+) K\b/g, (_, a: string) => `${degrees(a)} °C`)
}
