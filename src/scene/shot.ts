import { type IUniform, Matrix4, Vector2, Vector3, Vector4 } from 'three'
import { type Finish, finishes, stripLight } from '#look'
import { MODES, type Mode } from './modes.ts'
import { type Box, type Camera, type Vector, toClip } from './views.ts'

export type Uniforms = Record<string, IUniform>

/** All that decides a picture besides the metal. */
export interface Shot {
  readonly camera: Camera
  readonly mode: Mode
  /** Ends of an overlay's scale, in its own numbers, and how many steps it is drawn in. */
  readonly range: readonly [number, number]
  readonly steps: number
  readonly finish: keyof typeof finishes
  /** The strip light: slope at which polished metal mirrors it, and which way it runs (radians from level). */
  readonly strip: number
  readonly stripTurn: number
  /** Unit normal towards what is cut away, and its distance along it, m. */
  readonly cut?: { readonly out: Vector; readonly at: number }
  /** How far the skin is ground away, m. */
  readonly ground: number
  /** Scratches and grain of the polish; left out, they are drawn. */
  readonly polish?: boolean
}

function setFinish(set: (name: string, value: unknown) => void, finish: Finish): void {
  const { bright, dark } = finish
  set('relief', finish.relief)
  set('hollow', finish.hollow)
  set('scratches', finish.scratches)
  set('brightMirror', new Vector3(...bright.mirror))
  set('brightDull', new Vector3(...bright.dull))
  set('brightRough', new Vector2(bright.alongPolish, bright.acrossPolish))
  set('darkMirror', new Vector3(...dark.mirror))
  set('darkDull', new Vector3(...dark.dull))
  set('darkRough', new Vector2(dark.alongPolish, dark.acrossPolish))
}

const TEXTURES = 'places facets normals traces skins cover more worked shown'
const NUMBERS = 'pixel pictureWidth ground inParts mode steps relief hollow scratches strip'
const PAIRS = 'middle range stripAlong brightRough darkRough'
const VECTORS = 'viewRight viewUp viewOut viewMiddle brightMirror brightDull darkMirror darkDull'

/** What all programs read, by the names they have for it. */
export function sharedUniforms(): Uniforms {
  const each = (names: string, value: () => unknown) =>
    Object.fromEntries(names.split(' ').map((name) => [name, { value: value() }]))
  return {
    ...each(TEXTURES, () => null),
    ...each(NUMBERS, () => 0),
    ...each(PAIRS, () => new Vector2()),
    ...each(VECTORS, () => new Vector3()),
    toClip: { value: new Matrix4() },
    stretch: { value: new Vector3(1, 1, 1) },
    cutPlane: { value: new Vector4() },
    stripHalf: { value: stripLight.stripHalf },
    stripLight: { value: stripLight.stripLight },
    sky: { value: stripLight.sky },
    wall: { value: stripLight.wall },
  }
}

/** Sets all that a picture asks. */
export function setShot(
  uniforms: Uniforms,
  shot: Shot,
  box: Box,
  width: number,
  height: number,
): void {
  const { camera } = shot
  const set = (name: string, value: unknown) => {
    uniforms[name]!.value = value
  }
  set('toClip', new Matrix4().fromArray(toClip(camera, box, width, height)))
  set('viewRight', new Vector3(...camera.right))
  set('viewUp', new Vector3(...camera.up))
  set('viewOut', new Vector3(...camera.out))
  set('viewMiddle', new Vector3(...camera.middle))
  set('pixel', camera.pixel)
  set('middle', new Vector2(width / 2, height / 2))
  set('pictureWidth', width * camera.pixel)
  set('cutPlane', shot.cut ? new Vector4(...shot.cut.out, shot.cut.at) : new Vector4())
  set('ground', shot.ground)
  set('mode', MODES[shot.mode])
  set('range', new Vector2(...shot.range))
  set('steps', shot.steps)
  setFinish(set, finishes[shot.finish])
  if (shot.polish === false) set('scratches', 0)
  set('strip', shot.strip)
  set('stripAlong', new Vector2(Math.cos(shot.stripTurn), Math.sin(shot.stripTurn)))
}
