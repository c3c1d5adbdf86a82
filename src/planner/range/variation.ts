import type { Shop, Tolerances } from '#shop'
import type { DoneStep } from '../plan.ts'
import type { Draws } from './draws.ts'
import { millTolerance } from './mill-tolerance.ts'

/** A step as it turns out once: its numbers, and the shop on that day. */
export interface Happening {
  readonly values: Readonly<Record<string, unknown>>
  readonly shop: Shop
}

/** Makes one happening of a step out of what was meant. */
export type Vary = (draws: Draws, day: Day) => Happening

/** What is the same through one whole making: the fire burns rich or lean, the hand bites long or short. */
export interface Day {
  /** Times the scale meant. */
  readonly scale: number
  /** Times the bite, and with it the spread, meant. */
  readonly bite: number
}

/** A tolerance is two standard deviations: it holds nineteen times in twenty. */
const DEVIATIONS = 2
/** Heat of activation of scaling in air, J/mol: 33 000 cal [STAN]; metal lost goes with the root of the rate. */
const SCALING = 33000 * 4.184
const GAS = 8.314

export function dayOf(draws: Draws, tolerances: Tolerances): Day {
  return {
    scale: Math.max(0, 1 + (draws.normal() * tolerances.scale) / DEVIATIONS),
    bite: Math.max(0.1, 1 + (draws.normal() * tolerances.spread) / DEVIATIONS),
  }
}

/** Times the scale meant, when the heat is off by so many kelvin. */
export function scaleByHeat(temperature: number, off: number): number {
  return Math.exp((SCALING / (2 * GAS)) * (1 / temperature - 1 / (temperature + off)))
}

interface Scatter {
  readonly name: string
  readonly sd: number
  /** Never beyond so many deviations. */
  readonly cut: number
}

const NO_CUT = 6

/** How the numbers of a step scatter; worked out once for all draws. */
export function variationOf(step: DoneStep, shop: Shop, tolerances: Tolerances): Vary {
  const { values, operation } = step
  const scatters = scattersOf(step, tolerances)
  const sheets = operation.name === 'stack' ? sheetsScatter(values, tolerances) : undefined
  const shaped = operation.name === 'grind to shape'
  // One shop a step, written over at every draw: nothing keeps it from one draw to the next.
  const today: { -readonly [K in keyof Shop]: Shop[K] } = { ...shop }
  const sd = (tolerance: number) => tolerance / DEVIATIONS
  return (draws, day) => {
    const now: Record<string, unknown> = { ...values }
    for (const { name, sd, cut } of scatters) {
      const meant = now[name] as number
      now[name] = Math.max(meant * 0.2, meant + sd * draws.within(cut))
    }
    if (sheets) sheets(draws, now)
    // The skin may go as thin as need be: the stock left for it is what gives.
    if (shaped) now.stock = 0
    const heat = (tolerances.heat / DEVIATIONS) * draws.normal()
    const scale = day.scale * scaleByHeat(shop.forgingHeat, heat)
    const positive = (meant: number, tolerance: number) =>
      Math.max(0, meant + sd(tolerance) * draws.normal())
    today.weldingScale = shop.weldingScale * scale
    today.forgingScale = shop.forgingScale * scale
    today.treatingScale = shop.treatingScale * scale
    if (shop.spread === undefined) today.dieWidth = shop.dieWidth * day.bite
    else today.spread = Math.min(1, shop.spread * day.bite)
    today.kerf = positive(shop.kerf, tolerances.kerf)
    today.crop = positive(shop.crop, tolerances.crop)
    today.trim = positive(shop.trim, tolerances.trim)
    today.cleanUp = positive(shop.cleanUp, tolerances.cleanUp)
    return { values: now, shop: today }
  }
}

type Tolerance = (tolerances: Tolerances, meant: number) => number

const forged: Readonly<Record<string, Tolerance>> = {
  height: (t) => t.height,
  width: (t) => t.width,
}

/** Which numbers of which operation scatter, and by how much either way. */
const scattered: Readonly<Record<string, Readonly<Record<string, Tolerance>>>> = {
  stack: { length: (t) => t.sheetLength },
  'take bar': { length: (t) => t.sheetLength },
  weld: { close: (t, meant) => t.close * meant },
  'draw out': forged,
  'forge flat': forged,
  'square up': { side: (t) => t.height },
  'square on the bias': { side: (t) => t.height },
  'forge to section': { across: (t) => t.height },
  trim: { sides: (t) => t.trim },
  crop: { start: (t) => t.crop, end: (t) => t.crop },
  restack: { cleanUp: (t) => t.cleanUp, crop: (t) => t.crop, kerf: (t) => t.kerf },
  twist: { pitch: (t, meant) => t.pitch * meant },
  ladder: { pitch: (t, meant) => t.groovePitch * meant, depth: (t) => t.grooveDepth },
  dimple: { spacing: (t, meant) => t.groovePitch * meant, depth: (t) => t.grooveDepth },
}

/**
 * How far a number of a step is likely off either way in this shop, SI: two standard deviations.
 * Undefined where the tolerances say nothing of it.
 */
export function likelyOff(
  step: Pick<DoneStep, 'operation' | 'values'>,
  name: string,
  tolerances: Tolerances,
): number | undefined {
  if (step.operation.name === 'stack' && name === 'width')
    return sheetWidthOff(step.values as unknown as SheetValues, tolerances)
  const found = scattersOf(step, tolerances).find((scatter) => scatter.name === name)
  return found && found.sd * DEVIATIONS
}

function scattersOf(
  { operation, values }: Pick<DoneStep, 'operation' | 'values'>,
  tolerances: Tolerances,
): Scatter[] {
  const scatters: Scatter[] = Object.entries(scattered[operation.name] ?? {}).flatMap(
    ([name, of]) => {
      const meant = values[name]
      if (typeof meant !== 'number' || !(meant > 0)) return []
      const sd = of(tolerances, meant) / DEVIATIONS
      return sd > 0 ? [{ name, sd, cut: NO_CUT }] : []
    },
  )
  if (operation.name !== 'take bar') return scatters
  const width = values.width as number
  const height = (values.height as number | undefined) ?? width
  const mill = millTolerance(height, width, tolerances)
  const bought = [
    ...(values.height === undefined ? [] : [{ name: 'height', off: mill.thickness }]),
    { name: 'width', off: mill.width },
  ]
  return [
    ...scatters,
    ...bought.flatMap(({ name, off }) => (off > 0 ? [cutAtMill(name, off)] : [])),
  ]
}

function cutAtMill(name: string, off: number): Scatter {
  return { name, sd: off / DEVIATIONS, cut: DEVIATIONS }
}

interface SheetValues {
  readonly sheets: readonly { readonly thickness: number }[]
  readonly width: number
  readonly outer?: number
}

/** The strips of a stack are brought to one width: the best of them decides. */
function sheetWidthOff({ sheets, width }: SheetValues, tolerances: Tolerances): number {
  return Math.min(
    ...sheets.map(({ thickness }) => millTolerance(thickness, width, tolerances).width),
  )
}

/** All sheets of one entry are cut from one bar: they are off alike. */
function sheetsScatter(
  values: Readonly<Record<string, unknown>>,
  tolerances: Tolerances,
): (draws: Draws, now: Record<string, unknown>) => void {
  const { sheets, width, outer } = values as unknown as SheetValues
  const off = (thickness: number) => millTolerance(thickness, width, tolerances)
  const offs = sheets.map(({ thickness }) => off(thickness).thickness / DEVIATIONS)
  const outerOff = outer === undefined ? 0 : off(outer).thickness / DEVIATIONS
  const widthOff = sheetWidthOff(values as unknown as SheetValues, tolerances) / DEVIATIONS
  return (draws, now) => {
    now.sheets = sheets.map((sheet, i) => ({
      ...sheet,
      thickness: sheet.thickness + offs[i] * draws.within(DEVIATIONS),
    }))
    if (outer !== undefined) now.outer = outer + outerOff * draws.within(DEVIATIONS)
    now.width = width + widthOff * draws.within(DEVIATIONS)
  }
}
