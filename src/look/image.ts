/** A drawn picture, row by row from the top left: what the formats write. 1 channel grey, 3 colour, 4 colour and alpha. */
export interface Image {
  readonly width: number
  readonly height: number
  readonly channels: 1 | 3 | 4
  readonly data: Uint8Array | Uint16Array
  /** Pixels to a metre. */
  readonly perMetre: number
}

export type Colour = readonly [number, number, number]

/** Light on paper, and the night shop (look of the house), as screen values 0 … 1. */
export const GROUNDS = {
  paper: { ground: [0.957, 0.957, 0.949], ink: [0.09, 0.09, 0.086] },
  night: { ground: [0.067, 0.067, 0.063], ink: [0.902, 0.902, 0.886] },
} as const satisfies Record<string, { ground: Colour; ink: Colour }>

/** Screen value 0 … 1 of a linear one (IEC 61966-2-1). */
export function toScreen(linear: number): number {
  const v = Math.min(Math.max(linear, 0), 1)
  return v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055
}
export function toLinear(screen: number): number {
  return screen <= 0.04045 ? screen / 12.92 : ((screen + 0.055) / 1.055) ** 2.4
}

/** Room for samples of 8 or 16 bits, and the number that stands for 1. */
export function samples(count: number, bits: 8 | 16) {
  return bits === 16
    ? { data: new Uint16Array(count), most: 65535 }
    : { data: new Uint8Array(count), most: 255 }
}
