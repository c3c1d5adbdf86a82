import type { ShaderText, TailStage, Warp } from '#warp'

/** What a shader reads besides a picture. */
export interface ShaderValues {
  /** By the names of `uniform vec4 …[]`; the texts have them each where it is used. */
  readonly numbers: Readonly<Record<string, Float32Array<ArrayBuffer>>>
  /** R32F, `tableWidth` wide. */
  readonly tables: Float32Array<ArrayBuffer>
}

/** Fills them chain by chain: numbers by name, and all tables end to end. */
export class Values {
  readonly numbers: Record<string, Float32Array<ArrayBuffer>> = {}
  private readonly kept: Float32Array[] = []
  private length = 0

  /** Adds a chain's, unless it is told in other text. */
  add(name: string, chain: ShaderText, warps: readonly Warp[], tail?: TailStage): boolean {
    if (!chain.fits(warps, { tail })) return false
    this.numbers[name] = chain.numbers(warps, { tail }, this.length)
    const tables = chain.tables(warps, { tail })
    this.kept.push(tables)
    this.length += tables.length
    return true
  }

  told(tableWidth: number): ShaderValues {
    const tables = new Float32Array(Math.max(this.length, tableWidth))
    let at = 0
    for (const part of this.kept) {
      tables.set(part, at)
      at += part.length
    }
    return { numbers: this.numbers, tables }
  }
}
