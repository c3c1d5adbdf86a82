import type { Problem } from '#problem'
import type { Estimate } from '../estimate.ts'
import { type Tools, spreadFor } from './flat-tools.ts'
import { edgeAdvice, edgeLimit, lapLimit, squeezeLimits } from './limits.ts'

/** A straight bar: height between the dies, width across, length along; m. */
export interface Bar {
  readonly height: number
  readonly width: number
  readonly length: number
}

export interface Pass {
  readonly before: Bar
  readonly after: Bar
  /** Whether the bar was turned a quarter before this pass. */
  readonly turned: boolean
  readonly coefficient: Estimate
  readonly elongation: number
  /** Least and most the width may come to. */
  readonly width: readonly [number, number]
  readonly cautions: readonly Problem[]
}

/** The bar a quarter turned: what was width stands up. */
export function turn({ height, width, length }: Bar): Bar {
  return { height: width, width: height, length }
}

/** One pass along the whole bar down to a height: b1 = b0 g^S, length from constant volume. */
export function drawPass(before: Bar, to: number, tools: Tools, turned = false): Pass {
  const height = Math.min(to, before.height)
  const g = height > 0 ? before.height / height : 1
  const coefficient = spreadFor(before.width, tools)
  const at = (s: number) => before.width * g ** s
  const width = at(coefficient.value)
  const volume = before.height * before.width * before.length
  const length = height > 0 && width > 0 ? volume / (height * width) : before.length
  return {
    before,
    after: { height, width, length },
    turned,
    coefficient,
    elongation: before.length > 0 ? length / before.length : 1,
    width: [at(coefficient.low), at(coefficient.high)],
    cautions: [
      ...coefficient.cautions,
      ...squeezeLimits({ ...before, to: height, bite: tools.bite }),
    ],
  }
}

export interface Drawing {
  readonly passes: readonly Pass[]
  /** The bar as it comes out, height and width as asked for. */
  readonly bar: Bar
  /** Least and most length for the bracket of the spread law. */
  readonly length: readonly [number, number]
  readonly cautions: readonly Problem[]
}

export interface DrawTo {
  /** Height to reach, m. */
  readonly height: number
  /** Width to reach, m; left out, the width is what spread makes it. */
  readonly width?: number
  /** Height over height after, per pass; 1.25 if left out. */
  readonly squeeze?: number
}

const mostPasses = 200
/** A side is there when it is this near (a fiftieth of a per cent). */
const near = 2e-4

function once(problems: readonly Problem[]): Problem[] {
  return problems.filter((p, i, list) => list.findIndex((o) => o.at === p.at) === i)
}

/**
 * Height only: as many equal squeezes as the limit asks for, the spread worked out anew at each
 * because the width grows.
 */
function drawFlat(start: Bar, to: DrawTo, tools: Tools): Pass[] {
  const g = Math.min(lapLimit, Math.max(1.01, to.squeeze ?? 1.25))
  const total = Math.max(1, start.height / to.height)
  const count = Math.min(mostPasses, Math.ceil(Math.log(total) / Math.log(g) - 1e-9))
  const passes: Pass[] = []
  for (let i = 1, bar = start; i <= count; i++) {
    const pass = drawPass(bar, i === count ? to.height : bar.height / total ** (1 / count), tools)
    passes.push(pass)
    bar = pass.after
  }
  return passes
}

/** Width the bar would come to if it were only pressed flat from here. */
function widthWhenFlat(bar: Bar, height: number, tools: Tools, g: number): number {
  const total = Math.log(Math.max(1, bar.height / height))
  const count = Math.min(mostPasses, Math.max(1, Math.ceil(total / Math.log(g) - 1e-9)))
  let width = bar.width
  for (let i = 0; i < count; i++) width *= Math.exp((total / count) * spreadFor(width, tools).value)
  return width
}

/** Less than this over its width at the end, a bar is trued last instead of stood on edge now. */
const worthAnEdge = 1.02

/**
 * Height and width, with quarter turns: set on edge early, while the bar is stout, and just so far
 * that pressing it flat afterwards spreads it to the width wanted. What is left over is trued last.
 */
function drawSquare(start: Bar, to: Required<DrawTo>, tools: Tools): Pass[] {
  const g = Math.min(lapLimit, Math.max(1.01, to.squeeze))
  const passes: Pass[] = []
  let flat = start
  let upright = true
  for (let i = 0; i < mostPasses; i++) {
    const [high, wide] = [flat.height / to.height, flat.width / to.width]
    if (high <= 1 + near && wide <= 1 + near) break
    const over = widthWhenFlat(flat, to.height, tools, g) / to.width
    const stout =
      flat.width <= edgeLimit * flat.height && flat.height * g * g < edgeAdvice * flat.width
    const onEdge = high <= 1 + near || (over > worthAnEdge && stout)
    const bar = onEdge ? turn(flat) : flat
    const aim = onEdge ? (high <= 1 + near ? to.width : bar.height / Math.min(g, over)) : to.height
    const pass = drawPass(bar, Math.max(aim, bar.height / g), tools, onEdge === upright)
    passes.push(pass)
    upright = !onEdge
    flat = onEdge ? turn(pass.after) : pass.after
  }
  return passes
}

/**
 * Draws a bar out to a height, or to a height and width with quarter turns, pass by pass with the
 * spread re-evaluated as the section changes. Volume is kept exactly.
 */
export function drawOut(start: Bar, to: DrawTo, tools: Tools): Drawing {
  const passes =
    to.width === undefined
      ? drawFlat(start, to, tools)
      : drawSquare(start, { squeeze: 1.25, ...to, width: to.width }, tools)
  const last = passes.at(-1)
  const turns = passes.filter((p) => p.turned).length
  const end = last ? (turns % 2 === 1 ? turn(last.after) : last.after) : start
  const volume = start.height * start.width * start.length
  const cautions = once(passes.flatMap((p) => p.cautions))
  const short =
    to.width !== undefined &&
    (end.height < to.height * (1 - near) || end.width < to.width * (1 - near))
  if (short)
    cautions.push({
      at: 'section',
      what: 'The bar is already smaller than the section asked for on one side.',
      why: 'Drawing out makes a section smaller; spread alone does not fill it.',
      try: ['Start from a bigger bar or upset it first.', 'Widen with a peen held along the bar.'],
    })
  // The bracket on length follows from the bracket on width of the last free spread.
  const free = to.width === undefined ? passes : []
  const ratio = (pick: 0 | 1) => free.reduce((r, p) => r * (p.width[pick] / p.after.width), 1)
  const length = volume / (end.height * end.width)
  return {
    passes,
    bar: { ...end, length },
    length: [length / ratio(1), length / ratio(0)],
    cautions,
  }
}

/** Passes to reduce an area by a ratio at constant S and squeeze: ln(A0/A1)/((1 − S) ln g). */
export function passesForArea(areaRatio: number, s: number, squeeze: number): number {
  return Math.log(areaRatio) / ((1 - s) * Math.log(squeeze))
}
