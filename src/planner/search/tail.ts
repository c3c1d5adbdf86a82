import { type Result, ok } from '#problem'
import { layered } from '#billet'
import { type Operation, type Smithy, operations } from '#operations'
import type { Rates } from '#shop'
import { hoursOf } from '../cost/hours.ts'
import { weldsOf } from '../cost/cost.ts'
import { faceLines } from '../face-lines.ts'
import { planRoute } from '../plan-route.ts'
import type { PlannedStep, Route } from '../route.ts'
import { type Head, withHead } from './head.ts'
import { type BarSection, barOf } from './passages.ts'

/** What the rest of the route asks of the built-up bar, and what it takes itself. */
export interface Tail {
  /** Length wanted of the longest of the like-built bars, m. */
  readonly length: number
  /** Lengths of all of them together over the longest. */
  readonly bars: number
  /** Heats of everything after the build-up and of all other bars, tempers left out. */
  readonly heats: number
  readonly hands: number
  readonly welds: number
  /** Steel off the rack for other bars, kg; their sizes do not hang on the build-up. */
  readonly steel: number
  /** Lines per metre of the face for one layer of the built-up bar; 0 where no lines stand on edge. */
  readonly linesPerLayer: number
}

/** Layers of the trial bar: enough that a few lost at its ends do not tell. */
const TRIAL_LAYERS = 161

/** A welded bar of this section, as long as is asked for: stands for any way of building it up. */
function trialBar(section: BarSection, steels: readonly [string, string]): Operation {
  const pattern = operations.find((o) => o.name === 'take bar') as Operation
  return {
    ...pattern,
    forward(_before, values) {
      const { length } = values as unknown as { length: number }
      const thin = section.height / TRIAL_LAYERS
      const layers = Array.from({ length: TRIAL_LAYERS }, (_, i) => ({
        steel: steels[i % 2],
        thickness: thin,
      }))
      const after = {
        ...barOf(section, length, section.height / 3),
        build: layered('z', layers),
        worked: 0.4,
      }
      return ok({
        after,
        losses: [],
        added: {},
        taken: [],
        setAside: [],
        heats: [],
        warnings: [],
        notes: [],
      })
    },
  }
}

/** Works the rest of the route out for a built-up bar of one section. */
export function tailAt(
  section: BarSection,
  route: Route,
  head: Head,
  steels: readonly [string, string],
  smithy: Smithy,
  rates: Rates,
): Result<Tail> {
  const start: PlannedStep = {
    operation: trialBar(section, steels),
    values: { length: 1 },
    free: [{ name: 'length', side: 'length' }],
    at: '',
  }
  const trial = withHead(route, head, () => [start])
  const planned = planRoute(trial, smithy)
  if (planned.problems) return planned
  const { steps, solved, finished } = planned.ok
  const lengths = head.bars.map((bar) => solved.find((s) => s.at === `bars.${bar}[0]`)?.value ?? 0)
  const longest = Math.max(...lengths)
  const rest = steps.filter((step) => !(head.bars.includes(step.bar) && step.index === 0))
  return ok({
    length: longest,
    bars: lengths.reduce((a, b) => a + b, 0) / longest,
    heats: rest
      .flatMap(({ step }) => step.heats)
      .reduce((n, h) => n + (h.purpose === 'temper' ? 0 : h.count), 0),
    hands: hoursOf(rest, rates).reduce((sum, h) => sum + h.hands, 0) + rates.assembly,
    welds: weldsOf({ steps: rest }),
    steel: rest.flatMap(({ step }) => Object.values(step.added)).reduce((a, b) => a + b, 0),
    linesPerLayer: (faceLines(finished)?.perMetre ?? 0) / TRIAL_LAYERS,
  })
}

/** Reads between tails worked out at some heights: the rest of a route changes little with the bar it starts from. */
export function tailsBetween(
  heights: readonly number[],
  at: (height: number) => Tail | undefined,
): (height: number) => Tail | undefined {
  const known = heights.flatMap((height) => {
    const tail = at(height)
    return tail ? [{ height, tail }] : []
  })
  return (height) => {
    const above = known.findIndex((k) => k.height >= height - 1e-9)
    if (above < 0) return undefined
    const [low, high] = [known[Math.max(0, above - 1)], known[above]]
    if (above === 0 && low.height > height + 1e-9) return undefined
    const span = high.height - low.height
    const share = span > 0 ? (height - low.height) / span : 0
    const mix = (of: (tail: Tail) => number) =>
      of(low.tail) + (of(high.tail) - of(low.tail)) * share
    // Metal, not length, is what the rest of the route needs: lengths are mixed as volumes.
    const volume = (k: { height: number; tail: Tail }) => k.tail.length * k.height
    return {
      length: (volume(low) + (volume(high) - volume(low)) * share) / height,
      bars: mix((t) => t.bars),
      // A heat more rather than one too few.
      heats: Math.ceil(mix((t) => t.heats) - 1e-9),
      hands: mix((t) => t.hands),
      welds: high.tail.welds,
      steel: mix((t) => t.steel),
      linesPerLayer: mix((t) => t.linesPerLayer),
    }
  }
}
