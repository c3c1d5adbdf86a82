import type { PatternMap } from '#pattern'
import { type Finish, type Lighting, type Skin, SPARED, finishes, stripLight } from './finish.ts'
import { GROUNDS, type Image, samples, toLinear, toScreen } from './image.ts'
import { scatter } from '#pattern'
import { drawScaleBar } from './scale-bar.ts'

export interface EtchedOptions {
  readonly finish?: Finish
  readonly light?: Lighting
  readonly ground?: keyof typeof GROUNDS
  readonly bits?: 8 | 16
  /** A scale bar below the metal (default: yes). */
  readonly scaleBar?: boolean
  readonly seed?: number
  /** Whether scratches and grain are drawn (default: yes). */
  readonly polish?: boolean
}

/**
 * The etched face as the eye sees it. The first mean of the map is how bright each steel stays, the second, if any, how
 * high it stands (else as high as it is bright). The two skins' gloss, roughness and dull colour are blended by the
 * coverage of each pixel, never the colours themselves; relief tilts the normal.
 */
export function drawEtched(map: PatternMap, options: EtchedOptions = {}): Image {
  const { ground = 'paper', bits = 8, scaleBar = true } = options
  const shown = shade(map, options)
  const { width, height } = map
  const { data, most } = samples(width * height * 3, bits)
  const back = GROUNDS[ground].ground.map(toLinear)
  for (let i = 0; i < width * height; i++) {
    const a = map.alpha[i]! / 255
    for (let k = 0; k < 3; k++) {
      const linear = a * shown[3 * i + k]! + (1 - a) * back[k]!
      data[3 * i + k] = Math.round(toScreen(linear) * most)
    }
  }
  const image: Image = { width, height, channels: 3, data, perMetre: 1 / map.view.pixel }
  return scaleBar ? drawScaleBar(image, ground) : image
}

/** The eye is about this far away, m: towards the rims another part of the room is mirrored. */
const EYE = 0.4

/** Least and greatest slope a normal is drawn with: steeper facets mirror the same room. */
const STEEP = 3

function shade(map: PatternMap, options: EtchedOptions): Float32Array {
  const { finish = finishes.dark, light = stripLight, seed = 1, polish = true } = options
  const { width, height, means, seam, normalRight, normalUp, spared } = map
  const bright = means[0]!
  const tall = means[1] ?? bright
  const { pixel } = map.view
  const shown = new Float32Array(width * height * 3)
  const steep = finish.relief / (2 * pixel) / 65535
  const scratches = new Scratches(width, pixel, seed, polish ? finish.scratches : 0)
  const room = new Room(light)
  const eye = 1 / (2 * Math.max(EYE, 1.2 * width * pixel))
  for (let row = 0; row < height; row++) {
    scratches.row(row)
    const bowUp = (row - height / 2) * pixel * eye
    for (let column = 0; column < width; column++) {
      const i = row * width + column
      if (map.alpha[i] === 0) continue
      const seamed = seam ? seam[i]! / 255 : 0
      const c = bright[i]! / 65535
      const unrubbed = spared ? spared[i]! / 255 : 0
      const coverage = (c + (1 - c) * 0.85 * seamed) * (1 - SPARED.skin * unrubbed)
      const near = (at: number, inside: boolean) =>
        inside && map.alpha[at]! > 0 ? tall[at]! : tall[i]!
      const left = near(i - 1, column > 0)
      const right = near(i + 1, column + 1 < width)
      const upper = near(i - width, row > 0)
      const lower = near(i + width, row + 1 < height)
      const here = tall[i]!
      const out = normalRight
        ? Math.sqrt(
            Math.max(0.02, 1 - (normalRight[i]! / 32767) ** 2 - (normalUp![i]! / 32767) ** 2),
          )
        : 1
      const slopeRight =
        (normalRight ? normalRight[i]! / 32767 / out : 0) -
        (right - left) * steep -
        (column - width / 2) * pixel * eye
      const slopeUp =
        (normalUp ? normalUp[i]! / 32767 / out : 0) -
        (upper - lower) * steep +
        bowUp +
        coverage * (1 - unrubbed) * scratches.tilt(column)
      const hollow = Math.max(0, (left + right + upper + lower) / 4 - here) / 65535
      const dim = (1 - finish.hollow * Math.min(1, 4 * hollow)) * (1 - SPARED.darker * unrubbed)
      const grain = polish ? 1 + 0.05 * (scatter(seed, column, row) - 0.5) : 1
      room.light(
        finish.bright,
        finish.dark,
        coverage,
        clampSlope(slopeRight),
        clampSlope(slopeUp),
        dim * grain,
        shown,
        3 * i,
      )
    }
  }
  return shown
}

function clampSlope(slope: number): number {
  return Math.min(STEEP, Math.max(-STEEP, slope))
}

/**
 * A room lit by a strip along the piece, sky above it, a dark gap, a wall below. Facets of a rough metal face every way
 * with slopes spread as GGX; the share of them that mirrors a band of the room into the eye has a closed form: of slopes
 * across the band, the marginal of GGX, ½·t/√(1+t²) with t the slope over the roughness.
 */
class Room {
  private readonly edges: readonly number[]
  private readonly light_: readonly number[]
  private readonly stripAt: number
  private readonly ambient: number

  constructor({ strip, stripHalf, stripLight: lit, sky, wall }: Lighting) {
    // From the lower edge of the picture upwards: wall, a dark gap, sky, strip, sky, dark overhead.
    this.edges = [-0.75, -0.12, -0.02, strip - stripHalf, strip + stripHalf, 0.9]
    this.light_ = [0.05, wall, 0.03, sky, lit, sky, 0.08]
    this.stripAt = strip
    this.ambient = 0.5 * (sky + wall) + 0.05 * lit
  }

  light(
    bright: Skin,
    dark: Skin,
    c: number,
    slopeRight: number,
    slopeUp: number,
    dim: number,
    shown: Float32Array,
    at: number,
  ): void {
    const d = 1 - c
    const along = c * bright.alongPolish + d * dark.alongPolish
    const across = c * bright.acrossPolish + d * dark.acrossPolish
    let below = 0
    let mirrored = 0
    for (let k = 0; k < this.edges.length; k++) {
      const t = (this.edges[k]! - slopeUp) / across
      const share = 0.5 + (0.5 * t) / Math.sqrt(1 + t * t)
      mirrored += this.light_[k]! * (share - below)
      below = share
    }
    mirrored += this.light_[this.edges.length]! * (1 - below)
    // The strip ends: metal tilted along the piece looks past it. A faint lamp stands to one side.
    const past = slopeRight / 0.9
    mirrored *= 1 / (1 + past * past)
    const side = (slopeRight - 0.35) / along
    const lift = (slopeUp - 0.05) / across
    mirrored += 0.35 / (Math.PI * (1 + side * side + lift * lift) ** 2)
    const facing = 1 / Math.sqrt(1 + slopeRight * slopeRight + (slopeUp - this.stripAt) ** 2)
    const soft = this.ambient * (0.35 + 0.65 * facing)
    for (let k = 0; k < 3; k++) {
      const mirror = c * bright.mirror[k]! + d * dark.mirror[k]!
      const dull = c * bright.dull[k]! + d * dark.dull[k]!
      shown[at + k] = rollOff(EXPOSURE * dim * (mirror * mirrored + dull * soft))
    }
  }
}

/** Brings polished metal in the strip's light to about nine tenths of white on the screen. */
const EXPOSURE = 2.1

/** Linear through the darks, bent over below white: 8 is more than the strip's whole light in polished metal. */
function rollOff(v: number): number {
  const white = 8
  return (v * (1 + v / (white * white))) / (1 + v)
}

/** Long scratches along the piece: tilts that hold for a length of polish and change from row to row. */
class Scratches {
  private readonly tilts: Float32Array
  private readonly width: number
  private readonly pixel: number
  private readonly seed: number
  private readonly size: number

  constructor(width: number, pixel: number, seed: number, size: number) {
    this.width = width
    this.pixel = pixel
    this.seed = seed
    this.size = size
    this.tilts = new Float32Array(width)
  }

  /** Prepares a row: two lengths of stroke, each linear between random tilts. */
  row(row: number): void {
    this.tilts.fill(0)
    if (this.size === 0) return
    // Scratches finer than a pixel average out: as the root of how many lie in it (0.02 mm apart, from memory).
    const fade = Math.min(1, Math.sqrt(2e-5 / this.pixel) + 0.25)
    for (const [k, stroke] of [12e-3, 3.5e-3].entries()) {
      const shift = scatter(this.seed + k, row, -1)
      for (let i = 0; i < this.width; i++) {
        const at = (i * this.pixel) / stroke + shift
        const cell = Math.floor(at)
        const a = scatter(this.seed + k, row, cell) - 0.5
        const b = scatter(this.seed + k, row, cell + 1) - 0.5
        this.tilts[i] = this.tilts[i]! + fade * this.size * (a + (b - a) * (at - cell)) * (2 - k)
      }
    }
  }

  tilt(column: number): number {
    return this.tilts[column]!
  }
}
