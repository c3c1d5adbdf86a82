/** Where the picture of a pattern lies, and its pixels: two for each at true size. */
export interface Cutting {
  readonly url: string
  readonly width: number
  readonly height: number
}

/** By the pattern's name; the build draws them and fills this in (`vite.config.ts`). */
export const cuttings: Readonly<Record<string, Cutting>> = {}
