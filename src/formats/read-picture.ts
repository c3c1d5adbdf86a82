import { readJpeg } from './jpeg.ts'
import type { Picture } from './picture.ts'
import { readPng } from './png.ts'

/** What a picture file is, by its first bytes. */
export type PictureFile = 'png' | 'jpeg'

export function pictureFileOf(bytes: Uint8Array): PictureFile | undefined {
  if (bytes[0] === 0x89 && bytes[1] === 0x50 && bytes[2] === 0x4e && bytes[3] === 0x47) return 'png'
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return 'jpeg'
  return undefined
}

/** Reads a PNG or JPEG; what is wrong with the file, in words, if it cannot be read. */
export function readPicture(
  bytes: Uint8Array,
):
  | { readonly picture: Picture; readonly wrong?: undefined }
  | { readonly picture?: undefined; readonly wrong: string } {
  const file = pictureFileOf(bytes)
  if (!file) return { wrong: 'the file is neither PNG nor JPEG' }
  try {
    return { picture: file === 'png' ? readPng(bytes) : readJpeg(bytes) }
  } catch (error) {
    return { wrong: `the ${file.toUpperCase()} cannot be read: ${(error as Error).message}` }
  }
}
