import { type Scale, barLook, tone } from './overlays.tsx'

export interface SavedLegend {
  readonly says: readonly string[]
  readonly scale: Scale | undefined
  /** Instead of a scale: the bars, by the number of their hatch. */
  readonly bars: readonly string[] | undefined
  readonly text: string
}

/** Room a legend takes under a picture, css px. */
export const LEGEND = 132
const LINE = 22
const WIDEST = 480

/** The legend of the sheet's margin on the picture's own paper: who has only the picture can read it. */
export function drawLegend(
  ink: CanvasRenderingContext2D,
  { scale, says, bars, text }: SavedLegend,
  left: number,
  top: number,
  width: number,
): void {
  const written = ink.fillStyle
  if (bars) swatches(ink, bars, left, top, left + width)
  else if (scale) ramp(ink, scale.steps, says, left, top, Math.min(width, WIDEST))
  ink.fillStyle = written
  wrapped(ink, text, width).forEach((line, i) =>
    ink.fillText(line, left, top + 2 * LINE + 4 + i * LINE),
  )
}

function ramp(
  ink: CanvasRenderingContext2D,
  steps: number,
  says: readonly string[],
  left: number,
  top: number,
  width: number,
): void {
  const written = ink.fillStyle
  for (let x = 0; x < width; x++) {
    ink.fillStyle = tone((x + 0.5) / width)
    ink.fillRect(left + x, top, 1.5, 11)
  }
  for (let i = 1; i < steps; i++) {
    ink.fillStyle = i / steps > 0.5 ? '#171716' : '#e6e6e2'
    ink.fillRect(left + (i * width) / steps, top, 1, 11)
  }
  ink.fillStyle = written
  says.forEach((said, i) => {
    const share = says.length > 1 ? i / (says.length - 1) : 0
    ink.fillText(said, left + share * (width - ink.measureText(said).width), top + 26)
  })
}

function swatches(
  ink: CanvasRenderingContext2D,
  bars: readonly string[],
  left: number,
  top: number,
  right: number,
): void {
  const written = ink.fillStyle
  let x = left
  bars.forEach((bar, i) => {
    const wide = 52 + ink.measureText(bar).width + 22
    if (x + wide > right) return
    const { grey, turn, apart } = barLook(i)
    ink.save()
    ink.beginPath()
    ink.rect(x, top, 44, 15)
    ink.clip()
    ink.fillStyle = `rgb(${grey},${grey},${grey})`
    ink.fillRect(x, top, 44, 15)
    ink.translate(x, top)
    ink.rotate(turn)
    ink.fillStyle = 'rgb(0 0 0 / 45%)'
    if (i > 0) for (let k = -60; k < 60; k += apart) ink.fillRect(k, -60, 1.4, 120)
    ink.restore()
    ink.fillStyle = written
    ink.fillText(bar, x + 52, top + 12)
    x += wide
  })
}

function wrapped(ink: CanvasRenderingContext2D, text: string, width: number): string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word
    if (lines.length > 0 && ink.measureText(longer).width <= width) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}
