import type { LaidSteel } from '#desk'
import type { FinishName } from '#look'
import type { Weights as Weighted } from '#pattern'
import type { Camera, Mode, Vector } from '#scene'

/** What is wanted of a picture besides where the eye stands. */
export interface Wanted {
  readonly mode: Mode
  readonly range: readonly [number, number]
  readonly steps: number
  readonly finish: FinishName
  readonly strip: number
  readonly stripTurn: number
  readonly cut?: { readonly out: Vector; readonly at: number }
  readonly ground: number
  readonly night: boolean
}

/** Brightness, height; carbon and hardness once the heats are known. */
export type Weights = readonly Weighted[]

/** Draws the metal on a canvas: the graphics card, or the engine where there is none. */
export interface StagePainter {
  readonly by: 'card' | 'engine'
  /** Whether sections and overlays can be drawn. */
  readonly whole: boolean
  lay(steel: LaidSteel, weights: Weights): Promise<void>
  /** Other weights of the metal laid; whether the picture that stands is another with them. */
  weigh(weights: Weights): boolean
  /** Makes ready what a mode needs. */
  prepare(mode: Mode): Promise<void>
  /** css px; `moving` while the hand moves: quick before exact. */
  draw(camera: Camera, wanted: Wanted, width: number, height: number, moving: boolean): void
  /** Drawn with the metal stretched to another size (of the box laid), for the way between two steps. */
  stretch(by: Vector): void
  /** Called when it has been stretched, so that it is drawn again. */
  stretched?: () => void
  /** The picture as it stands, opaque where there is metal. */
  readonly canvas: HTMLCanvasElement
  dispose(): void
}
