/** A length of a preset: a multiple of a side of the blank it is forged to, and so much more, m. */
export interface Share {
  readonly of: 'width' | 'height'
  readonly times: number
  readonly plus?: number
}

/** A step of a preset: values as a job file holds them, or shares of the blank. */
export type PresetStep = Readonly<Record<string, string | number | Share>>

/** A common pattern as the steps that make it out of a built-up pack. */
export interface Preset {
  /** The trade's name. */
  readonly name: string
  readonly shows: string
  /** Layers that suit it, merged (common practice). */
  readonly layers: readonly [fewest: number, most: number]
  readonly steps: readonly PresetStep[]
}

const height = (times: number, plus = 0): Share => ({ of: 'height', times, plus })
const width = (times: number, plus = 0): Share => ({ of: 'width', times, plus })
const toBlank: PresetStep = { do: 'draw out', height: height(1), width: width(1) }

/** The trade's common patterns; figures are common practice, no source. */
export const presets: readonly Preset[] = [
  {
    name: 'random',
    shows: 'contour lines where the hammer was uneven',
    layers: [150, 400],
    steps: [toBlank],
  },
  {
    name: 'straight laminate on edge',
    shows: 'straight lines along the piece',
    layers: [20, 200],
    steps: [{ do: 'turn', to: 'on edge' }, toBlank],
  },
  {
    name: 'straight laminate on end',
    shows: 'straight lines across the piece',
    layers: [40, 400],
    steps: [{ do: 'turn', to: 'on end' }, toBlank, { do: 'crop', start: '3 mm', end: '3 mm' }],
  },
  {
    name: 'ladder',
    shows: 'rungs across the piece',
    layers: [150, 400],
    steps: [
      { do: 'draw out', height: height(1.5), width: width(0.96) },
      { do: 'ladder', depth: height(0.45), width: '5 mm', pitch: '10 mm' },
      { do: 'forge flat', height: height(1), heats: 2 },
    ],
  },
  {
    name: 'raindrop',
    shows: 'rings like drops on water',
    layers: [100, 300],
    steps: [
      { do: 'draw out', height: height(1.35), width: width(0.96) },
      { do: 'dimple', depth: height(0.4), diameter: '8 mm', spacing: '14 mm' },
      { do: 'forge flat', height: height(1), heats: 2 },
    ],
  },
  {
    name: 'twist',
    shows: 'slanting stripes, stars where it is ground to its middle',
    layers: [5, 50],
    steps: [
      { do: 'square up', side: { of: 'width', times: 0.55, plus: 0.004 } },
      { do: 'forge to section', section: 'octagon' },
      { do: 'twist', pitch: '25 mm pitch', hand: 'right' },
      toBlank,
    ],
  },
  {
    name: 'feather',
    shows: 'barbs swept back from a quill',
    layers: [100, 400],
    steps: [
      { do: 'turn', to: 'on end' },
      { do: 'draw out', height: height(3.5), width: width(1.05) },
      { do: 'wedge split', drag: '15 mm', reach: '8 mm' },
      toBlank,
    ],
  },
]

/** The steps of a preset with its shares worked out for a blank. */
export function stepsOfPreset(
  { steps }: Preset,
  blank: { readonly width: number; readonly height: number },
): Record<string, unknown>[] {
  return steps.map((step) =>
    Object.fromEntries(
      Object.entries(step).map(([name, value]) => {
        if (typeof value !== 'object') return [name, value]
        const m = blank[value.of] * value.times + (value.plus ?? 0)
        return [name, `${Number((m * 1000).toFixed(2))} mm`]
      }),
    ),
  )
}
