import { crc32, deflateSync, inflateSync } from 'node:zlib'
import jpeg from 'jpeg-js'
import { describe, expect, it } from 'vitest'
import { readPicture, writePng } from './index.ts'

/** Chunks of a PNG, read by hand. */
function chunks(png: Uint8Array): { name: string; data: Buffer }[] {
  const bytes = Buffer.from(png)
  const found = []
  for (let at = 8; at < bytes.length;) {
    const length = bytes.readUInt32BE(at)
    const name = bytes.toString('latin1', at + 4, at + 8)
    found.push({ name, data: bytes.subarray(at + 8, at + 8 + length) })
    at += length + 12
  }
  return found
}

describe('PNG', () => {
  it('holds 16-bit samples high byte first and its resolution, by the letter of the standard', () => {
    const data = Uint16Array.from([0, 1, 256, 65535, 4660, 43981])
    const png = writePng({ width: 3, height: 2, channels: 1, data, perMetre: 11811 })
    const parts = chunks(png)
    expect(parts.map((p) => p.name)).toEqual(['IHDR', 'pHYs', 'IDAT', 'IEND'])
    const [head, size, body] = parts
    expect([head!.data.readUInt32BE(0), head!.data.readUInt32BE(4), head!.data[8]]).toEqual([
      3, 2, 16,
    ])
    expect([size!.data.readUInt32BE(0), size!.data[8]]).toEqual([11811, 1])
    const raw = inflateSync(body!.data)
    expect(raw.length).toBe(2 * (1 + 6))
    expect(readPicture(png).picture).toMatchObject({ width: 3, height: 2, perMetre: 11811, data })
  })

  it('of one bit a pixel, or of a palette, written by hand by the standard, is read', () => {
    // Rows of 10 pixels in 2 bytes, highest bit first, each behind a filter byte 0.
    const grey = byHand(10, 2, 1, 0, [0, 0b10110000, 0b01000000, 0, 0b00000001, 0b10000000])
    const bits = [1, 0, 1, 1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 1, 0]
    expect([...readPicture(grey).picture!.data]).toEqual(bits.map((b) => 255 * b))
    const palette = [10, 20, 30, 200, 100, 50, 1, 2, 3]
    const coloured = byHand(5, 1, 2, 3, [0, 0b00011000, 0b01000000], palette)
    expect([...readPicture(coloured).picture!.data]).toEqual(
      [0, 1, 2, 0, 1].flatMap((k) => palette.slice(3 * k, 3 * k + 3)),
    )
  })
})

function byHand(
  width: number,
  height: number,
  depth: number,
  colour: number,
  rows: number[],
  palette?: number[],
) {
  const head = Buffer.alloc(13)
  head.writeUInt32BE(width, 0)
  head.writeUInt32BE(height, 4)
  head.set([depth, colour, 0, 0, 0], 8)
  const chunk = (name: string, data: Uint8Array) => {
    const body = Buffer.concat([Buffer.from(name, 'latin1'), data])
    const ends = Buffer.alloc(8)
    ends.writeUInt32BE(data.length, 0)
    ends.writeUInt32BE(crc32(body), 4)
    return Buffer.concat([ends.subarray(0, 4), body, ends.subarray(4)])
  }
  return new Uint8Array(
    Buffer.concat([
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]),
      chunk('IHDR', head),
      ...(palette ? [chunk('PLTE', Uint8Array.from(palette))] : []),
      chunk('IDAT', deflateSync(Uint8Array.from(rows))),
      chunk('IEND', new Uint8Array()),
    ]),
  )
}

describe('a photograph', () => {
  it('is read within the error of its compression', () => {
    const [width, height] = [64, 48]
    const data = new Uint8Array(width * height * 4)
    for (let i = 0; i < width * height; i++) {
      const v = 128 + 100 * Math.sin(((i % width) * 2 * Math.PI) / 16)
      data.set([v, v, v, 255], 4 * i)
    }
    const file = new Uint8Array(jpeg.encode({ width, height, data }, 92).data)
    const { picture } = readPicture(file)
    expect(picture).toMatchObject({ width, height, channels: 3 })
    const off = Array.from({ length: width * height }, (_, i) =>
      Math.abs(picture!.data[3 * i]! - data[4 * i]!),
    )
    expect(Math.max(...off)).toBeLessThan(8)
  })

  it('that is none is refused in words', () => {
    expect(readPicture(new Uint8Array([1, 2, 3])).wrong).toMatch(/neither/)
    expect(readPicture(new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 16])).wrong).toMatch(
      /JPEG cannot/,
    )
  })
})
