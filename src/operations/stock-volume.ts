import type { PieceSolid } from '#piece'

/**
 * Metal in a skin of this thickness all over the finished piece, m³: surface × thickness, but never
 * more than its box has room for (a hole's walls carry no stock until it is drilled).
 */
export function stockVolume(piece: PieceSolid, thickness: number): number {
  const { length, width, height } = piece.size
  const t = 2 * thickness
  const plain = piece.volume + piece.features.reduce((sum, f) => sum + f.volume, 0)
  const room = (length + t) * (width + t) * (height + t) - plain
  return Math.min(piece.surface * thickness, room)
}
