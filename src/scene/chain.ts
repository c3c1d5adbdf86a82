import {
  DataTexture,
  FloatType,
  RedFormat,
  type RawShaderMaterial,
  type WebGLRenderTarget,
} from 'three'
import type { PatternShader, ShaderValues } from '#pattern'
import { beginFragment, stageFragment } from './pattern-passes.ts'
import type { Uniforms } from './shot.ts'

/** What makes the programs that cover the whole picture, draws with them, and lends targets two by two. */
export interface Bench {
  material(fragment: string, own: Uniforms): RawShaderMaterial
  compile(material: RawShaderMaterial, outputs: number): Promise<void>
  fill(material: RawShaderMaterial, target: WebGLRenderTarget): void
  /** Sets all pixels idle. */
  clear(target: WebGLRenderTarget): void
}

/** What a shader reads, as uniforms: given anew, nothing is compiled. */
export class Reading {
  readonly uniforms: Uniforms
  private texture: DataTexture
  private readonly sampler: string

  constructor(sampler: string, values: ShaderValues, width: number) {
    this.sampler = sampler
    this.texture = tablesOf(values, width)
    this.uniforms = {
      [sampler]: { value: this.texture },
      ...Object.fromEntries(Object.entries(values.numbers).map(([key, value]) => [key, { value }])),
    }
  }

  take(values: ShaderValues): void {
    for (const [key, value] of Object.entries(values.numbers)) this.uniforms[key]!.value = value
    const { image } = this.texture
    if (image.width * image.height === values.tables.length) {
      this.texture.image = { ...image, data: values.tables }
      this.texture.needsUpdate = true
      return
    }
    // A texture once made keeps its size.
    this.texture.dispose()
    this.texture = tablesOf(values, image.width)
    this.uniforms[this.sampler]!.value = this.texture
  }

  dispose(): void {
    this.texture.dispose()
  }
}

/** A pattern's stages as programs: pixels go from one to the next through a pair of targets. */
export class Chain {
  readonly uniforms: Uniforms
  private readonly reading: Reading
  private readonly states: Uniforms
  private readonly begin: RawShaderMaterial
  private readonly stages: readonly RawShaderMaterial[]
  private readonly bench: Bench
  private readonly outputs: number

  constructor(
    bench: Bench,
    shader: PatternShader,
    values: ShaderValues,
    name: string,
    directions: 2 | 3,
  ) {
    this.bench = bench
    this.outputs = directions + 1
    this.reading = new Reading(`${name}Tables`, values, shader.tableWidth)
    this.states = Object.fromEntries(
      ['state0In', 'state1In', 'state2In', 'state3In'].map((key) => [key, { value: null }]),
    )
    this.uniforms = { ...this.states, part: { value: -1 }, ...this.reading.uniforms }
    this.begin = bench.material(beginFragment(directions), this.uniforms)
    this.stages = shader.stages.map((stage, i) =>
      bench.material(stageFragment(name, stage, i, directions), this.uniforms),
    )
  }

  /** Other metal of the same structure. */
  take(values: ShaderValues): void {
    this.reading.take(values)
  }

  async compile(): Promise<void> {
    for (const material of [this.begin, ...this.stages])
      await this.bench.compile(material, this.outputs)
  }

  /** A round through all stages, of whole pixels or of one part of those taken in parts. */
  run(part: number, pair: readonly [WebGLRenderTarget, WebGLRenderTarget]): void {
    let [from, to] = pair
    this.uniforms.part!.value = part
    // Pixels that are not looked at stay idle in both: no stage has to hand them on.
    pair.forEach((target) => this.bench.clear(target))
    this.bench.fill(this.begin, from)
    for (const stage of this.stages) {
      this.readFrom(from)
      this.bench.fill(stage, to)
      ;[from, to] = [to, from]
    }
    this.readFrom(from)
  }

  private readFrom(target: WebGLRenderTarget): void {
    for (let i = 0; i < 4; i++)
      this.states[`state${i}In`]!.value = target.textures[Math.min(i, target.textures.length - 1)]
  }

  dispose(): void {
    for (const material of [this.begin, ...this.stages]) material.dispose()
    this.reading.dispose()
  }
}

function tablesOf({ tables }: ShaderValues, width: number): DataTexture {
  const texture = new DataTexture(tables, width, tables.length / width, RedFormat, FloatType)
  texture.needsUpdate = true
  return texture
}
