/** What ferric chloride does to the pair. */
export {
  type Contrast,
  type EtchOrder,
  type PairContrast,
  contrastOf,
  etchDepth,
  etchMinutes,
  etchRelief,
  relativeAttack,
  toneOf,
} from './attack.ts'
export {
  type Bath,
  afterEtch,
  diluteChloride,
  mixBath,
  sodaFor,
  spentShare,
} from './ferric-chloride.ts'
