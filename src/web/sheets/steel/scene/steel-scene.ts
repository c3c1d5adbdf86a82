import {
  BufferAttribute,
  BufferGeometry,
  Camera as ThreeCamera,
  DataTexture,
  DoubleSide,
  FloatType,
  GLSL3,
  HalfFloatType,
  type IUniform,
  Matrix4,
  Mesh,
  NearestFilter,
  RawShaderMaterial,
  RedFormat,
  RGBAFormat,
  Scene,
  type Texture,
  UnsignedByteType,
  Vector2,
  Vector3,
  Vector4,
  WebGLRenderer,
  WebGLRenderTarget,
} from 'three'
import type { Facets } from '#desk'
import { type Finish, finishes, stripLight } from '#look'
import { type Origin, patternShader, stacksOf } from '#pattern'
import { FINAL_FRAGMENT, GEOMETRY_FRAGMENT, METAL_VERTEX, WHOLE_VERTEX } from './geometry-pass.ts'
import { LOOK_FRAGMENT } from './look-pass.ts'
import { MODES, type Mode } from './modes.ts'
import type { Metal } from './metal.ts'
import { coverFragment, traceFragment, workedFragment } from './pattern-passes.ts'
import { type Box, type Camera, type Vector, toClip } from './views.ts'

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
  /** Pixels taken in parts where the pattern breaks: left out while the hand moves. */
  readonly exact: boolean
}

/** Parts a side of a pixel in which the pattern is not smooth: as the engine's pictures. */
const FINE = 4
/** Sheets' thicknesses of each stack, evenly by height. */
const SHEET_ENTRIES = 4096

type Uniforms = Record<string, IUniform>

/** The metal on the graphics card: geometry, pattern and look, each a pass that is redone only when it must be. */
export class SteelScene {
  readonly renderer: WebGLRenderer
  private readonly eye = new ThreeCamera()
  private readonly uniforms: Uniforms
  private readonly whole: Mesh
  private readonly stage = new Scene()
  private readonly card = new Scene()
  private readonly materials: Record<'geometry' | 'final' | 'look', RawShaderMaterial>
  private body?: Mesh<BufferGeometry, RawShaderMaterial>
  private box?: Box
  private trace?: RawShaderMaterial
  private cover?: RawShaderMaterial
  private worked?: { readonly material: RawShaderMaterial; readonly sheets: DataTexture }
  private origin?: Origin
  private weights: Metal['weights'] = []
  private targets?: ReturnType<typeof makeTargets>
  private readonly kept: DataTexture[] = []

  constructor(canvas: HTMLCanvasElement) {
    this.renderer = new WebGLRenderer({
      canvas,
      antialias: true,
      alpha: true,
      preserveDrawingBuffer: true,
    })
    this.renderer.autoClear = false
    this.renderer.setClearColor(0, 0)
    if (!this.renderer.extensions.has('EXT_color_buffer_float'))
      throw new Error('the graphics card cannot draw into floating point')
    this.uniforms = sharedUniforms()
    const geometry = new BufferGeometry()
    geometry.setAttribute(
      'position',
      new BufferAttribute(new Float32Array([-1, -1, 0, 3, -1, 0, -1, 3, 0]), 3),
    )
    this.materials = {
      geometry: this.metalMaterial(GEOMETRY_FRAGMENT),
      final: this.metalMaterial(FINAL_FRAGMENT),
      look: this.wholeMaterial(LOOK_FRAGMENT),
    }
    this.whole = new Mesh(geometry, this.materials.look)
    this.whole.frustumCulled = false
    this.card.add(this.whole)
  }

  /** Sets what is looked at; compiles the pattern's programs without holding up the page. */
  async lay(metal: Metal): Promise<void> {
    this.setFacets(metal.facets)
    this.box = metal.box
    if (this.origin === metal.origin && this.weights === metal.weights) return
    const pattern = patternShader(metal.origin, {
      name: 'steel',
      directions: 2,
      weights: metal.weights,
    })
    const own = this.patternUniforms('steel', pattern)
    const trace = this.wholeMaterial(traceFragment(pattern.text), own)
    const cover = this.wholeMaterial(coverFragment(pattern.text, metal.weights.length, FINE), own)
    for (const material of [trace, cover]) await this.compile(material)
    this.trace?.dispose()
    this.cover?.dispose()
    this.worked?.material.dispose()
    this.trace = trace
    this.cover = cover
    this.worked = undefined
    this.origin = metal.origin
    this.weights = metal.weights
  }

  /** Makes the program that tells thickness and strain, which few pictures need. */
  async prepareWorked(): Promise<void> {
    if (this.worked || !this.origin) return
    const { origin } = this
    const move = patternShader(origin, { name: 'move', directions: 3 })
    const sheets = sheetTexture(origin)
    const own = { ...this.patternUniforms('move', move), sheets: { value: sheets } }
    const material = this.wholeMaterial(workedFragment(move.text), own)
    await this.compile(material)
    if (this.origin === origin) this.worked = { material, sheets }
  }

  /** The metal drawn so many times its size along each of its axes; the pattern goes with it. */
  stretch(by: Vector): void {
    this.uniforms.stretch!.value = new Vector3(...by)
  }

  /** Draws; `again` false redoes only the light. */
  draw(shot: Shot, width: number, height: number, again = true): void {
    const { renderer, body, box, trace, cover } = this
    if (!body || !box || !trace || !cover) return
    renderer.setSize(width, height, false)
    const targets = this.sizedTargets(width, height)
    this.setShot(shot, box, width, height)
    if (again) {
      body.material = this.materials.geometry
      this.pass(this.stage, targets.geometry)
      this.fill(trace, targets.trace)
      this.fill(cover, targets.cover)
      if (this.worked && (shot.mode === 'thickness' || shot.mode === 'strain'))
        this.fill(this.worked.material, targets.worked)
    }
    this.fill(this.materials.look, targets.look)
    body.material = this.materials.final
    this.pass(this.stage, null)
  }

  /** Means of the weights under every pixel of the last picture, row by row from the bottom: for measuring. */
  readCover(): { readonly cover: Float32Array; readonly places: Float32Array } {
    const { targets, renderer } = this
    if (!targets) throw new Error('nothing is drawn yet')
    const { width, height } = targets.cover
    const size = width * height * 4
    const [cover, places] = [new Float32Array(size), new Float32Array(size)]
    const half = new Uint16Array(size)
    renderer.readRenderTargetPixels(targets.cover, 0, 0, width, height, half, undefined, 0)
    half.forEach((h, i) => (cover[i] = fromHalf(h)))
    renderer.readRenderTargetPixels(targets.geometry, 0, 0, width, height, places, undefined, 0)
    return { cover, places }
  }

  dispose(): void {
    this.body?.geometry.dispose()
    this.whole.geometry.dispose()
    for (const made of [...Object.values(this.materials), this.trace, this.cover]) made?.dispose()
    this.worked?.material.dispose()
    this.kept.forEach((texture) => texture.dispose())
    if (this.targets) Object.values(this.targets).forEach((target) => target.dispose())
    this.renderer.dispose()
  }

  private facets?: Facets
  private setFacets(facets: Facets): void {
    if (this.facets === facets) return
    this.facets = facets
    const geometry = new BufferGeometry()
    geometry.setAttribute('position', new BufferAttribute(facets.positions, 3))
    geometry.setAttribute('normal', new BufferAttribute(facets.normals, 4, true))
    geometry.setAttribute('facet', new BufferAttribute(facets.planes, 4, true))
    if (this.body) {
      this.stage.remove(this.body)
      this.body.geometry.dispose()
    }
    this.body = new Mesh(geometry, this.materials.geometry)
    this.body.frustumCulled = false
    this.stage.add(this.body)
  }

  private async compile(material: RawShaderMaterial): Promise<void> {
    const { renderer } = this
    let fault: string | undefined
    renderer.debug.onShaderError = (gl, program, _vertex, fragment) => {
      fault = gl.getProgramInfoLog(program) || gl.getShaderInfoLog(fragment) || 'no program'
    }
    this.whole.material = material
    await renderer.compileAsync(this.card, this.eye)
    // A program is checked when it is first used.
    const probe = new WebGLRenderTarget(1, 1, { count: 2, type: FloatType, depthBuffer: false })
    this.fill(material, probe)
    probe.dispose()
    if (fault !== undefined) throw new Error(fault)
  }

  private patternUniforms(name: string, pattern: ReturnType<typeof patternShader>): Uniforms {
    const { tables, tableWidth, numbers } = pattern
    const texture = new DataTexture(
      tables as Float32Array<ArrayBuffer>,
      tableWidth,
      tables.length / tableWidth,
      RedFormat,
      FloatType,
    )
    texture.needsUpdate = true
    this.kept.push(texture)
    return {
      [`${name}Tables`]: { value: texture },
      ...Object.fromEntries(Object.entries(numbers).map(([key, value]) => [key, { value }])),
    }
  }

  private metalMaterial(fragmentShader: string): RawShaderMaterial {
    return new RawShaderMaterial({
      glslVersion: GLSL3,
      vertexShader: METAL_VERTEX,
      fragmentShader,
      uniforms: this.uniforms,
      side: DoubleSide,
    })
  }

  private wholeMaterial(fragmentShader: string, own: Uniforms = {}): RawShaderMaterial {
    return new RawShaderMaterial({
      glslVersion: GLSL3,
      vertexShader: WHOLE_VERTEX,
      fragmentShader,
      uniforms: { ...this.uniforms, ...own },
      depthTest: false,
      depthWrite: false,
    })
  }

  private pass(scene: Scene, target: WebGLRenderTarget | null): void {
    this.renderer.setRenderTarget(target)
    this.renderer.clear()
    this.renderer.render(scene, this.eye)
    this.renderer.setRenderTarget(null)
  }

  private fill(material: RawShaderMaterial, target: WebGLRenderTarget): void {
    this.whole.material = material
    this.pass(this.card, target)
  }

  private sizedTargets(width: number, height: number) {
    const known = this.targets
    if (known && known.look.width === width && known.look.height === height) return known
    if (known) Object.values(known).forEach((target) => target.dispose())
    const made = makeTargets(width, height)
    this.targets = made
    const set = (name: string, texture: Texture | undefined) => {
      this.uniforms[name]!.value = texture
    }
    set('places', made.geometry.textures[0])
    set('facets', made.geometry.textures[1])
    set('normals', made.geometry.textures[2])
    set('traces', made.trace.textures[0])
    set('skins', made.trace.textures[1])
    set('cover', made.cover.textures[0])
    set('more', made.cover.textures[1])
    set('worked', made.worked.texture)
    set('shown', made.look.texture)
    return made
  }

  private setShot(shot: Shot, box: Box, width: number, height: number): void {
    const { camera } = shot
    const set = (name: string, value: unknown) => {
      this.uniforms[name]!.value = value
    }
    set('toClip', new Matrix4().fromArray(toClip(camera, box, width, height)))
    set('viewRight', new Vector3(...camera.right))
    set('viewUp', new Vector3(...camera.up))
    set('viewOut', new Vector3(...camera.out))
    set('pixel', camera.pixel)
    set('middle', new Vector2(width / 2, height / 2))
    set('pictureWidth', width * camera.pixel)
    set('cutPlane', shot.cut ? new Vector4(...shot.cut.out, shot.cut.at) : new Vector4())
    set('ground', shot.ground)
    set('parts', shot.exact)
    set('mode', MODES[shot.mode])
    set('range', new Vector2(...shot.range))
    set('steps', shot.steps)
    setFinish(set, finishes[shot.finish])
    set('strip', shot.strip)
    set('stripAlong', new Vector2(Math.cos(shot.stripTurn), Math.sin(shot.stripTurn)))
  }
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
const NUMBERS = 'pixel pictureWidth ground parts mode steps relief hollow scratches strip'
const PAIRS = 'middle range stripAlong brightRough darkRough'
const VECTORS = 'viewRight viewUp viewOut brightMirror brightDull darkMirror darkDull'

function sharedUniforms(): Uniforms {
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

function makeTargets(width: number, height: number) {
  const target = (
    types: readonly (typeof FloatType | typeof HalfFloatType | typeof UnsignedByteType)[],
    depth = false,
  ) => {
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
  return {
    geometry: target([FloatType, FloatType, HalfFloatType], true),
    trace: target([FloatType, HalfFloatType]),
    cover: target([HalfFloatType, HalfFloatType]),
    worked: target([FloatType]),
    look: target([UnsignedByteType]),
  }
}

/** A row a stack: bottom and height (m), then the thickness of the sheet at each height. */
function sheetTexture(origin: Origin): DataTexture {
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

/** IEEE 754 binary16. */
function fromHalf(h: number): number {
  const [sign, exponent, fraction] = [h & 0x8000 ? -1 : 1, (h >> 10) & 31, h & 1023]
  if (exponent === 0) return sign * fraction * 2 ** -24
  return sign * (1 + fraction / 1024) * 2 ** (exponent - 15)
}
