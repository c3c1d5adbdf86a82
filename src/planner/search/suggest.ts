import { type Problem, type Result, failed, ok } from '#problem'
import { wholeCount } from '#billet'
import type { Smithy } from '#operations'
import type { RackItem, Rates } from '#shop'
import { planRoute } from '../plan-route.ts'
import type { Plan } from '../plan.ts'
import type { Route } from '../route.ts'
import { type Candidate, LEAN, candidatesOf } from './candidates.ts'
import { Shelf, choicesOf, limitsOf, sectionsFor, stacksFor } from './choices.ts'
import { type Wish, conflictOf, wishesOf } from './conflict.ts'
import { type Aim, type Figures, figuresOf } from './figures.ts'
import { type Head, headsOf, readSteps, withHead } from './head.ts'
import { following } from './passages.ts'
import { type Measure, nonDominated, ranked } from './pareto.ts'
import { type RawStep, type Sheets, layersOf, recipeText, stepsOf } from './recipe.ts'
import { type Front, type Limits, fronts } from './states.ts'
import { type Tail, tailAt, tailsBetween } from './tail.ts'
import { NEAR_ENOUGH, type Wanted } from './wanted.ts'

export interface SuggestOptions {
  readonly rack?: readonly RackItem[]
  /** The bar whose build-up is to be chosen; left out, the one with the most layers. */
  readonly bar?: string
  readonly signal?: AbortSignal
  readonly onProgress?: (share: number, doing: string) => void
}

/** One route worth considering, worked out in full. */
export interface Suggestion {
  /** `15 → ×3 → ×4`. */
  readonly name: string
  /** The route as the job has it now. */
  readonly asWritten: boolean
  readonly plan: Plan
  readonly figures: Figures
  /** Steps of the build-up as a job file holds them; none for the route as written. */
  readonly steps?: readonly RawStep[]
}

export interface Suggestions {
  /** Best compromise first; none is better than another in everything. */
  readonly routes: readonly Suggestion[]
  /** The route as it is, also where another is better in everything; nothing where it does not work out. */
  readonly written?: Suggestion
  /** Bars whose build-up was chosen. */
  readonly bars: readonly string[]
  /** Steps of theirs that the build-up takes the place of. */
  readonly headLength: number
  /** Ways of building up that met the wishes in the quick account. */
  readonly considered: number
}

/** Routes worked out in full, the route as written besides. */
const FINALISTS = 14
/** Routes worked out at most before it is said that none meets the wishes in full. */
const MOST_LOOKED_AT = 60
/** Of them, ways to do the recipe as written at other sections. */
const OWN_VARIANTS = 4
/** Ways to do one recipe that are tried until one works out. */
const TRIES = 4
const MOST_SHEETS = 31
/** Of the heights a built-up bar may have, those the rest of the route is worked out for. */
const QUANTILES = [0.02, 0.2, 0.4, 0.6, 0.8, 0.98]
/** What is only modelled is not compared to more than a thousandth. */
const thousandth = (share: number) => Math.round(share * 1000) / 1000

/** Measures of the full account. */
export const measures: readonly Measure<{ readonly figures: Figures }>[] = [
  { name: 'heats', of: ({ figures }) => figures.heats, better: 'less', tells: 2 },
  { name: 'yield', of: ({ figures }) => figures.yield, better: 'more', tells: 0.01 },
  { name: 'hours', of: ({ figures }) => figures.hands, better: 'less', tells: 900 },
  { name: 'cost', of: ({ figures }) => figures.cost, better: 'less', tells: 5 },
  { name: 'match', of: ({ figures }) => thousandth(figures.off), better: 'less', tells: 0.02 },
  {
    name: 'carbon',
    of: ({ figures }) => thousandth(figures.carbonKept),
    better: 'more',
    tells: 0.02,
  },
  { name: 'risk', of: ({ figures }) => figures.failing, better: 'less', tells: 0.01 },
  { name: 'layers lost', of: ({ figures }) => figures.layersLost, better: 'less', tells: 1 },
]

/** Measures of the quick account. */
const quickMeasures: readonly Measure<Candidate>[] = [
  { name: 'heats', of: (c) => c.heats, better: 'less', tells: 2 },
  { name: 'steel', of: (c) => c.steel, better: 'less', tells: 0.02 },
  { name: 'hours', of: (c) => c.hands, better: 'less', tells: 900 },
  { name: 'match', of: (c) => thousandth(c.off), better: 'less', tells: 0.02 },
  { name: 'carbon', of: (c) => thousandth(c.carbonKept), better: 'more', tells: 0.02 },
  { name: 'risk', of: (c) => c.welds, better: 'less', tells: 1 },
  { name: 'thin', of: (c) => c.thin, better: 'less', tells: 2e-4 },
]

/**
 * Other ways of building up the pack of a route, the best compromises first, each worked out in
 * full. Where the wishes leave none, the fewest wishes that cannot be had together.
 */
export function suggestRoutes(
  route: Route,
  smithy: Smithy,
  rates: Rates,
  wanted: Wanted,
  options: SuggestOptions = {},
): Result<Suggestions> {
  const { signal, onProgress } = options
  onProgress?.(0, 'the route as it is')
  const asIs = planRoute({ ...route, measured: [] }, smithy, { signal })
  const head = headFor(route, asIs.ok, options.bar)
  if (head.problems) return asIs.problems ? asIs : head
  const own = head.ok.own
  if (!own) return failed(noPlainStack(head.ok))
  const search = new Search(route, smithy, rates, wanted, head.ok, own.stack, options)
  const layersNow = asIs.ok && wholeCount(builtBy(asIs.ok, head.ok).step.after.build).merged
  const found = search.candidates(layersNow)
  if (found.problems) return found
  onProgress?.(0.4, 'the best of them in full')
  const finalists = search.finalists(found.ok)
  const worked: Suggestion[] = []
  if (asIs.ok) worked.push({ ...search.account(asIs.ok), name: recipeText(own), asWritten: true })
  const meets = (one: Suggestion) => search.wishes.every((wish) => wish.metBy(one.figures))
  for (const [i, variants] of finalists.entries()) {
    // Once the best have been looked at the others matter only where none of them would do.
    if (i >= FINALISTS && (worked.some(meets) || i >= MOST_LOOKED_AT)) break
    for (const candidate of variants) {
      signal?.throwIfAborted()
      const one = search.workOut(candidate)
      if (one) worked.push(one)
      if (one && meets(one)) break
    }
    onProgress?.(Math.min(0.99, 0.4 + (0.6 * i) / FINALISTS), recipeText(variants[0].recipe))
  }
  const fit = worked.filter(meets)
  const routes = onePerRecipe(ranked(nonDominated(fit, measures), measures))
  if (routes.length === 0) return failed(nothingFound(head.ok))
  const written = worked.find((one) => one.asWritten)
  return ok({
    routes,
    ...(written && { written }),
    bars: head.ok.bars,
    headLength: head.ok.length,
    considered: found.ok.length,
  })
}

/** Of several ways to do one recipe the best compromise stands for it. */
function onePerRecipe(best: readonly Suggestion[]): Suggestion[] {
  const seen = new Set<string>()
  return best.filter(({ name }) => !seen.has(name) && seen.add(name))
}

function builtBy(plan: Plan, head: Head) {
  return plan.steps.filter((s) => s.bar === head.bars[0])[head.length - 1]
}

function headFor(route: Route, plan: Plan | undefined, bar?: string): Result<Head> {
  const heads = headsOf(route)
  if (bar !== undefined) {
    const named = heads.find((head) => head.bars.includes(bar))
    if (named) return ok(named)
  }
  if (heads.length === 0 || bar !== undefined) {
    const starts = heads.map((head) => `"${head.bars[0]}"`)
    return failed({
      at: bar === undefined ? 'bars' : `bars.${bar}`,
      what:
        bar === undefined
          ? 'no bar here is built up from a stack of sheets'
          : route.bars[bar] === undefined
            ? `there is no bar called "${bar}"`
            : `the bar "${bar}" is not built up from a stack of sheets`,
      why: 'other ways of building up are looked for where a bar starts with "stack"',
      try:
        starts.length > 0
          ? [`take one of: ${starts.join(', ')}`]
          : ['begin the patterned bar with "stack"', 'name a bar that starts so'],
    })
  }
  const layers = (head: Head) =>
    plan
      ? wholeCount(builtBy(plan, head).step.after.build).merged
      : layersOf(head.own?.sheets ?? 1, head.own?.restacks.map((r) => r.pieces) ?? [])
  return ok(heads.reduce((a, b) => (layers(b) > layers(a) ? b : a)))
}

/** Whether a loose stack of the build-up would lean over before it is welded. */
function leans(plan: Plan, head: Head): boolean {
  return plan.steps.some(({ bar, operation, step: { after } }) => {
    if (!head.bars.includes(bar) || !['stack', 'restack'].includes(operation.name)) return false
    return after.size.height > LEAN * Math.min(after.size.length, after.size.width)
  })
}

class Search {
  readonly wishes: readonly Wish[]
  private aim: Aim
  private readonly written: string
  private readonly limits: Limits
  private readonly route: Route
  private readonly smithy: Smithy
  private readonly rates: Rates
  private readonly wanted: Wanted
  private readonly head: Head
  private readonly stack: Sheets
  private readonly options: SuggestOptions

  constructor(
    route: Route,
    smithy: Smithy,
    rates: Rates,
    wanted: Wanted,
    head: Head,
    stack: Sheets,
    options: SuggestOptions,
  ) {
    this.route = route
    this.smithy = smithy
    this.rates = rates
    this.wanted = wanted
    this.head = head
    this.stack = stack
    this.options = options
    this.limits = limitsOf(smithy.shop)
    this.wishes = wishesOf(wanted)
    this.aim = wanted
    this.written = head.own ? recipeText(head.own) : ''
  }

  /** Every way of building up that meets the wishes, by the quick account. */
  candidates(layersNow: number | undefined): Result<readonly Candidate[]> {
    const { head, smithy, rates, stack, options } = this
    const works = { smithy, rates }
    const twins = head.bars.length
    const shelf = new Shelf(head.style, works, twins)
    const sections = sectionsFor(head, stack.width)
    const tail = this.tails(sections, shelf)
    if (tail.problems) return tail
    options.onProgress?.(0.2, 'every way of building up')
    const { tailOf, typical } = tail.ok
    const aimLayers =
      this.wanted.lines !== undefined && typical.linesPerLayer > 0
        ? this.wanted.lines / typical.linesPerLayer
        : (this.wanted.layers ?? layersNow)
    const aim = { lines: this.wanted.lines, layers: aimLayers }
    this.aim = { ...aim, layers: this.wanted.layers ?? layersNow }
    const stacks = stacksFor(stack, options.rack ?? [])
    const counts = Array.from({ length: MOST_SHEETS - 2 }, (_, i) => i + 3)
    const list = (limits: Limits, most: number, least: number, all: readonly number[]) => {
      const choices = choicesOf(
        sections,
        shelf,
        (passage) => {
          const tail = tailOf(passage.to.height)
          return tail && { passage, length: tail.length, heats: tail.heats, hands: tail.hands }
        },
        most,
        limits,
      )
      const ways: readonly Front[] = fronts(choices)
      return candidatesOf(ways, {
        sections,
        stacks: {
          choices: stacks,
          counts: all,
          passage: (sheets, n, at) => {
            const welded = shelf.first(sheets, n)
            const drawn = welded && shelf.draw(welded.to, sections[at])
            return welded && drawn && following(welded, drawn)
          },
        },
        limits,
        tail: typical,
        densities: smithy.densities,
        twins,
        aim,
        layers: [least, most],
      })
    }
    const middle = aimLayers ?? 100
    const near = list(
      this.limits,
      middle * (1 + NEAR_ENOUGH),
      middle * (1 - NEAR_ENOUGH),
      counts.filter((n) => n <= (this.wanted.sheets ?? MOST_SHEETS)),
    )
    const fit = near.filter((c) => this.wishes.every((wish) => wish.metBy(c)))
    if (fit.length > 0) return ok(fit)
    const anyway = list(this.limits, middle * 2, Math.max(3, middle / 4), counts)
    const free = list({ opening: 1, bar: 4 }, middle * 2, Math.max(3, middle / 4), counts)
    return {
      problems: conflictOf(this.wishes, anyway, free, smithy.shop, (way, others) => {
        const worked = this.workOut(way)
        const figures = worked?.figures
        return figures && others.every((wish) => wish.metBy({ ...figures, recipe: way.recipe }))
          ? figures
          : undefined
      }),
    }
  }

  /** The rest of the route at the heights a built-up bar may have. */
  private tails(
    sections: readonly { readonly width: number; readonly height: number }[],
    shelf: Shelf,
  ): Result<{ tailOf: (height: number) => Tail | undefined; typical: Tail }> {
    const { route, head, stack, smithy, rates, limits } = this
    const ends = sections
      .flatMap((section) => [2, 3, 4, 5, 6, 7, 8, 9].map((n) => shelf.pile(section, n, true)))
      .filter((pile) => pile !== undefined && pile.tallest <= limits.opening)
      .map((pile) => (pile as NonNullable<typeof pile>).to)
      .sort((a, b) => a.height - b.height)
    if (ends.length === 0) return failed(nothingFound(head))
    const middle = ends[ends.length >> 1]
    const heights = QUANTILES.map((q) => ends[Math.floor(q * (ends.length - 1))].height)
    let problems: readonly Problem[] = []
    const at = (height: number) => {
      const tail = tailAt(
        { width: middle.width, height },
        route,
        head,
        [stack.dark.steel, stack.bright.steel],
        smithy,
        rates,
      )
      if (tail.problems) problems = tail.problems
      return tail.ok
    }
    const known = new Map<number, Tail | undefined>()
    const tailOf = tailsBetween([...new Set(heights)], (height) => {
      const tail = at(height)
      known.set(height, tail)
      return tail
    })
    const typical = [...known.values()].filter((tail) => tail !== undefined)
    if (typical.length === 0) return { problems }
    return ok({ tailOf, typical: typical[typical.length >> 1] as Tail })
  }

  /** Recipes worth working out in full, each with the ways to do it, the best compromise first. */
  finalists(candidates: readonly Candidate[]): (readonly Candidate[])[] {
    const byRecipe = new Map<string, Candidate[]>()
    for (const candidate of candidates) {
      const name = recipeText(candidate.recipe)
      const same = byRecipe.get(name)
      if (same) same.push(candidate)
      else byRecipe.set(name, [candidate])
    }
    const best = new Map(
      [...byRecipe.values()].map((same) => [ranked(same, quickMeasures)[0], same]),
    )
    const left = ranked(nonDominated([...best.keys()], quickMeasures), quickMeasures)
    // The best in each one thing comes first, then the best compromises.
    const firsts = quickMeasures.map(({ of, better }) =>
      left.reduce((a, b) => ((better === 'less' ? of(b) < of(a) : of(b) > of(a)) ? b : a)),
    )
    const variants = (same: readonly Candidate[]) =>
      ranked(nonDominated(same, quickMeasures), quickMeasures)
    // The recipe as written is always looked at, each at the sections that suit it.
    const own = variants(byRecipe.get(this.written) ?? []).slice(0, OWN_VARIANTS)
    const others = [...new Set([...firsts, ...left])]
      .slice(0, MOST_LOOKED_AT)
      .map((one) => variants(best.get(one) as Candidate[]).slice(0, TRIES))
    return [...own.map((one) => [one]), ...others]
  }

  account(plan: Plan): Pick<Suggestion, 'plan' | 'figures'> {
    const { smithy, rates, head, aim } = this
    const bar = { bar: head.bars[0], headLength: head.length }
    return { plan, figures: figuresOf(plan, smithy.densities, rates, bar, aim) }
  }

  workOut({ recipe }: Candidate): Suggestion | undefined {
    const { head, route, smithy, rates, aim, options } = this
    const steps = stepsOf(recipe, head.style)
    const read = readSteps(steps, '')
    if (read.problems) return undefined
    const plan = planRoute(
      withHead(route, head, () => read.ok),
      smithy,
      options,
    )
    if (plan.problems || leans(plan.ok, head)) return undefined
    const bar = { bar: head.bars[0], headLength: steps.length }
    const figures = figuresOf(plan.ok, smithy.densities, rates, bar, aim)
    return { name: recipeText(recipe), asWritten: false, plan: plan.ok, figures, steps }
  }
}

function noPlainStack(head: Head): Problem {
  return {
    at: `bars.${head.bars[0]}`,
    what: 'this build-up is not a plain one, so no other is put in its place',
    why: 'ways are looked for where two steels are laid by turns and restacked without extra sheets',
    try: ['lay two steels by turns', 'name another bar'],
  }
}

function nothingFound(head: Head): Problem {
  return {
    at: `bars.${head.bars[0]}`,
    what: 'no way of building this bar up was found that the rest of the route can use',
    why: 'every stack tried was too small in section, too tall for the dies or too long for the fire',
    try: ['draw to a smaller section after the last weld', 'enter the shop as it is'],
  }
}
