import { decode, encode } from 'fast-png'
import type { Picture } from './picture.ts'

/** A picture as PNG, 8 or 16 bit as its data are; `perMetre` is written, so that it prints at true size. */
export function writePng(picture: Picture): Uint8Array {
  const { width, height, channels, data, perMetre } = picture
  const depth = data instanceof Uint16Array ? 16 : 8
  const bytes = encode({ width, height, channels, depth, data })
  return perMetre === undefined ? bytes : withResolution(bytes, perMetre)
}

/** Reads a PNG of any kind: palettes are looked up, 1, 2 and 4 bit grey spread to 8. Throws on a file that is none. */
export function readPng(bytes: Uint8Array): Picture {
  const png = decode(bytes)
  const { width, height, palette, resolution } = png
  const perMetre = resolution?.unit === 1 ? { perMetre: resolution.x } : {}
  const samples = png.depth < 8 ? unpack(png.data, png) : (png.data as Uint8Array | Uint16Array)
  if (palette) {
    const channels = palette[0]!.length === 4 ? 4 : 3
    const data = new Uint8Array(width * height * channels)
    samples.forEach((index, i) => data.set(palette[index]!, i * channels))
    return { width, height, channels, data, ...perMetre }
  }
  const channels = png.channels as Picture['channels']
  if (png.depth >= 8) return { width, height, channels, data: samples, ...perMetre }
  const most = 2 ** png.depth - 1
  const data = Uint8Array.from(samples, (v) => Math.round((v * 255) / most))
  return { width, height, channels, data, ...perMetre }
}

/** Samples of less than a byte, packed in rows that begin on whole bytes, the first in the highest bits. */
function unpack(
  packed: ArrayLike<number>,
  { width, height, depth }: { width: number; height: number; depth: number },
): Uint8Array {
  const perByte = 8 / depth
  const stride = Math.ceil(width / perByte)
  if (packed.length >= width * height && stride * height < width * height)
    return Uint8Array.from(packed)
  const samples = new Uint8Array(width * height)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const byte = packed[y * stride + Math.floor(x / perByte)]!
      samples[y * width + x] = (byte >> (8 - depth * ((x % perByte) + 1))) & (2 ** depth - 1)
    }
  return samples
}

/** The pHYs chunk (PNG, second edition, 11.3.5.3) put after the header. */
function withResolution(png: Uint8Array, perMetre: number): Uint8Array {
  const chunk = new Uint8Array(21)
  const view = new DataView(chunk.buffer)
  view.setUint32(0, 9)
  chunk.set([0x70, 0x48, 0x59, 0x73], 4)
  view.setUint32(8, Math.round(perMetre))
  view.setUint32(12, Math.round(perMetre))
  chunk[16] = 1
  view.setUint32(17, crc32(chunk.subarray(4, 17)))
  // Signature 8, header chunk 25.
  const after = 33
  const result = new Uint8Array(png.length + chunk.length)
  result.set(png.subarray(0, after))
  result.set(chunk, after)
  result.set(png.subarray(after), after + chunk.length)
  return result
}

/** PNG, second edition, annex D. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff
  for (const byte of bytes) {
    crc ^= byte
    for (let k = 0; k < 8; k++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1
  }
  return (crc ^ 0xffffffff) >>> 0
}
