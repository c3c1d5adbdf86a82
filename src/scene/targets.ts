import {
  FloatType,
  HalfFloatType,
  NearestFilter,
  RGBAFormat,
  UnsignedByteType,
  WebGLRenderTarget,
} from 'three'
import type { Window } from './views.ts'

type TextureType = typeof FloatType | typeof HalfFloatType | typeof UnsignedByteType

/** A target of so many textures, read pixel by pixel. */
export function makeTarget(
  width: number,
  height: number,
  types: readonly TextureType[],
  depth = false,
) {
  const made = new WebGLRenderTarget(width, height, {
    count: types.length,
    format: RGBAFormat,
    minFilter: NearestFilter,
    magFilter: NearestFilter,
    depthBuffer: depth,
  })
  made.textures.forEach((texture, i) => (texture.type = types[i]!))
  return made
}

/** One for each pass over the picture; `sums`: numbers the card can add up in a target. */
export function makeTargets(
  width: number,
  height: number,
  sums: typeof FloatType | typeof HalfFloatType,
) {
  const make = (types: readonly TextureType[], depth = false) =>
    makeTarget(width, height, types, depth)
  return {
    geometry: make([FloatType, FloatType, HalfFloatType], true),
    trace: make([FloatType, HalfFloatType]),
    cover: make([HalfFloatType, HalfFloatType]),
    worked: make([sums]),
    look: make([UnsignedByteType]),
  }
}

/** Draws only in the window from now on: what lies outside is neither drawn nor looked at. */
export function keepWithin(target: WebGLRenderTarget, window: Window): void {
  target.scissorTest = true
  target.scissor.set(window.left, window.bottom, window.width, window.height)
}
