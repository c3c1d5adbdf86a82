/** Length along x (the bar), width across (y), height up (z): metres. */
export interface Size {
  readonly length: number
  readonly width: number
  readonly height: number
}

export type Axis = 'x' | 'y' | 'z'

export const axisLength = { x: 'length', y: 'width', z: 'height' } as const

export function boxVolume(size: Size): number {
  return size.length * size.width * size.height
}

/** Every side shortened by twice the thickness taken off each face; never below zero. */
export function shrink(size: Size, off: Partial<Size>): Size {
  const less = (side: number, each = 0) => Math.max(0, side - 2 * each)
  return {
    length: less(size.length, off.length),
    width: less(size.width, off.width),
    height: less(size.height, off.height),
  }
}
