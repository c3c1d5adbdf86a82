import type { DeclaredSteel } from '#desk'

/** Steels are told apart by lightness first, by hatch where a layer is thick enough. */
export type Hatch = 'lines' | 'dots' | 'strokes' | 'dashes' | 'none'

export interface Tone {
  /** 0 the dark steel of the theme, 1 the bright one. */
  readonly bright: number
  readonly hatch: Hatch
}

/** How the steels of the house are drawn; own grades as middling until they say more. */
export type Tones = (steel: string) => Tone

const DARKEST = 0.22
const BRIGHTEST = 0.82

export function tonesFor(steels: readonly DeclaredSteel[]): Tones {
  const known = new Map(steels.map((steel) => [steel.name, toneOf(steel)]))
  return (steel) => known.get(steel) ?? { bright: 0.45, hatch: 'strokes' }
}

function toneOf({ lightness, carbon, family }: DeclaredSteel): Tone {
  const bright = Math.min(1, Math.max(0, (lightness - DARKEST) / (BRIGHTEST - DARKEST)))
  if (family === 'iron') return { bright: 0.72, hatch: 'dashes' }
  if (bright > 0.9) return { bright: 1, hatch: 'none' }
  if (bright < 0.2) return { bright: carbon >= 0.7 ? 0 : 0.12, hatch: 'lines' }
  return carbon >= 0.4 ? { bright: 0.32, hatch: 'dots' } : { bright: 0.62, hatch: 'strokes' }
}

/** Linear mix of the theme's two steels, as CSS and as numbers. */
export function steelColours(element: Element): readonly [dark: Rgb, bright: Rgb] {
  const style = getComputedStyle(element)
  return [
    rgb(style.getPropertyValue('--dark-steel')),
    rgb(style.getPropertyValue('--bright-steel')),
  ]
}

export type Rgb = readonly [number, number, number]

function rgb(hex: string): Rgb {
  const n = Number.parseInt(hex.trim().slice(1), 16)
  return [(n >> 16) & 255, (n >> 8) & 255, n & 255]
}

export function mix([dark, bright]: readonly [Rgb, Rgb], share: number): Rgb {
  return [0, 1, 2].map((i) => Math.round(dark[i] + (bright[i] - dark[i]) * share)) as never
}
