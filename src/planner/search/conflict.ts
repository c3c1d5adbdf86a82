import type { Problem } from '#problem'
import { printCount, printQuantity } from '#units'
import type { Shop } from '#shop'
import type { Candidate } from './candidates.ts'
import type { Figures } from './figures.ts'
import { recipeText } from './recipe.ts'
import { NEAR_ENOUGH, type Wanted } from './wanted.ts'

/** What a wish is held against: the quick or the full account. */
type Held = Pick<Figures, 'heats' | 'hands' | 'steel' | 'off' | 'layers'> & {
  readonly lines?: number
  readonly recipe?: { readonly sheets: number }
}

/** One wish as a bound that a way of working meets or does not. */
export interface Wish {
  /** Place in the job file. */
  readonly at: string
  /** As the smith would say it. */
  readonly says: string
  metBy(one: Held): boolean
  /** How far off one is, for finding the nearest; and what that nearest would mean as a wish. */
  distance(one: Held): number
  cure(one: Held): string
}

const hours = (s: number) => `${Math.round(s / 360) / 10} h`
const kilograms = (kg: number) => printQuantity(Math.ceil(kg * 1000) / 1000, 'mass', { unit: 'kg' })

/** The wishes as bounds, in the order they stand in a job file. */
export function wishesOf(wanted: Wanted): Wish[] {
  const wishes: Wish[] = []
  const { lines, layers, sheets, heats, hours: longest, steel } = wanted
  if (lines !== undefined || layers !== undefined) {
    const near =
      lines !== undefined
        ? `${printQuantity(lines, 'lines')} on the face`
        : printCount(layers ?? 0, 'layer')
    wishes.push({
      at: lines !== undefined ? 'wishes.lines' : 'wishes.layers',
      says: near,
      metBy: ({ off }) => off <= NEAR_ENOUGH,
      distance: ({ off }) => off,
      cure: (one) =>
        lines !== undefined && one.lines !== undefined
          ? `accept ${printQuantity(Number(one.lines.toPrecision(3)), 'lines')}`
          : `accept ${printCount(one.layers, 'layer')}`,
    })
  }
  const most = (
    at: string,
    says: string,
    limit: number | undefined,
    of: (one: Held) => number,
    cure: (value: number) => string,
  ) => {
    if (limit === undefined) return
    wishes.push({
      at: `wishes.${at}`,
      says,
      metBy: (one) => of(one) <= limit,
      distance: of,
      cure: (one) => cure(of(one)),
    })
  }
  most(
    'sheets',
    `at most ${printCount(sheets ?? 0, 'sheet')}`,
    sheets,
    ({ recipe }) => recipe?.sheets ?? 0,
    (n) => `lay ${printCount(n, 'sheet')}`,
  )
  most(
    'heats',
    `at most ${printCount(heats ?? 0, 'heat')}`,
    heats,
    (one) => one.heats,
    (n) => `allow ${printCount(n, 'heat')}`,
  )
  most(
    'hours',
    `at most ${hours(longest ?? 0)} of work`,
    longest,
    (one) => one.hands,
    (s) => `allow ${hours(Math.ceil(s / 360) * 360)}`,
  )
  most(
    'steel',
    `at most ${kilograms(steel ?? 0)} of steel`,
    steel,
    (one) => one.steel,
    (kg) => `take ${kilograms(kg)} off the rack`,
  )
  return wishes
}

/**
 * The fewest wishes that cannot be had together, in the sense that dropping any one of them leaves a
 * way: each is left out in turn and stays out if there is still none (deletion filter). The shop's
 * own limits are the last wish of all.
 */
export function conflictOf(
  wishes: readonly Wish[],
  within: readonly Candidate[],
  beyond: readonly Candidate[],
  shop: Shop,
  worksOut: (way: Candidate, wishes: readonly Wish[]) => Held | undefined,
): Problem[] {
  const shopLimits: Wish = {
    at: 'shop',
    says: `dies that open ${printQuantity(shop.greatestOpening, 'length')} and a fire that heats ${printQuantity(shop.longestHeat, 'length')}`,
    metBy: () => true,
    distance: () => 0,
    cure: () => 'work at a press with a greater opening, or a longer fire',
  }
  const ways = (some: readonly Wish[]) =>
    (some.includes(shopLimits) ? within : beyond).filter((way) =>
      some.every((wish) => wish.metBy(way)),
    )
  let clash: readonly Wish[] = [...wishes, shopLimits]
  if (ways(clash).length > 0) return []
  for (const wish of clash) {
    const rest = clash.filter((other) => other !== wish)
    if (ways(rest).length === 0) clash = rest
  }
  if (clash.length === 0) return [nothingAtAll()]
  const cures = clash.flatMap((wish) => {
    const left = ways([...wishes, shopLimits].filter((other) => other !== wish))
    const some = left.length > 0 ? left : ways(clash.filter((other) => other !== wish))
    if (some.length === 0) return []
    if (left.length === 0)
      return [`${wish.cure(nearest(some, wish)[0])}, and look at the other wishes`]
    // A cure is told only of a way that works out in full with all the other wishes kept.
    for (const way of nearest(left, wish).slice(0, MOST_TRIED)) {
      const worked = worksOut(
        way,
        wishes.filter((other) => other !== wish),
      )
      if (worked) return [wish.cure({ ...worked, recipe: way.recipe })]
    }
    return []
  })
  return [
    {
      at: clash[0].at,
      what:
        clash.length === 1
          ? `${clash[0].says} cannot be had`
          : `${clash
              .slice(0, -1)
              .map((w) => w.says)
              .join(', ')} and ${clash.at(-1)?.says} cannot be had together`,
      why:
        clash.length === 1
          ? 'no way of building the bar up gives it, whatever else is given up'
          : 'give up any one of them and there is a way; with all of them there is none',
      try: cures,
    },
  ]
}

/** Ways worked out in full before a cure is given up. */
const MOST_TRIED = 20

/** The ways that come nearest to a wish, one of each recipe. */
function nearest(ways: readonly Candidate[], wish: Wish): Candidate[] {
  const best = new Map<string, Candidate>()
  for (const way of ways) {
    const name = recipeText(way.recipe)
    const known = best.get(name)
    if (!known || wish.distance(way) < wish.distance(known)) best.set(name, way)
  }
  return [...best.values()].sort((a, b) => wish.distance(a) - wish.distance(b))
}

function nothingAtAll(): Problem {
  return {
    at: 'bars',
    what: 'no way of building this bar up was found',
    why: 'even with every wish given up',
    try: ['draw to a smaller section after the last weld'],
  }
}
