import { drawnInFull } from '../../drawing/print-whole.ts'
import { barLength } from '../../drawing/bar-length.ts'
import { LEGEND, type SavedLegend, drawLegend } from './saved-legend.ts'

/** Clear rim round a saved picture, css px. */
const RIM = 33

interface SavedPicture {
  readonly title: string
  readonly note: string
  /** m */
  readonly pixel: number
  readonly inch: boolean
  /** What the tones of an overlay mean. */
  readonly legend: SavedLegend | undefined
}

/** The picture, once it is drawn in full, on the sheet's own ground, with its scale bar and what it is, as a PNG file. */
export async function savePicture(
  canvas: HTMLCanvasElement,
  { title, note, pixel, inch, legend }: SavedPicture,
): Promise<void> {
  await drawnInFull(canvas)
  const style = getComputedStyle(document.documentElement)
  const colour = (name: string) => style.getPropertyValue(name).trim()
  const sharp = canvas.width / Math.max(canvas.clientWidth, 1)
  const sheet = document.createElement('canvas')
  sheet.width = canvas.width + 2 * RIM * sharp
  sheet.height = canvas.height + (4 * RIM + (legend ? LEGEND : 0)) * sharp
  const ink = sheet.getContext('2d')
  if (!ink) return
  ink.fillStyle = colour('--ground')
  ink.fillRect(0, 0, sheet.width, sheet.height)
  ink.drawImage(canvas, RIM * sharp, RIM * sharp)
  ink.scale(sharp, sharp)
  const bar = barLength(pixel, canvas.clientWidth, inch)
  const [left, foot] = [RIM, RIM + canvas.clientHeight + 22]
  ink.fillStyle = ink.strokeStyle = colour('--ink')
  ink.beginPath()
  ink.moveTo(left + 0.5, foot - 6)
  ink.lineTo(left + 0.5, foot + 0.5)
  ink.lineTo(left + 0.5 + bar.metres / pixel, foot + 0.5)
  ink.lineTo(left + 0.5 + bar.metres / pixel, foot - 6)
  ink.stroke()
  ink.font = "500 14px 'Alegreya Sans'"
  ink.fillText(bar.says, left + bar.metres / pixel + 10, foot + 2)
  ink.font = "700 17px 'Alegreya Sans'"
  ink.fillText(title, left, foot + 33)
  ink.font = "500 14px 'Alegreya Sans'"
  ink.fillText(note, left, foot + 55)
  if (legend) drawLegend(ink, legend, left, foot + 77, canvas.clientWidth)
  const blob = await new Promise<Blob | null>((resolve) => sheet.toBlob(resolve, 'image/png'))
  if (!blob) return
  const link = document.createElement('a')
  link.href = URL.createObjectURL(blob)
  link.download = `${title.replaceAll(/[^\p{L}\p{N}]+/gu, '-').toLowerCase()}.png`
  link.click()
  URL.revokeObjectURL(link.href)
}
