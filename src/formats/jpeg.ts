import jpeg from 'jpeg-js'
import type { Picture } from './picture.ts'

/** Reads a photograph. Throws on a file that is no JPEG. */
export function readJpeg(bytes: Uint8Array): Picture {
  // Photographs of up to 200 million pixels, in 2 GB.
  const { width, height, data } = jpeg.decode(bytes, {
    useTArray: true,
    formatAsRGBA: false,
    maxResolutionInMP: 200,
    maxMemoryUsageInMB: 2048,
  })
  const perMetre = densityOf(bytes)
  return {
    width,
    height,
    channels: 3,
    data: new Uint8Array(data.buffer, data.byteOffset, data.length),
    ...(perMetre === undefined ? {} : { perMetre }),
  }
}

/** The density in the JFIF head (ITU-T T.871, 10.1): unit 1 dots to the inch, 2 to the centimetre. */
function densityOf(bytes: Uint8Array): number | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (bytes.length < 18 || view.getUint16(2) !== 0xffe0 || view.getUint32(6) !== 0x4a464946)
    return undefined
  const [unit, across] = [bytes[13], view.getUint16(14)]
  // Cameras write 72 or 1 for "not known".
  if (across <= 72) return undefined
  return unit === 1 ? across / 0.0254 : unit === 2 ? across * 100 : undefined
}
