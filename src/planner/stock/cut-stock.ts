import type { Stock } from '#operations'
import type { Cutting, RackItem } from '#shop'
import { cutExactly } from './cut-exactly.ts'
import { FEW_PIECES, cutMany } from './cut-many.ts'
import {
  type CuttingPlan,
  type CuttingRules,
  type StockLength,
  type WantedLength,
  leftOf,
  takenBy,
} from './cutting.ts'
import { nextStandard, standardSizes } from './standard-sizes.ts'

/** One bar off the rack, or to be bought, and what is cut from it. */
export interface BarToCut {
  readonly from: 'remnant' | 'rack' | 'buy'
  readonly place?: string
  readonly length: number
  /** Lengths cut from it in turn, m. */
  readonly pieces: readonly number[]
  /** What is left and worth keeping, m; 0 where it is not. */
  readonly remnant: number
  /** Neither piece nor remnant: kerfs, ends, short bits, m. */
  readonly waste: number
  /** How many bars alike are cut so. */
  readonly count: number
}

/** Everything of one steel and section. */
export interface CutList {
  readonly steel: string
  readonly thickness: number
  readonly width: number
  readonly wanted: readonly WantedLength[]
  readonly bars: readonly BarToCut[]
  /** Section to buy in where it must be bought: the next standard one. */
  readonly buy?: { readonly thickness: number; readonly width: number }
  /** How far the way found may be from the best, as a share of it; 0 is proved best. */
  readonly gap: number
}

/** A metre of remnant counts for half a metre of bar, a metre to be bought for two: what is there is used first. */
const WEIGHTS = { remnant: 0.5, rack: 1, buy: 2 } as const
/** Sizes this near are the same size: the rack is measured by micrometer, m. */
const SAME_SECTION = 1.5e-4

/** Cuts what a plan takes off the rack from the bars and remnants there are, and says what to buy. */
export function cutStock(
  taken: readonly Stock[],
  rack: readonly RackItem[],
  kerf: number,
  cutting: Cutting,
  signal?: AbortSignal,
): readonly CutList[] {
  const rules: CuttingRules = { kerf, leastRemnant: cutting.leastRemnant }
  return bySection(taken).map((section) => cutSection(section, rack, rules, cutting, signal))
}

type Section = Pick<CutList, 'steel' | 'thickness' | 'width' | 'wanted'>

function bySection(taken: readonly Stock[]): Section[] {
  const sections: { steel: string; thickness: number; width: number; wanted: WantedLength[] }[] = []
  for (const { steel, thickness, width, length, count, form } of taken) {
    if (form === 'powder') continue
    const same = sections.find(
      (s) =>
        s.steel === steel &&
        Math.abs(s.thickness - thickness) < 1e-7 &&
        Math.abs(s.width - width) < 1e-7,
    )
    if (same) same.wanted.push({ length, count })
    else sections.push({ steel, thickness, width, wanted: [{ length, count }] })
  }
  return sections
}

function cutSection(
  section: Section,
  rack: readonly RackItem[],
  rules: CuttingRules,
  { ends, sizes }: Cutting,
  signal?: AbortSignal,
): CutList {
  const { steel, thickness, width, wanted } = section
  const standard = standardSizes[sizes]
  const there = rack.filter(
    (item) =>
      item.steel === steel &&
      Math.abs(item.thickness - thickness) <= SAME_SECTION &&
      item.width >= width - SAME_SECTION &&
      item.width <= width + Math.max(SAME_SECTION, 0.15 * width),
  )
  const longest = Math.max(...wanted.map((w) => w.length)) + 2 * ends
  const onRack = there.map((item) => {
    const from = item.form === 'remnant' ? ('remnant' as const) : ('rack' as const)
    return {
      from,
      place: item.place,
      length: item.length,
      count: item.count,
      ends: from === 'remnant' ? 0 : ends,
      weight: WEIGHTS[from],
    }
  })
  const bought = standard.lengths
    .filter((length) => length >= longest)
    .concat(standard.lengths.every((length) => length < longest) ? [longest] : [])
    .map((length) => ({
      from: 'buy' as const,
      place: undefined,
      length,
      count: Infinity,
      ends,
      weight: WEIGHTS.buy,
    }))
  const stock: (StockLength & Pick<BarToCut, 'from' | 'place'>)[] = [...onRack, ...bought]
  const plan = cutBest(wanted, stock, rules, signal)
  const bars = alike(
    plan.bars.map(({ stock: s, pieces }): BarToCut => {
      const { from, place, length } = stock[s]
      const left = leftOf(stock[s], takenBy(pieces, wanted, rules), rules)
      const remnant = left >= rules.leastRemnant ? left : 0
      const cut = pieces.flatMap((n, i) => Array.from({ length: n }, () => wanted[i].length))
      const metal = cut.reduce((a, b) => a + b, 0)
      return {
        from,
        place,
        length,
        pieces: cut,
        remnant,
        waste: length - metal - remnant,
        count: 1,
      }
    }),
  )
  const buys = bars.some((bar) => bar.from === 'buy')
  return {
    ...section,
    bars,
    ...(buys && {
      buy: {
        thickness: nextStandard(standard.thicknesses, thickness),
        width: nextStandard(standard.widths, width),
      },
    }),
    gap: plan.proved ? 0 : plan.cost / plan.bound - 1,
  }
}

/** Few pieces exactly, many by patterns. */
export function cutBest(
  wanted: readonly WantedLength[],
  stock: readonly StockLength[],
  rules: CuttingRules,
  signal?: AbortSignal,
): CuttingPlan {
  const pieces = wanted.reduce((sum, w) => sum + w.count, 0)
  const exact = pieces <= FEW_PIECES ? cutExactly(wanted, stock, rules) : undefined
  return exact?.proved ? exact : cutMany(wanted, stock, rules, signal)
}

function alike(bars: readonly BarToCut[]): BarToCut[] {
  const same = new Map<string, BarToCut>()
  for (const bar of bars) {
    const key = JSON.stringify(bar)
    const known = same.get(key)
    same.set(key, known ? { ...known, count: known.count + 1 } : bar)
  }
  const order = ['remnant', 'rack', 'buy']
  return [...same.values()].sort((a, b) => order.indexOf(a.from) - order.indexOf(b.from))
}
