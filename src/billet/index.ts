/** The metal at one moment, and what must always be true of it. */
export {
  type Billet,
  type Bond,
  type Densities,
  type Temper,
  UNWEIGHED,
  barVolume,
  massOf,
  massesOf,
  volumesOf,
} from './billet.ts'
export {
  type Build,
  type Joined,
  type Layer,
  type LayerCount,
  type Layered,
  type Part,
  countLayers,
  flatAxis,
  layered,
  layeredWithin,
  sharesOf,
  solid,
  steelsIn,
  thicknessOf,
  wholeCount,
  worked,
} from './build.ts'
export { type GrooveRow, type Hollow } from './hollow.ts'
export { type Section, filled } from './section.ts'
export { checkBillet } from './check.ts'
export {
  type Laid,
  type Peeled,
  type Stretch,
  type Turn,
  outermost,
  peel,
  stackAlong,
  stretch,
  turnBuild,
  turnSize,
  withShares,
} from './reshape.ts'
