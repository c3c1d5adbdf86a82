/** The exact share of each steel in a pixel through which the sheets of a pile run straight. */
export { type Cut, type Ground, type Weighing, aloneTo, meanOff, weigh } from './weighing.ts'
export { type SheetWeights, type Weights, weighPile } from './weights.ts'
export { boundariesOf, cellsOf, heightOf } from './weighing.ts'
export { type MeanReader, NEAR, meanReader } from './mean-reader.ts'
export { type Reach, layerStage, meanStage } from './coverage-stage.ts'
export { shareBelow, slabShare } from './trapezoid.ts'
