import {
  BufferAttribute,
  BufferGeometry,
  Camera as ThreeCamera,
  CustomBlending,
  DataTexture,
  DoubleSide,
  FloatType,
  GLSL3,
  HalfFloatType,
  type IUniform,
  Matrix4,
  Mesh,
  OneFactor,
  RawShaderMaterial,
  RGBAFormat,
  Scene,
  type Texture,
  Vector2,
  Vector3,
  Vector4,
  WebGLRenderer,
  WebGLRenderTarget,
} from 'three'
import type { Facets } from './facets.ts'
import { type Finish, finishes, stripLight } from '#look'
import { type Origin, patternShader, stacksOf } from '#pattern'
import { type Bench, Chain } from './chain.ts'
import { FINAL_FRAGMENT, GEOMETRY_FRAGMENT, METAL_VERTEX, WHOLE_VERTEX } from './geometry-pass.ts'
import { LOOK_FRAGMENT } from './look-pass.ts'
import { MODES, type Mode } from './modes.ts'
import type { Metal } from './metal.ts'
import {
  FINE,
  IDLE,
  TRACE_FRAGMENT,
  WORKED_FRAGMENT,
  coverFragment,
  partFragment,
} from './pattern-passes.ts'
import { keepWithin, makeTarget, makeTargets } from './targets.ts'
import { type Box, type Camera, type Vector, type Window, toClip, windowOf } from './views.ts'

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

/** Sheets' thicknesses of each stack, evenly by height. */
const SHEET_ENTRIES = 4096

type Uniforms = Record<string, IUniform>

/** Rounds in which all parts of a pixel are taken. */
const ROUNDS = FINE * FINE

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
  private pattern?: {
    readonly chain: Chain
    readonly trace: RawShaderMaterial
    readonly cover: RawShaderMaterial
    readonly part: RawShaderMaterial
  }
  private worked?: {
    readonly chain: Chain
    readonly end: RawShaderMaterial
    readonly sheets: DataTexture
  }
  private origin?: Origin
  private weights: Metal['weights'] = []
  private targets?: ReturnType<typeof makeTargets>

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
    const { origin, weights } = metal
    const shader = patternShader(origin, { name: 'steel', directions: 2, weights })
    const { measure } = shader
    if (this.pattern?.chain.take(shader)) {
      this.clearWorked()
      this.origin = origin
      this.weights = weights
      return
    }
    const chain = new Chain(this.bench, shader, 'steel', 2)
    const made = {
      chain,
      trace: this.wholeMaterial(TRACE_FRAGMENT, chain.uniforms),
      cover: this.wholeMaterial(coverFragment(measure, weights.length), chain.uniforms),
      part: this.wholeMaterial(partFragment(measure, weights.length), chain.uniforms),
    }
    made.part.blending = CustomBlending
    made.part.blendSrc = made.part.blendDst = OneFactor
    await chain.compile()
    for (const material of [made.trace, made.cover, made.part]) await this.compile(material, 2)
    this.clearPattern()
    this.pattern = made
    this.origin = origin
    this.weights = weights
  }

  /** Makes the programs that tell thickness and strain, which few pictures need. */
  async prepareWorked(): Promise<void> {
    if (this.worked || !this.origin) return
    const { origin } = this
    const shader = patternShader(origin, { name: 'move', directions: 3 })
    const chain = new Chain(this.bench, shader, 'move', 3)
    const sheets = sheetTexture(origin)
    const end = this.wholeMaterial(WORKED_FRAGMENT, {
      ...chain.uniforms,
      sheets: { value: sheets },
    })
    await chain.compile()
    await this.compile(end, 1)
    if (this.origin === origin && !this.worked) this.worked = { chain, end, sheets }
    else chain.dispose()
  }

  /** The metal drawn so many times its size along each of its axes; the pattern goes with it. */
  stretch(by: Vector): void {
    this.stretched = by
    this.uniforms.stretch!.value = new Vector3(...by)
  }

  private stretched: Vector = [1, 1, 1]

  /** Draws with whole pixels; `again` false redoes only the light. `refine` then makes it exact, round by round. */
  draw(shot: Shot, width: number, height: number, again = true): void {
    const { renderer, body, box, pattern } = this
    if (!body || !box || !pattern) return
    renderer.setSize(width, height, false)
    const targets = this.sizedTargets(width, height)
    this.setShot(shot, box, width, height)
    this.window = windowOf(shot.camera, box, this.stretched, width, height)
    const { trace, cover, worked, look } = targets
    for (const target of [trace, cover, worked, look]) keepWithin(target, this.window)
    if (again) {
      body.material = this.materials.geometry
      this.pass(this.stage, targets.geometry)
      pattern.chain.run(-1, this.states(3))
      this.fill(pattern.trace, targets.trace)
      if (this.worked && (shot.mode === 'thickness' || shot.mode === 'strain')) {
        this.worked.chain.run(-1, this.states(4))
        this.fill(this.worked.end, targets.worked)
      }
    }
    if (again || this.round < ROUNDS) {
      this.uniforms.inParts!.value = false
      this.fill(pattern.cover, targets.cover)
      this.round = 0
    }
    this.show()
  }

  /** Takes pixels where the pattern breaks in parts, one part of all of them at a call; whether that was the last. */
  refine(): boolean {
    const { pattern, targets } = this
    if (!pattern || !targets || this.round >= ROUNDS) return true
    if (this.round === 0) {
      this.uniforms.inParts!.value = true
      this.fill(pattern.cover, targets.cover)
    }
    pattern.chain.run(this.round, this.states(3))
    this.fill(pattern.part, targets.cover, true)
    if (++this.round < ROUNDS) return false
    this.show()
    return true
  }
  /** Parts taken so far. */
  private round = ROUNDS

  private show(): void {
    const { body, targets } = this
    if (!body || !targets) return
    this.fill(this.materials.look, targets.look)
    body.material = this.materials.final
    this.pass(this.stage, null)
  }

  /** The last picture's numbers, four a pixel, row by row from the bottom: for measuring. */
  read(what: 'places' | 'traces' | 'cover' | 'more' | 'shown'): Float32Array {
    const { targets, renderer } = this
    if (!targets) throw new Error('nothing is drawn yet')
    const { width, height } = targets.look
    const size = width * height * 4
    const [target, kind] = (
      {
        places: [targets.geometry, 'float'],
        traces: [targets.trace, 'float'],
        cover: [targets.cover, 'half'],
        more: [targets.cover, 'half'],
        shown: [targets.look, 'byte'],
      } as const
    )[what]
    const rows = { float: Float32Array, half: Uint16Array, byte: Uint8Array }
    const found = new rows[kind](size)
    const texture = what === 'more' ? 1 : 0
    renderer.readRenderTargetPixels(target, 0, 0, width, height, found, undefined, texture)
    if (kind === 'half') return Float32Array.from(found, fromHalf)
    return kind === 'byte' ? Float32Array.from(found, (v) => v / 255) : (found as Float32Array)
  }

  dispose(): void {
    this.body?.geometry.dispose()
    this.whole.geometry.dispose()
    for (const made of Object.values(this.materials)) made.dispose()
    this.clearPattern()
    this.clearTargets()
    this.renderer.dispose()
  }

  private facets?: Facets
  private setFacets(facets: Facets): void {
    if (this.facets === facets) return
    this.facets = facets
    const geometry = new BufferGeometry()
    geometry.setAttribute('position', new BufferAttribute(facets.positions, 3))
    geometry.setAttribute('normal', new BufferAttribute(facets.normals, 4, true))
    geometry.setAttribute('facet', new BufferAttribute(facets.planes, 3))
    if (this.body) {
      this.stage.remove(this.body)
      this.body.geometry.dispose()
    }
    this.body = new Mesh(geometry, this.materials.geometry)
    this.body.frustumCulled = false
    this.stage.add(this.body)
  }

  private readonly bench: Bench = {
    material: (fragment, own) => this.wholeMaterial(fragment, own),
    compile: (material, outputs) => this.compile(material, outputs),
    fill: (material, target) => this.fill(material, target, true),
    clear: (target) => {
      this.renderer.setRenderTarget(target)
      this.renderer.setClearColor(0, IDLE)
      this.renderer.clear()
      this.renderer.setClearColor(0, 0)
    },
  }

  private clearPattern(): void {
    const { pattern } = this
    pattern?.chain.dispose()
    for (const material of [pattern?.trace, pattern?.cover, pattern?.part]) material?.dispose()
    this.pattern = undefined
    this.clearWorked()
  }

  private clearWorked(): void {
    const { worked } = this
    worked?.chain.dispose()
    worked?.end.dispose()
    worked?.sheets.dispose()
    this.worked = undefined
  }

  private async compile(material: RawShaderMaterial, outputs: number): Promise<void> {
    const { renderer } = this
    let fault: string | undefined
    renderer.debug.onShaderError = (gl, program, _vertex, fragment) => {
      fault = gl.getProgramInfoLog(program) || gl.getShaderInfoLog(fragment) || 'no program'
    }
    this.whole.material = material
    await renderer.compileAsync(this.card, this.eye)
    // A program is checked when it is first used.
    const probe = new WebGLRenderTarget(1, 1, {
      count: outputs,
      type: HalfFloatType,
      depthBuffer: false,
    })
    this.fill(material, probe)
    probe.dispose()
    if (fault !== undefined) throw new Error(fault)
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

  private pass(scene: Scene, target: WebGLRenderTarget | null, onTop = false): void {
    this.renderer.setRenderTarget(target)
    if (!onTop) this.renderer.clear()
    this.renderer.render(scene, this.eye)
    this.renderer.setRenderTarget(null)
  }

  private fill(material: RawShaderMaterial, target: WebGLRenderTarget, onTop = false): void {
    this.whole.material = material
    this.pass(this.card, target, onTop)
  }

  /** Two targets for a pattern's stages, with places for three or four numbers of four. */
  private states(count: 3 | 4): readonly [WebGLRenderTarget, WebGLRenderTarget] {
    const { width, height } = this.targets!.look
    const known = this.pairs.get(count)
    known?.forEach((target) => keepWithin(target, this.window))
    if (known?.[0].width === width && known[0].height === height) return known
    known?.forEach((target) => target.dispose())
    const make = () =>
      makeTarget(
        width,
        height,
        Array.from({ length: count }, () => FloatType),
      )
    this.pairs.set(count, [make(), make()])
    return this.states(count)
  }
  /** Where the picture has metal. */
  private window: Window = { left: 0, bottom: 0, width: 0, height: 0 }
  private readonly pairs = new Map<number, readonly [WebGLRenderTarget, WebGLRenderTarget]>()

  private clearTargets(): void {
    const { targets } = this
    if (targets) Object.values(targets).forEach((target) => target.dispose())
    this.pairs.forEach((pair) => pair.forEach((target) => target.dispose()))
    this.pairs.clear()
    this.targets = undefined
  }

  private sizedTargets(width: number, height: number) {
    const known = this.targets
    if (known && known.look.width === width && known.look.height === height) return known
    this.clearTargets()
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
