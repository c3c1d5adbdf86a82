import { printCount } from '#units'
import type { Problem } from '#problem'
import { type Basis, type Estimate, showMillimetres, solveRising } from '../estimate.ts'
import { type Metal, type Verdict, stressOf } from '../machines/judge.ts'
import { type Tool, blowEnergy, isPress } from '../machines/tools.ts'
import { hotDryFactor } from '../pressing/friction.ts'
import { flatPunchOverYield } from '../pressing/indentation.ts'
import { narrowDies } from '../pressing/narrow-dies.ts'
import type { Emblem } from '../emblem/emblem.ts'

export interface StampPlan {
  readonly emblem: Emblem
  readonly metal: Metal
  /** How deep the mark is pressed, m. */
  readonly depth: number
  /** Thickness of the piece under the mark, m. */
  readonly thickness: number
  /** Taken off the marked face afterwards: scale, grinding, polish; m. */
  readonly takenOff: number
  /** Depth wanted in the finished face, m; 0.2 mm if left out (common practice). */
  readonly depthWanted?: number
  /** Radius of the die's edges, m; 0.1 mm if left out (common practice: stoned by hand). */
  readonly edgeRadius?: number
  /** Steel lost to scale on each wall while hot, m. */
  readonly scale?: number
  /** The mark sunk by a raised die, or standing proud from a die cut hollow. */
  readonly mark?: 'sunk' | 'raised'
  readonly friction?: number
}

export interface CrackRisk {
  readonly risk: 'low' | 'some' | 'high'
  /** Stress at the foot of the mark over the stress beside it: 1 + 2√(depth/radius). */
  readonly raiser: number
}

export interface StampAdvice {
  /** N to reach the depth in one squeeze. */
  readonly force: Estimate
  /** J to reach it. */
  readonly work: Estimate
  /** Blows, for a hammer; squeezes are one. */
  readonly blows: Estimate
  readonly flowStress: Estimate
  readonly depthLeft: number
  /** Pressing depth that would leave the depth wanted, m. */
  readonly depthNeeded: number
  /** Thinnest stroke that survives this depth and finish, m. */
  readonly smallestStroke: number
  readonly crack: CrackRisk
  readonly bending: LayerBending
  readonly verdict: Verdict
  readonly wouldDo: readonly string[]
  readonly cautions: readonly Problem[]
}

/** How the layers under a mark are bent: sinking = depth · e^(−2π z / feature), z below the floor. */
export interface LayerBending {
  readonly depth: number
  /** Wavelength of the relief: stroke and gap, or twice the stroke when it stands alone; m. */
  readonly feature: number
  /** Depth below the face at which a tenth of the sinking is left, m. */
  readonly reach: number
}

/** Sinking (m) of a layer at `below` (m) under the mark: decay of a harmonic load (trade practice, worked out here). */
export function sinkingOf({ depth, feature }: LayerBending, below: number): number {
  return feature > 0 ? depth * Math.exp((-2 * Math.PI * Math.max(0, below)) / feature) : 0
}

const rule: Basis = {
  law: 'hot stamp, 3 to 5 times flow stress on the raised area',
  sources: ['memory'],
  standing: 'from memory',
}
const punch: Basis = {
  law: 'flat punch and narrow dies, slip lines',
  sources: ['project', 'memory'],
  standing: 'computed',
}

/**
 * Pressure over flow stress at a depth: a flat punch for narrow strokes (2.97), less where the stroke
 * is wide against the thickness (narrow-die field of a piece lying on the anvil), and half the walls
 * rubbing with m k. Never over 5.
 */
export function stampPressure(stroke: number, thickness: number, depth: number, m: number): number {
  const slender = stroke > 0 ? (2 * Math.max(1e-6, thickness)) / stroke : Infinity
  const face = Math.min(flatPunchOverYield, (2 / Math.sqrt(3)) * narrowDies(slender))
  const walls = stroke > 0 ? (m * depth) / (Math.sqrt(3) * stroke) : 0
  return Math.min(5, face + walls)
}

/** Strain that stands for an indentation of this depth: 0.08 at first touch (as for hardness), growing with depth over stroke. */
function strainOf(depth: number, stroke: number): number {
  return Math.min(0.7, 0.08 + (0.2 * depth) / Math.max(1e-6, stroke))
}

function forcesAt(
  plan: StampPlan,
  stress: Estimate,
  depth: number,
): readonly [number, number, number] {
  const { emblem, thickness } = plan
  const factor = stampPressure(emblem.stroke, thickness, depth, plan.friction ?? hotDryFactor.value)
  const narrow = (2 * thickness) / Math.max(1e-6, emblem.stroke) >= 8.72
  const low = narrow ? Math.min(3, factor) : Math.min(factor, 0.9 * factor)
  const most = narrow ? 5 : Math.min(5, Math.max(3, 1.4 * factor))
  return [
    low * stress.low * emblem.area,
    factor * stress.value * emblem.area,
    most * stress.high * emblem.area,
  ]
}

/** Work to a depth, J: the force integrated, six points of Simpson's rule. */
function worksTo(
  plan: StampPlan,
  stress: Estimate,
  depth: number,
): readonly [number, number, number] {
  const weights = [1, 4, 2, 4, 2, 4, 1]
  const sums = [0, 0, 0]
  weights.forEach((w, i) => {
    const at = forcesAt(plan, stress, (depth * i) / 6)
    for (let k = 0; k < 3; k++) sums[k]! += (w * at[k]! * depth) / 18
  })
  return sums as unknown as [number, number, number]
}

function estimate(three: readonly [number, number, number], stress: Estimate): Estimate {
  return {
    low: three[0],
    value: three[1],
    high: three[2],
    basis: [rule, punch, ...stress.basis],
    cautions: stress.cautions,
  }
}

function crackRisk(plan: StampPlan): CrackRisk {
  const radius = Math.max(1e-6, plan.edgeRadius ?? 1e-4)
  const raiser = 1 + 2 * Math.sqrt(plan.depth / radius)
  // A corner sharper than a right angle in plan meets the foot of the mark from two sides.
  const acute =
    plan.emblem.sharpestRadius < radius && plan.emblem.sharpestAngle < Math.PI / 2 - 1e-6
  const score = (raiser > 8 ? 2 : raiser > 5 ? 1 : 0) + (acute ? 1 : 0)
  return { raiser, risk: score >= 2 ? 'high' : score === 1 ? 'some' : 'low' }
}

/** Thinnest line an eye makes out as a line: pairs under 0.2 mm read as grey (from memory). */
const readable = 2e-4

function smallestStrokeFor(
  { depth, scale = 0, mark = 'sunk' }: StampPlan,
  depthLeft: number,
): number {
  // A die stroke thinner than half its depth bends or breaks; metal does not climb a slot deeper than
  // it is wide (both common practice). Scale widens a sunk line and eats a raised one from both sides.
  return mark === 'sunk'
    ? Math.max(readable, depth / 2)
    : Math.max(readable + 2 * scale, depth, depthLeft > 0 ? readable + 2 * scale : 0)
}

function cautionsOf(plan: StampPlan, left: number, smallest: number, crack: CrackRisk): Problem[] {
  const { emblem, depth, thickness, takenOff, depthWanted = 2e-4 } = plan
  const found: Problem[] = []
  if (left < depthWanted - 1e-12)
    found.push({
      at: 'depth',
      what:
        left <= 0
          ? 'The mark is ground off.'
          : `Only ${showMillimetres(left)} of the mark is left after polishing.`,
      why: `Pressed ${showMillimetres(depth)}, ${showMillimetres(takenOff)} comes off the face; ${showMillimetres(depthWanted)} is wanted.`,
      try: [
        `Press ${showMillimetres(depthWanted + takenOff)} deep.`,
        'Stamp after rough grinding, so that less comes off.',
      ],
    })
  if (emblem.thinnest < smallest)
    found.push({
      at: 'stroke',
      what: `Strokes of ${showMillimetres(emblem.thinnest)} are too thin for ${showMillimetres(depth)} deep.`,
      why: `At this depth and finish a stroke needs ${showMillimetres(smallest)} to survive (common practice).`,
      try: [
        `Thicken the thinnest strokes to ${showMillimetres(smallest)}.`,
        'Press less deep, or make the emblem bigger.',
      ],
    })
  if (crack.risk === 'high')
    found.push({
      at: 'corner',
      what: 'A crack may start from the foot of the mark in the quench.',
      why: `The foot raises stress ${crack.raiser.toFixed(1)} times${emblem.sharpestAngle < Math.PI / 2 - 1e-6 ? `, and the sharpest corner is ${Math.round((emblem.sharpestAngle * 180) / Math.PI)}°` : ''}.`,
      try: [
        `Round the die's edges to ${showMillimetres(depth / 6)} or more.`,
        'Round the sharp corners of the drawing.',
        'Leave the piece soft, or quench slower.',
      ],
    })
  if (depth > thickness / 3)
    found.push({
      at: 'thickness',
      what: `A mark ${showMillimetres(depth)} deep shows on the back of ${showMillimetres(thickness)}.`,
      why: 'Past a third of the thickness the metal is pushed through rather than aside (common practice).',
      try: ['Back the piece with a flat die.', 'Press less deep or stamp before thinning.'],
    })
  return found
}

/** Greatest blows on one mark before the stamp is likely to jump (common practice: one or two, held in a guide). */
const blowsHeld = 3

/** Share of a blow through a stamp that goes into the metal: 0.2 to 0.5 die to die, 0.8 soft (from memory, medium confidence). */
const stampEfficiency = { low: 0.2, value: 0.4, high: 0.8 } as const

function blowsOf(work: readonly [number, number, number], energy: number) {
  const { low, value, high } = stampEfficiency
  const count = (w: number, share: number) => Math.max(1, w / Math.max(1e-9, energy * share))
  return [count(work[0], high), count(work[1], value), count(work[2], low)] as const
}

/**
 * Everything a smith asks of a hot stamp: force or blows for a depth at a temperature, what is left
 * after polishing, the thinnest stroke that survives, the crack risk, and how far layers are bent.
 */
export function adviseStamp(plan: StampPlan, tool: Tool): StampAdvice {
  const { emblem, depth, takenOff, depthWanted = 2e-4 } = plan
  const strain = strainOf(depth, emblem.stroke)
  const speed = isPress(tool) ? tool.speed : 0.5 * tool.speed
  // The metal that moves reaches about a stroke's width to either side of its edge.
  const rate = Math.min(3000, speed / (2 * Math.max(1e-4, emblem.stroke)))
  const stress = stressOf(plan.metal, strain, rate)
  const [force, work] = [forcesAt(plan, stress, depth), worksTo(plan, stress, depth)]
  const depthLeft = Math.max(0, depth - takenOff)
  const smallestStroke = smallestStrokeFor(plan, depthLeft)
  const crack = crackRisk(plan)
  const feature = emblem.wavelength
  const bending = { depth, feature, reach: (feature * Math.LN10) / (2 * Math.PI) }
  const blows = isPress(tool) ? ([1, 1, 1] as const) : blowsOf(work, blowEnergy(tool))
  const verdict: Verdict = isPress(tool)
    ? force[2] <= tool.force
      ? 'can do'
      : force[1] <= tool.force
        ? 'marginal'
        : 'cannot'
    : blows[1] <= blowsHeld
      ? 'can do'
      : blows[1] <= 3 * blowsHeld
        ? 'marginal'
        : 'cannot'
  return {
    force: estimate(force, stress),
    work: estimate(work, stress),
    blows: estimate(blows, stress),
    flowStress: stress,
    depthLeft,
    depthNeeded: depthWanted + takenOff,
    smallestStroke,
    crack,
    bending,
    verdict,
    wouldDo: verdict === 'can do' ? [] : cures(plan, tool, stress, force, work),
    cautions: [...stress.cautions, ...cautionsOf(plan, depthLeft, smallestStroke, crack)],
  }
}

/** m/s (common practice). */
const usualPressSpeed = 0.03

const kilonewtons = (force: number) => Math.ceil(force / 5000) * 5

function cures(
  plan: StampPlan,
  tool: Tool,
  stress: Estimate,
  force: readonly number[],
  work: readonly number[],
): string[] {
  if (isPress(tool))
    return [
      `A press of ${kilonewtons(force[1]!)} to ${kilonewtons(force[2]!)} kN.`,
      `An emblem of ${Math.round(100 * Math.sqrt(tool.force / force[2]!))} % of the size, or only its outline raised.`,
      'Hotter metal, if it stands it.',
    ]
  const energy = blowEnergy(tool) * stampEfficiency.value
  const slow = stressOf(
    plan.metal,
    strainOf(plan.depth, plan.emblem.stroke),
    usualPressSpeed / (2 * Math.max(1e-4, plan.emblem.stroke)),
  )
  const squeezed = forcesAt(plan, slow, plan.depth)
  const reached = depthReached(plan, stress, blowsHeld * energy)
  return [
    `A press of ${kilonewtons(squeezed[1])} to ${kilonewtons(squeezed[2])} kN does it in one squeeze.`,
    `A head of ${Math.ceil((2 * work[1]!) / (blowsHeld * stampEfficiency.value * tool.speed ** 2))} kg at the same speed does it in ${printCount(blowsHeld, 'blow')}.`,
    `This hammer reaches ${showMillimetres(reached)} in ${printCount(blowsHeld, 'blow')}.`,
    'A guide or a struck die that finds its place again, for more blows.',
  ]
}

/** Depth (m) that an energy (J) reaches. */
export function depthReached(plan: StampPlan, stress: Estimate, energy: number): number {
  return solveRising((d) => worksTo(plan, stress, d)[1] - energy, 0, plan.thickness, 50)
}
