import type { Problem } from '#problem'
import { outOfRange } from '../estimate.ts'
import type { TemperaturePoint } from '../history.ts'
import { type FluxLaw, type Row, type Skin, march } from '../march/march.ts'
import {
  conductivity,
  enthalpy,
  specificHeat,
  steelDensity,
  temperatureOfEnthalpy,
} from '../hot-steel/steel-properties.ts'
import type { Surroundings } from './surroundings.ts'

/** Stefan-Boltzmann constant, W/(m² K⁴): 2019 SI. */
export const radiation = 5.670374419e-8

/**
 * The bar's section. `round`: thickness is the diameter. `rectangle`: heat is followed through the
 * thickness, and what goes in at the edges is spread over the width; a bar near square is followed
 * as the round of one volume to skin, which is its own width.
 */
export interface BarSection {
  readonly shape: 'plate' | 'round' | 'rectangle'
  readonly thickness: number
  readonly width?: number
}

export interface BarHeat {
  /** Temperature of skin, core and mean against time, K and s. */
  readonly skin: readonly TemperaturePoint[]
  readonly core: readonly TemperaturePoint[]
  readonly mean: readonly TemperaturePoint[]
  /** Which model was used, and the Biot number it was chosen by. */
  readonly model: 'lumped' | 'through the thickness'
  readonly biot: number
  /** Temperatures from skin to core at the end, K, for the next call's `from`. */
  readonly profile: readonly number[]
  readonly notes: readonly string[]
  readonly outOfRange: readonly Problem[]
}

export interface HeatOptions {
  /** K throughout, or from skin to core. Default 293.15. */
  readonly from?: number | readonly number[]
  readonly seconds: number
  /** Points kept in each history, evenly spaced; left out, one at each step the march takes. */
  readonly points?: number
  /** Stop early, once a temperature (K) is met. */
  readonly until?: {
    readonly at: 'skin' | 'core' | 'mean'
    readonly temperature: number
    readonly rising: boolean
  }
  /** Cells from skin to core. Default 16. */
  readonly cells?: number
  /** Constant properties, for comparing with closed forms. */
  readonly properties?: {
    readonly conductivity: number
    readonly specificHeat: number
    readonly density?: number
  }
  /** Follow the core even where the Biot number would let it be lumped, or the other way. */
  readonly model?: 'lumped' | 'through the thickness'
}

/** Volume to heated skin, m. */
export function volumeToSkin(bar: BarSection): number {
  const t = Math.max(bar.thickness, 1e-6)
  if (bar.shape === 'round') return t / 4
  const w = bar.shape === 'rectangle' ? Math.max(bar.width ?? t, 1e-6) : Infinity
  return 1 / (2 / t + 2 / w)
}

/** Film that would carry the greatest flux of the heat, over the steel's resistance. */
export function biotNumber(
  bar: BarSection,
  place: Surroundings,
  temperature: number,
  k = conductivity(temperature),
): number {
  const film =
    place.convection +
    (place.contact === undefined ? 0 : place.contact.conductance * place.contact.share)
  const glow =
    place.emissivity * radiation * (place.wall ** 2 + temperature ** 2) * (place.wall + temperature)
  const coil = place.coil === undefined ? 0 : place.coil.flux / 1000
  return ((film + glow + coil) * volumeToSkin(bar)) / k
}

/**
 * Heats or cools a bar: enthalpy of the steel conserved, conduction implicit, radiation and films
 * at the skin. Lumped where the Biot number is below 0.1 (the textbook limit, from memory).
 */
export function heatBar(bar: BarSection, place: Surroundings, options: HeatOptions): BarHeat {
  const fixed = options.properties
  const section = {
    ...bar,
    thickness: clean(bar.thickness, 1e-4, 2),
    width: clean(bar.width ?? bar.thickness, 1e-4, 10),
  }
  const from = options.from ?? 293.15
  const start = (typeof from === 'number' ? [from] : from).map((t) => clean(t, 100, 2200))
  if (start.length === 0) start.push(293.15)
  const hottest = Math.max(place.coil?.until ?? 0, place.wall, ...start)
  const k = fixed?.conductivity ?? conductivity(hottest)
  const biot = Math.max(
    biotNumber(section, place, Math.max(...start), k),
    biotNumber(section, place, place.wall, k),
  )
  const model =
    options.model ??
    (biot < 0.1 && start.every((t) => Math.abs(t - start[0]!) < 15)
      ? 'lumped'
      : 'through the thickness')
  const lumped = model === 'lumped'
  const cells = lumped ? 1 : Math.round(clean(options.cells ?? 16, 2, 400))
  const seconds = clean(options.seconds, 0, 1e6)
  const { row, edge } = rowOf(section, place, cells, start, lumped, fixed)
  const read = (u: number) => (fixed ? u : temperatureOfEnthalpy(u * unit))
  const notes = [
    edge,
    lumped ? 'One temperature throughout.' : `Followed in ${cells} cells from skin to core.`,
  ]
  const skin: TemperaturePoint[] = []
  const core: TemperaturePoint[] = []
  const mean: TemperaturePoint[] = []
  const keep = (time: number) => {
    const profile = Array.from(row.value, read)
    const volumes = row.volume!
    const whole = volumes.reduce((a, b) => a + b, 0)
    const heat = row.value.reduce((sum, u, i) => sum + u * volumes[i]!, 0) / whole
    skin.push({ time, temperature: skinOf(row, profile, place, fixed) })
    core.push({ time, temperature: coreOf(profile) })
    mean.push({ time, temperature: read(heat) })
  }
  keep(0)
  const until = options.until
  const enough = () =>
    until !== undefined &&
    (until.rising ? until.temperature <= here(until.at) : until.temperature >= here(until.at))
  const here = (at: 'skin' | 'core' | 'mean') => ({ skin, core, mean })[at].at(-1)!.temperature
  let unfinished = false
  if (options.points === undefined) {
    // A point at each step of the march; a fifth of a kelvin is nothing beside what fires differ by.
    const observe = (time: number) => {
      keep(time)
      return enough()
    }
    const spell = { seconds, from: 0, to: 0, stretch: 1 }
    if (!enough()) unfinished = march(row, [spell], 0.2, false, observe).unfinished
  } else {
    const points = Math.round(clean(options.points, 1, 2000))
    for (let i = 1; i <= points && seconds > 0; i++) {
      const spell = { seconds: seconds / points, from: 0, to: 0, stretch: 1 }
      unfinished = march(row, [spell], 0.02, true).unfinished || unfinished
      keep((seconds * i) / points)
    }
  }
  if (unfinished) notes.push('The march was stopped at its step limit.')
  const out: Problem[] = []
  if (fixed === undefined && hottest > 1573.15)
    out.push(outOfRange('temperature', hottest, [293, 1473], 'K', 'EN 1993-1-2 steel properties'))
  return {
    skin,
    core,
    mean,
    model,
    biot,
    profile: Array.from(row.value, read),
    notes,
    outOfRange: out,
  }
}

/** The conserved value is enthalpy over 650 J/kg, so that it reads like kelvin. */
const unit = 650

function rowOf(
  bar: BarSection,
  place: Surroundings,
  n: number,
  start: readonly number[],
  lumped: boolean,
  fixed: HeatOptions['properties'],
) {
  const half = bar.thickness / 2
  const width = new Float64Array(n).fill(half / n)
  const round =
    bar.shape === 'round' ||
    (bar.shape === 'rectangle' &&
      bar.width! < 1.5 * bar.thickness &&
      bar.width! > bar.thickness / 1.5)
  const volume = new Float64Array(n)
  const area = new Float64Array(n)
  let edge = 'Wide plate: both faces.'
  if (round) {
    // A square or nearly square bar has the volume to skin of a round of 4 V/A.
    const radius = 2 * volumeToSkin(bar)
    width.fill(radius / n)
    for (let i = 0; i < n; i++) {
      const outer = radius * (1 - i / n)
      const inner = radius * (1 - (i + 1) / n)
      area[i] = outer / radius
      volume[i] = (outer * outer - inner * inner) / (2 * radius)
    }
    edge =
      bar.shape === 'round'
        ? 'Round bar.'
        : 'Near square: followed as the round of the same volume to skin.'
  } else {
    volume.set(width)
    area.fill(1)
    if (bar.shape === 'rectangle' && bar.width! > 0) {
      // Edges: skin area over half the section, as if spread evenly: volume over skin kept true.
      const share = volumeToSkin(bar) / half
      for (let i = 0; i < n; i++) volume[i] = width[i]! * share
      edge = 'Flat bar: heat through the edges is spread over the width.'
    }
  }
  const density = fixed?.density ?? steelDensity
  const value = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    const t = start[Math.min(start.length - 1, Math.floor((i / n) * start.length))]!
    value[i] = fixed ? t : enthalpy(t) / unit
  }
  const row: Row = {
    width,
    value,
    volume,
    area,
    ends: 'sealed',
    law: fixed ? fixedLaw(fixed, density, lumped) : steelLaw(lumped),
    skin: skinFlux(place, fixed ? fixed.specificHeat * density : steelDensity * unit),
  }
  return { row, edge }
}

/** Conductance high enough to be no resistance, for the lumped bar. */
const noResistance = 1e9

function steelLaw(lumped: boolean): FluxLaw {
  const scale = 1 / (steelDensity * unit)
  return {
    fill(u, _, p, dp, k, dk) {
      for (let i = 0; i < u.length; i++) {
        const t = temperatureOfEnthalpy(u[i]! * unit)
        p[i] = t
        dp[i] = unit / specificHeat(t)
        k[i] = lumped ? noResistance : conductivity(t) * scale
        dk[i] = lumped ? 0 : t > 1073.15 ? 0 : -3.33e-2 * scale * dp[i]!
      }
    },
  }
}

function fixedLaw(
  f: NonNullable<HeatOptions['properties']>,
  density: number,
  lumped: boolean,
): FluxLaw {
  return {
    fill(u, _, p, dp, k, dk) {
      for (let i = 0; i < u.length; i++) {
        p[i] = u[i]!
        dp[i] = 1
        k[i] = lumped ? noResistance : f.conductivity / (f.specificHeat * density)
        dk[i] = 0
      }
    },
  }
}

/** W/m² into a skin at this temperature, and its change with it. */
function fluxInto(place: Surroundings, t: number): readonly [number, number] {
  let q =
    place.emissivity * radiation * (place.wall ** 4 - t ** 4) + place.convection * (place.gas - t)
  let slope = -4 * place.emissivity * radiation * t ** 3 - place.convection
  const touch = place.contact
  if (touch !== undefined) {
    q += touch.conductance * touch.share * (touch.temperature - t)
    slope -= touch.conductance * touch.share
  }
  const coil = place.coil
  if (coil !== undefined) {
    // Full power until 50 K short, then falling to nothing: a controller's proportional band.
    const need = Math.min(1, Math.max(0, (coil.until + 1 - t) / 50))
    q += coil.flux * need
    if (need > 0 && need < 1) slope -= coil.flux / 50
  }
  return [q, slope]
}

/** Skin temperature: what comes in through the skin goes on through half a cell. */
function skinTemperature(
  place: Surroundings,
  p: number,
  conductance: number,
): readonly [number, number, number] {
  let t = p
  let q = 0
  let slope = 0
  for (let i = 0; i < 12; i++) {
    ;[q, slope] = fluxInto(place, t)
    const step = (q - conductance * (t - p)) / (conductance - slope)
    t = Math.max(1, t + step)
    if (Math.abs(step) < 1e-7) break
  }
  ;[q, slope] = fluxInto(place, t)
  return [t, q, slope]
}

function skinFlux(place: Surroundings, scale: number): Skin {
  return {
    flux(p, k, width, _, out) {
      const conductance = (2 * k * scale) / width
      const [t, q, slope] = skinTemperature(place, p, conductance)
      // dt/dp = c/(c - s); q follows the skin.
      out[0] = q / scale
      out[1] = (slope * conductance) / (conductance - slope) / scale
      out[2] = (slope * (p - t) * 2) / width / (conductance - slope)
    },
  }
}

function skinOf(
  row: Row,
  profile: readonly number[],
  place: Surroundings,
  fixed: HeatOptions['properties'],
): number {
  if (profile.length === 1) return profile[0]!
  const k = fixed?.conductivity ?? conductivity(profile[0]!)
  return skinTemperature(place, profile[0]!, (2 * k) / row.width[0]!)[0]
}

/** At the middle the profile is flat: a parabola through the last two cells. */
function coreOf(profile: readonly number[]): number {
  const n = profile.length
  return n === 1 ? profile[0]! : (9 * profile[n - 1]! - profile[n - 2]!) / 8
}

function clean(value: number, low: number, high: number): number {
  return value >= low ? Math.min(value, high) : low
}
