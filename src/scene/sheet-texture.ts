import { DataTexture, FloatType, RGBAFormat } from 'three'
import { type Origin, stacksOf } from '#pattern'

/** Sheets' thicknesses of each stack, evenly by height. */
const SHEET_ENTRIES = 4096

/** A row a stack: bottom and height (m), then the thickness of the sheet at each height. */
export function sheetTexture(origin: Origin): DataTexture {
  const stacks = stacksOf(origin)
  const width = SHEET_ENTRIES + 1
  const data = new Float32Array(width * stacks.length * 4)
  stacks.forEach(({ layers }, row) => {
    const whole = layers.reduce((sum, l) => sum + l.thickness, 0)
    data.set([-whole / 2, whole], row * width * 4)
    let [sheet, top] = [0, layers[0]!.thickness]
    for (let i = 0; i < SHEET_ENTRIES; i++) {
      const z = ((i + 0.5) / SHEET_ENTRIES) * whole
      while (z > top && sheet + 1 < layers.length) top += layers[++sheet]!.thickness
      data[(row * width + 1 + i) * 4] = layers[sheet]!.thickness
    }
  })
  const texture = new DataTexture(data, width, stacks.length, RGBAFormat, FloatType)
  texture.needsUpdate = true
  return texture
}
