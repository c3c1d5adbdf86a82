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

export function tonesFor(steels: readonly DeclaredSteel[]): Tones {
  const known = new Map(steels.map((steel) => [steel.name, toneOf(steel)]))
  return (steel) => known.get(steel) ?? { bright: 0.45, hatch: 'strokes' }
}

function toneOf({ bright, carbon, family }: DeclaredSteel): Tone {
  if (family === 'iron') return { bright: 0.72, hatch: 'dashes' }
  if (bright > 0.9) return { bright: 1, hatch: 'none' }
  if (bright < 0.2) return { bright: carbon >= 0.7 ? 0 : 0.12, hatch: 'lines' }
  return carbon >= 0.4 ? { bright: 0.32, hatch: 'dots' } : { bright: 0.62, hatch: 'strokes' }
}

/** The theme's steels from dark to bright, ready for canvases. */
export interface SteelColours {
  /** 256 pixels from dark to bright, as a little-endian canvas holds them. */
  readonly packed: Uint32Array
  /** The colour at a share of the way, for strokes. */
  css(share: number): string
  readonly rule: string
}

const known = new Map<boolean, SteelColours>()

/** Read once a theme: the page's own style says them. */
export function steelColours(night: boolean): SteelColours {
  const found = known.get(night)
  if (found) return found
  const style = getComputedStyle(document.documentElement)
  const [dark, bright] = ['--dark-steel', '--bright-steel'].map((name) =>
    rgb(style.getPropertyValue(name)),
  )
  const mix = (share: number) => dark.map((d, i) => Math.round(d + (bright[i] - d) * share))
  const colours: SteelColours = {
    packed: Uint32Array.from({ length: 256 }, (_, i) => {
      const [r, g, b] = mix(i / 255)
      return (0xff000000 | (b << 16) | (g << 8) | r) >>> 0
    }),
    css: (share) => `rgb(${mix(share).join()})`,
    rule: style.getPropertyValue('--rule').trim(),
  }
  known.set(night, colours)
  return colours
}

function rgb(hex: string): readonly number[] {
  const n = Number.parseInt(hex.trim().slice(1), 16)
  return [(n >> 16) & 255, (n >> 8) & 255, n & 255]
}
