/** Sheets of two steels laid by turns, dark outside. */
export interface Sheets {
  readonly dark: { readonly steel: string; readonly thickness: number }
  readonly bright: { readonly steel: string; readonly thickness: number }
  /** Thickness of the two outside sheets where they are thicker, m. */
  readonly outer?: number
  readonly width: number
}

/** A bar is drawn to a section, cut, and its pieces are laid one on another. */
export interface RestackChoice {
  readonly pieces: number
  readonly height: number
  readonly width: number
}

/** How a patterned bar is built up: the first stack and every restack. */
export interface Recipe {
  readonly sheets: number
  readonly stack: Sheets
  readonly restacks: readonly RestackChoice[]
}

/** Layers in the bar once it is welded, like joints merged: dark lies outside on both faces, or on one. */
export function layersOf(sheets: number, pieces: readonly number[]): number {
  const times = pieces.reduce((a, b) => a * b, 1)
  return sheets % 2 === 1 ? (sheets - 1) * times + 1 : sheets * times
}

/** `15 → ×3 → ×4`. */
export function recipeText({ sheets, restacks }: Recipe): string {
  return [sheets, ...restacks.map(({ pieces }) => `×${pieces}`)].join(' → ')
}

/** How this smith welds, trims and cleans: taken from the route as written, common practice otherwise. */
export interface Style {
  /** Values of the tack step, as a job file holds them. */
  readonly tack: Readonly<Record<string, unknown>>
  readonly first: WeldStyle
  readonly middle: WeldStyle
  readonly last: WeldStyle
}

export interface WeldStyle {
  readonly weld: Readonly<Record<string, unknown>>
  readonly trim?: Readonly<Record<string, unknown>>
  /** Values of the restack before it, pieces left out. */
  readonly restack: Readonly<Record<string, unknown>>
}

export type RawStep = Readonly<Record<string, unknown>>

/** The steps of a recipe as a job file holds them, stack length left free. */
export function stepsOf({ sheets, stack, restacks }: Recipe, style: Style): RawStep[] {
  return [
    stackStep(sheets, stack),
    ...weldSteps(style, style.first),
    ...restacks.flatMap((restack, k) => {
      const weld = k === restacks.length - 1 ? style.last : style.middle
      return [drawStep(restack), restackStep(restack, weld), ...weldSteps(style, weld)]
    }),
  ]
}

export function stackStep(sheets: number, { dark, bright, outer, width }: Sheets): RawStep {
  return {
    do: 'stack',
    sheets: [sheet(dark), sheet(bright)],
    repeat: Math.floor(sheets / 2),
    ...(sheets % 2 === 1 && { closeWith: dark.steel }),
    ...(outer !== undefined && { outer: lengthText(outer) }),
    width: lengthText(width),
    length: '?',
  }
}

export function drawStep({ height, width }: { height: number; width: number }): RawStep {
  return { do: 'draw out', height: lengthText(height), width: lengthText(width) }
}

export function restackStep({ pieces }: { pieces: number }, style: WeldStyle): RawStep {
  return { do: 'restack', pieces, ...style.restack }
}

export function weldSteps(style: Style, { weld, trim }: WeldStyle): RawStep[] {
  return [
    { do: 'tack', ...style.tack },
    { do: 'weld', ...weld },
    ...(trim ? [{ do: 'trim', ...trim }] : []),
  ]
}

function sheet({ steel, thickness }: { steel: string; thickness: number }) {
  return { steel, thickness: lengthText(thickness) }
}

/** A length with every digit, as a job file holds it. */
export function lengthText(m: number): string {
  return `${Number((m * 1000).toFixed(6))} mm`
}
