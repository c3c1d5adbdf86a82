/** What the fire takes from each face. */
export { type Atmosphere, type ScaleLoss, atmospheres, oxidise } from './oxidise.ts'
