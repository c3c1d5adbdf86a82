/** Pictures of a traced face: etched, plain, in outline. Measuring on them and on photographs. */
export { type Image, GROUNDS } from './image.ts'
export {
  type Finish,
  type FinishName,
  type Lighting,
  SPARED,
  finishes,
  stripLight,
} from './finish.ts'
export { type EtchedOptions, drawEtched } from './etched.ts'
export { type PlainOptions, drawLabels, drawLayerMap } from './plain-maps.ts'
export { drawContours } from './contours.ts'
export { MAY_VARY } from './may-vary.ts'
export { type Field, type Spot, fieldOfMap, fieldOfPicture } from './field.ts'
export {
  type LinesMet,
  type Spectrum,
  angleOf,
  brightShare,
  linesAlong,
  repeatAlong,
  spectrumAlong,
} from './measure.ts'
