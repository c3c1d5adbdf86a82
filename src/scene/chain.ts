import {
  type IUniform,
  DataTexture,
  FloatType,
  RedFormat,
  type RawShaderMaterial,
  type WebGLRenderTarget,
} from 'three'
import type { PatternShader } from '#pattern'
import { beginFragment, stageFragment } from './pattern-passes.ts'

type Uniforms = Record<string, IUniform>

/** What makes the programs that cover the whole picture, draws with them, and lends targets two by two. */
export interface Bench {
  material(fragment: string, own: Uniforms): RawShaderMaterial
  compile(material: RawShaderMaterial, outputs: number): Promise<void>
  fill(material: RawShaderMaterial, target: WebGLRenderTarget): void
  /** Sets all pixels idle. */
  clear(target: WebGLRenderTarget): void
}

/** A pattern's stages as programs: pixels go from one to the next through a pair of targets. */
export class Chain {
  readonly shader: PatternShader
  readonly uniforms: Uniforms
  private readonly name: string
  private readonly states: Uniforms
  private readonly begin: RawShaderMaterial
  private readonly stages: readonly RawShaderMaterial[]
  private texture: DataTexture
  private readonly bench: Bench
  private readonly outputs: number

  constructor(bench: Bench, shader: PatternShader, name: string, directions: 2 | 3) {
    this.bench = bench
    this.name = name
    this.outputs = directions + 1
    this.shader = shader
    const { numbers, stages } = shader
    this.texture = tablesOf(shader)
    this.states = Object.fromEntries(
      ['state0In', 'state1In', 'state2In', 'state3In'].map((key) => [key, { value: null }]),
    )
    this.uniforms = {
      ...this.states,
      part: { value: -1 },
      [`${name}Tables`]: { value: this.texture },
      ...Object.fromEntries(Object.entries(numbers).map(([key, value]) => [key, { value }])),
    }
    this.begin = bench.material(beginFragment(directions), this.uniforms)
    this.stages = stages.map((stage, i) =>
      bench.material(stageFragment(name, stage, i, directions), this.uniforms),
    )
  }

  /** Takes a pattern of other numbers told in the very same text, if it is; nothing is to be compiled then. */
  take(shader: PatternShader): boolean {
    const text = ({ stages, measure }: PatternShader) => [...stages, measure].join('\n')
    if (text(shader) !== text(this.shader)) return false
    for (const [key, value] of Object.entries(shader.numbers)) this.uniforms[key]!.value = value
    this.texture.dispose()
    this.texture = tablesOf(shader)
    this.uniforms[`${this.name}Tables`]!.value = this.texture
    return true
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
    this.texture.dispose()
  }
}

function tablesOf({ tables, tableWidth }: PatternShader): DataTexture {
  const texture = new DataTexture(
    tables as Float32Array<ArrayBuffer>,
    tableWidth,
    tables.length / tableWidth,
    RedFormat,
    FloatType,
  )
  texture.needsUpdate = true
  return texture
}
