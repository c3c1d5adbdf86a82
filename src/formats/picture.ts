/** Pixels row by row from the top left; 1 channel grey, 2 grey and alpha, 3 colour, 4 colour and alpha. */
export interface Picture {
  readonly width: number
  readonly height: number
  readonly channels: 1 | 2 | 3 | 4
  /** Uint8Array: 0 … 255; Uint16Array: 0 … 65535. */
  readonly data: Uint8Array | Uint16Array
  /** Pixels to a metre, where the file says. */
  readonly perMetre?: number
}
