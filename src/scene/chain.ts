import {
  type IUniform,
  DataTexture,
  FloatType,
  RedFormat,
  type RawShaderMaterial,
  type WebGLRenderTarget,
} from 'three'
import { type Origin, type PatternShader, patternShader } from '#pattern'
import type { SteelWeights } from './metal.ts'
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
  private readonly states: Uniforms
  private readonly begin: RawShaderMaterial
  private readonly stages: readonly RawShaderMaterial[]
  private readonly texture: DataTexture
  private readonly bench: Bench
  private readonly outputs: number

  constructor(
    bench: Bench,
    origin: Origin,
    name: string,
    directions: 2 | 3,
    weights: readonly SteelWeights[],
  ) {
    this.bench = bench
    this.outputs = directions + 1
    this.shader = patternShader(origin, { name, directions, weights })
    const { tables, tableWidth, numbers, stages } = this.shader
    const rows = tables.length / tableWidth
    this.texture = new DataTexture(
      tables as Float32Array<ArrayBuffer>,
      tableWidth,
      rows,
      RedFormat,
      FloatType,
    )
    this.texture.needsUpdate = true
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
