import { type Axis, type Size, boxVolume } from '#geometry'
import { type Build, sharesOf } from './build.ts'
import type { Hollow } from './hollow.ts'
import { type Section, filled } from './section.ts'

/** How the pieces of a billet hold together. */
export type Bond = 'loose' | 'tacked' | 'sealed' | 'welded'

/** What the last heat treatment left. */
export type Temper = 'as forged' | 'normalised' | 'annealed' | 'hardened' | 'tempered'

/**
 * The metal of one bar at one moment: cold sizes in metres. A value; nothing alters it.
 */
export interface Billet {
  /** The box that encloses it. */
  readonly size: Size
  /** A plain bar's section, or what has been cut into it. */
  readonly shape: Section | 'cut'
  /** Volume of metal, m³; voids not counted. Of a plain bar it is section × length. */
  readonly volume: number
  readonly build: Build
  readonly bond: Bond
  readonly temper: Temper
  /**
   * Height left of the weakest weld since it was closed, 1 = not worked since. A weld is trusted
   * once it has been worked to about half (common practice, no source).
   */
  readonly worked: number
  /** The side that would grow if the first stack were cut longer: where the plan takes more metal. */
  readonly spare: Axis
  /**
   * What of the finished piece has been made in it: `shape` once it is ground to the piece with some
   * stock left, then each kind of feature. Left out: it is still a bar.
   */
  readonly made?: readonly string[]
  /** Of a piece forged or ground to shape: the bar of that moment, so that what comes off its skin is known. */
  readonly groundFrom?: { readonly build: Build; readonly size: Size }
  /** Of a bar that has been cut into or is laid of rods: what its box leaves open. Left out, not known. */
  readonly hollow?: Hollow
}

/** Density of each steel by name, kg/m³. */
export type Densities = Readonly<Record<string, number>>

/** Given in place of densities where only sizes are wanted: nothing is weighed, every mass is left out. */
export const UNWEIGHED: Densities = Object.freeze({})

/** Volume of a plain bar of this section and size, m³. */
export function barVolume(size: Size, section: Section): number {
  return boxVolume(size) * filled[section]
}

/** Volume of each steel, m³. */
export function volumesOf(billet: Billet): Readonly<Record<string, number>> {
  return Object.fromEntries(
    Object.entries(sharesOf(billet.build)).map(([steel, share]) => [steel, share * billet.volume]),
  )
}

/** Mass of each steel, kg. */
export function massesOf(billet: Billet, densities: Densities): Readonly<Record<string, number>> {
  if (densities === UNWEIGHED) return {}
  return Object.fromEntries(
    Object.entries(volumesOf(billet)).map(([steel, volume]) => [steel, volume * densities[steel]]),
  )
}

/** Mass of the whole, kg. */
export function massOf(billet: Billet, densities: Densities): number {
  return Object.values(massesOf(billet, densities)).reduce((sum, mass) => sum + mass, 0)
}
