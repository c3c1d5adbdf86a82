import type { PatternMap } from '#pattern'
import { GROUNDS, type Image, samples } from './image.ts'
import { drawScaleBar } from './scale-bar.ts'
import { NOTHING } from '#pattern'

export interface PlainOptions {
  readonly ground?: keyof typeof GROUNDS
  readonly bits?: 8 | 16
  readonly scaleBar?: boolean
}

/** The layers as plain tones: each steel as light as its weight, no gloss, no relief. */
export function drawLayerMap(map: PatternMap, options: PlainOptions = {}): Image {
  const { ground = 'paper', bits = 8, scaleBar = true } = options
  const { width, height, alpha } = map
  const { data, most } = samples(width * height, bits)
  const back = GROUNDS[ground].ground[0]
  const mean = map.means[0]!
  for (let i = 0; i < data.length; i++) {
    const a = alpha[i]! / 255
    data[i] = Math.round((a * (mean[i]! / 65535) + (1 - a) * back) * most)
  }
  const image: Image = { width, height, channels: 1, data, perMetre: 1 / map.view.pixel }
  return scaleBar ? drawScaleBar(image, ground) : image
}

/** Which bar each pixel came from: its number among the map's stacks and one more; 0 where there is no metal. 16 bits. */
export function drawLabels(map: PatternMap): Image {
  const { width, height, alpha, stack } = map
  const data = Uint16Array.from(stack, (s, i) => (s === NOTHING || alpha[i]! < 128 ? 0 : s + 1))
  return { width, height, channels: 1, data, perMetre: 1 / map.view.pixel }
}
