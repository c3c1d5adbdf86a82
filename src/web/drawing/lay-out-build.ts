import type { Build } from '#desk'
import type { Tones } from './tones.ts'

type Axis = 'x' | 'y' | 'z'

/** A look at a bar: which axis runs across the drawing, which up, and where along the third. */
export interface View {
  readonly across: Axis
  readonly up: Axis
  /** Where along the axis one looks down: 0.5 a cut in the middle, 0 the near face. */
  readonly at: number
}

export const SECTION: View = { across: 'y', up: 'z', at: 0.5 }
export const BENCH: View = { across: 'x', up: 'z', at: 0 }

/** One steel (or a mean of several) in a rectangle; y counts down the drawing, all 0 to 1. */
export interface Patch {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  readonly bright: number
  /** The steel, where it is one flat layer: hatched if thick enough. */
  readonly steel?: string
  /** Layers that no longer lie flat: drawn as a plain schematic. */
  readonly disturbed?: string
}

/** Work that leaves layers about where they lay: drawn as they lay. */
const CALM =
  /^(ground|forged|drift|squared on|upset|polish|etch|trim|groove|drill|stamp|scale|crop)/

/** A build as patches of a unit square. Nothing is drawn that the account does not say. */
export function layOut(build: Build, view: View, tones: Tones): Patch[] {
  const patches: Patch[] = []
  const lay = (of: Build, x: number, y: number, width: number, height: number): void => {
    if (!(width > 0 && height > 0)) return
    if (of.form === 'worked') {
      if (CALM.test(of.by)) return lay(of.of, x, y, width, height)
      patches.push({ x, y, width, height, bright: meanOf(of, tones), disturbed: of.by })
    } else if (of.form === 'layered') layLayers(of, x, y, width, height)
    else layParts(of, x, y, width, height)
  }
  const layLayers = (
    of: Extract<Build, { form: 'layered' }>,
    x: number,
    y: number,
    width: number,
    height: number,
  ): void => {
    const whole = of.layers.reduce((sum, layer) => sum + layer.thickness, 0)
    const seen = of.axis !== view.across && of.axis !== view.up
    let from = 0
    for (const { steel, thickness } of of.layers) {
      const share = thickness / whole
      const { bright } = tones(steel)
      if (seen) {
        if (view.at <= from + share || of.layers.at(-1)?.steel === steel) {
          patches.push({ x, y, width, height, bright, steel })
          return
        }
      } else if (of.axis === view.across)
        patches.push({ x: x + from * width, y, width: share * width, height, bright, steel })
      else {
        const top = y + (1 - from - share) * height
        patches.push({ x, y: top, width, height: share * height, bright, steel })
      }
      from += share
    }
  }
  const layParts = (
    of: Extract<Build, { form: 'joined' }>,
    x: number,
    y: number,
    width: number,
    height: number,
  ): void => {
    if (of.axis === 'section') return layWrapped(of, x, y, width, height)
    const seen = of.axis !== view.across && of.axis !== view.up
    let from = 0
    for (const { build: part, share, times } of of.parts) {
      if (seen) {
        if (view.at <= from + share) return lay(part, x, y, width, height)
      } else
        for (let i = 0; i < times; i++) {
          const [a, w] = [from + (share * i) / times, share / times]
          if (of.axis === view.across) lay(part, x + a * width, y, w * width, height)
          else lay(part, x, y + (1 - a - w) * height, width, w * height)
        }
      from += share
    }
    const last = of.parts.at(-1)
    if (seen && last) lay(last.build, x, y, width, height)
  }
  /** Parts one round another, the first in the middle, areas as their shares. */
  const layWrapped = (
    of: Extract<Build, { form: 'joined' }>,
    x: number,
    y: number,
    width: number,
    height: number,
  ): void => {
    let filled = 1
    for (const { build: part, share } of of.parts.toReversed()) {
      const side = Math.sqrt(filled)
      const isCore = filled - share < 1e-9
      const [w, h] = [width * side, height * side]
      const [left, top] = [x + (width - w) / 2, y + (height - h) / 2]
      if (isCore) lay(part, left, top, w, h)
      else {
        const inner = Math.sqrt(Math.max(0, filled - share)) / side
        const [dx, dy] = [(w * (1 - inner)) / 2, (h * (1 - inner)) / 2]
        const bright = meanOf(part, tones)
        const ring = { bright, ...steelOf(part) }
        patches.push(
          { x: left, y: top, width: w, height: dy, ...ring },
          { x: left, y: top + h - dy, width: w, height: dy, ...ring },
          { x: left, y: top + dy, width: dx, height: h - 2 * dy, ...ring },
          { x: left + w - dx, y: top + dy, width: dx, height: h - 2 * dy, ...ring },
        )
      }
      filled -= share
    }
  }
  lay(build, 0, 0, 1, 1)
  return patches
}

function steelOf(build: Build): { readonly steel?: string } {
  return build.form === 'layered' && build.layers.length === 1
    ? { steel: build.layers[0].steel }
    : {}
}

/** Mean lightness by volume. */
function meanOf(build: Build, tones: Tones): number {
  if (build.form === 'worked') {
    if (!build.shares) return meanOf(build.of, tones)
    return Object.entries(build.shares).reduce(
      (sum, [s, share]) => sum + tones(s).bright * share,
      0,
    )
  }
  if (build.form === 'joined')
    return build.parts.reduce((sum, part) => sum + meanOf(part.build, tones) * part.share, 0)
  const whole = build.layers.reduce((sum, layer) => sum + layer.thickness, 0)
  return build.layers.reduce((sum, l) => sum + (tones(l.steel).bright * l.thickness) / whole, 0)
}
