/** Open file formats to and from bytes. */
export type { Picture } from './picture.ts'
export { type PictureFile, pictureFileOf, readPicture } from './read-picture.ts'
export { readPng, writePng } from './png.ts'
export { readJpeg } from './jpeg.ts'
