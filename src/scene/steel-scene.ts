import {
  BufferAttribute,
  BufferGeometry,
  Camera as ThreeCamera,
  CustomBlending,
  type DataTexture,
  DoubleSide,
  FloatType,
  GLSL3,
  HalfFloatType,
  Mesh,
  NormalBlending,
  OneFactor,
  RawShaderMaterial,
  Scene,
  type Texture,
  Vector3,
  WebGLRenderer,
  WebGLRenderTarget,
} from 'three'
import type { Facets } from './facets.ts'
import { type Origin, type PatternShader, patternShader } from '#pattern'
import { type Bench, Chain, Reading } from './chain.ts'
import { FINAL_FRAGMENT, GEOMETRY_FRAGMENT, METAL_VERTEX, WHOLE_VERTEX } from './geometry-pass.ts'
import { LOOK_FRAGMENT } from './look-pass.ts'
import type { Metal } from './metal.ts'
import {
  FINE,
  IDLE,
  TRACE_FRAGMENT,
  WORKED_FRAGMENT,
  coverFragment,
  partFragment,
} from './pattern-passes.ts'
import { sheetTexture } from './sheet-texture.ts'
import { type Shot, type Uniforms, setShot, sharedUniforms } from './shot.ts'
import { keepWithin, makeTarget, makeTargets } from './targets.ts'
import { type Box, type Vector, type Window, windowOf } from './views.ts'

/** Rounds in which all parts of a pixel are taken. */
const ROUNDS = FINE * FINE

interface PatternPrograms {
  readonly shader: PatternShader
  readonly chain: Chain
  readonly measure: Reading
  readonly trace: RawShaderMaterial
  readonly cover: RawShaderMaterial
  readonly part: RawShaderMaterial
}

interface WorkedPrograms {
  readonly shader: PatternShader
  readonly chain: Chain
  readonly end: RawShaderMaterial
  /** Metal they were last given. */
  origin: Origin
}

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
  private pattern?: PatternPrograms
  private worked?: WorkedPrograms
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

  /** Sets what is looked at; metal of another structure has its programs compiled, without holding up the page. */
  async lay(metal: Metal): Promise<void> {
    this.setFacets(metal.facets)
    this.box = metal.box
    const { origin, weights } = metal
    const turn = ++this.turn
    if (!this.give(origin, weights)) {
      const made = await this.makePattern(origin, weights)
      // Other metal was laid meanwhile.
      if (turn !== this.turn) return clearPattern(made)
      if (this.pattern) clearPattern(this.pattern)
      this.pattern = made
    }
    this.origin = origin
    this.weights = weights
  }
  private turn = 0

  /** Gives other metal, or other weights of the same, to the programs there are; whether they can tell it. */
  private give(origin: Origin, weights: Metal['weights']): boolean {
    const { pattern } = this
    if (!pattern) return false
    if (origin === this.origin && weights === this.weights) return true
    const measured = pattern.shader.weigh(origin, weights)
    const traced = origin === this.origin ? undefined : pattern.shader.trace(origin)
    if (!measured || (origin !== this.origin && !traced)) return false
    if (traced) pattern.chain.take(traced)
    pattern.measure.take(measured)
    // What was traced is as it was, what is read off it is not.
    this.round = 0
    return true
  }

  /** Gives the metal laid other weights; drawn again, nothing of it is traced anew. */
  weigh(weights: Metal['weights']): void {
    if (this.origin && this.give(this.origin, weights)) this.weights = weights
  }

  private async makePattern(origin: Origin, weights: Metal['weights']): Promise<PatternPrograms> {
    const shader = patternShader(origin, {
      name: 'steel',
      directions: 2,
      means: weights.length,
    })
    const chain = new Chain(this.bench, shader, shader.trace(origin)!, 'steel', 2)
    const measure = new Reading('steelWeights', shader.weigh(origin, weights)!, shader.tableWidth)
    const uniforms = { ...chain.uniforms, ...measure.uniforms }
    const made = {
      ...{ shader, chain, measure },
      trace: this.wholeMaterial(TRACE_FRAGMENT, uniforms),
      cover: this.wholeMaterial(coverFragment(shader.measure, weights.length), uniforms),
      part: this.wholeMaterial(partFragment(shader.measure, weights.length), uniforms),
    }
    made.part.blending = CustomBlending
    made.part.blendSrc = made.part.blendDst = OneFactor
    await chain.compile()
    for (const material of [made.trace, made.cover, made.part]) await this.compile(material, 2)
    return made
  }

  /** Makes the programs that tell thickness and strain, which few pictures need. */
  async prepareWorked(): Promise<void> {
    const { origin, worked } = this
    if (!origin || worked?.origin === origin) return
    const values = worked?.shader.trace(origin)
    if (worked && values) {
      worked.chain.take(values)
      const { sheets } = worked.end.uniforms
      ;(sheets!.value as DataTexture).dispose()
      sheets!.value = sheetTexture(origin)
      worked.origin = origin
      return
    }
    const shader = patternShader(origin, { name: 'move', directions: 3 })
    const chain = new Chain(this.bench, shader, shader.trace(origin)!, 'move', 3)
    const end = this.wholeMaterial(WORKED_FRAGMENT, {
      ...chain.uniforms,
      sheets: { value: sheetTexture(origin) },
    })
    end.blendSrc = end.blendDst = OneFactor
    const made = { shader, chain, end, origin }
    await chain.compile()
    await this.compile(end, 1)
    if (this.origin !== origin) return clearWorked(made)
    if (this.worked) clearWorked(this.worked)
    this.worked = made
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
    setShot(this.uniforms, shot, box, width, height)
    this.window = windowOf(shot.camera, box, this.stretched, width, height)
    const { trace, cover, look } = targets
    for (const target of [trace, cover, targets.worked, look]) keepWithin(target, this.window)
    if (again) {
      body.material = this.materials.geometry
      this.pass(this.stage, targets.geometry)
      pattern.chain.run(-1, this.states(3))
      this.fill(pattern.trace, targets.trace)
      this.asksWorked = shot.mode === 'thickness' || shot.mode === 'strain'
      this.readWorked(-1)
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
    this.readWorked(this.round)
    if (++this.round < ROUNDS) return false
    this.show()
    return true
  }
  /** Parts taken so far. */
  private round = ROUNDS

  /** How the metal was worked, where a picture shows it: of whole pixels, or a part of each added to those before. */
  private readWorked(part: number): void {
    const { worked, targets } = this
    if (!this.asksWorked || !worked || !targets || worked.origin !== this.origin) return
    worked.chain.run(part, this.states(4))
    worked.end.blending = part < 0 ? NormalBlending : CustomBlending
    this.fill(worked.end, targets.worked, part > 0)
  }
  private asksWorked = false

  private show(): void {
    const { body, targets } = this
    if (!body || !targets) return
    this.fill(this.materials.look, targets.look)
    body.material = this.materials.final
    this.pass(this.stage, null)
  }

  /** The last picture's numbers, four a pixel, row by row from the bottom: for measuring. */
  read(what: 'places' | 'traces' | 'cover' | 'more' | 'worked' | 'shown'): Float32Array {
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
        worked: [targets.worked, targets.worked.texture.type === FloatType ? 'float' : 'half'],
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
    if (this.pattern) clearPattern(this.pattern)
    if (this.worked) clearWorked(this.worked)
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
    geometry.setAttribute('facet', new BufferAttribute(facets.planes, 4))
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
    // Whole floats where the card can: strains are added up sixteen times.
    const sums = this.renderer.extensions.has('EXT_float_blend') ? FloatType : HalfFloatType
    const made = makeTargets(width, height, sums)
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
}

function clearPattern({ chain, measure, trace, cover, part }: PatternPrograms): void {
  chain.dispose()
  measure.dispose()
  for (const material of [trace, cover, part]) material.dispose()
}

function clearWorked({ chain, end }: WorkedPrograms): void {
  chain.dispose()
  ;(end.uniforms.sheets!.value as DataTexture).dispose()
  end.dispose()
}

/** IEEE 754 binary16. */
function fromHalf(h: number): number {
  const [sign, exponent, fraction] = [h & 0x8000 ? -1 : 1, (h >> 10) & 31, h & 1023]
  if (exponent === 0) return sign * fraction * 2 ** -24
  return sign * (1 + fraction / 1024) * 2 ** (exponent - 15)
}
