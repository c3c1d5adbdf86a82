import { useEffect, useMemo, useRef } from 'react'
import { type DrawnBar, useDesk } from '#desk'
import { coverPixels } from './cover.ts'
import { drawSoon } from './draw-soon.ts'
import { type Patch, type View, layOut } from './lay-out-build.ts'
import { TRUE } from './scale.ts'
import { useNight } from './night.ts'
import { type Hatch, type Tones, steelColours, tonesFor } from './tones.ts'

const sideOf = { x: 'length', y: 'width', z: 'height' } as const
/** A layer of this many pixels or more is hatched. */
const HATCHED = 6

interface BarDrawingProps {
  readonly bar: DrawnBar
  readonly view: View
  /** Drawn over true. */
  readonly ratio: number
  readonly label: string
  /** Px: a longer bar is broken off. */
  readonly most?: number
}

/** A bar drawn to scale from its account: each layer where it lies, in the tone of its steel. */
export function BarDrawing({ bar, view, ratio, label, most = Infinity }: BarDrawingProps) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const steels = useDesk((desk) => desk.declared?.steels)
  const tones = useMemo(() => tonesFor(steels ?? []), [steels])
  const night = useNight()
  const whole = bar.size[sideOf[view.across]] * TRUE * ratio
  const width = Math.max(3, Math.min(whole, most))
  const height = Math.max(3, bar.size[sideOf[view.up]] * TRUE * ratio)
  useEffect(() => {
    const on = canvas.current
    return on ? drawSoon(on, () => draw(on, bar, view, tones, night, { width, height })) : undefined
  }, [bar, view, tones, width, height, night])
  return (
    <canvas
      ref={canvas}
      role="img"
      aria-label={label}
      style={{ width: `${width}px`, height: `${height}px` }}
    />
  )
}

interface Box {
  readonly width: number
  readonly height: number
}

function draw(
  canvas: HTMLCanvasElement,
  bar: DrawnBar,
  view: View,
  tones: Tones,
  night: boolean,
  { width, height }: Box,
): void {
  const dense = Math.max(2, window.devicePixelRatio)
  const [columns, rows] = [Math.round(width * dense), Math.round(height * dense)]
  canvas.width = columns
  canvas.height = rows
  const ink = canvas.getContext('2d')
  if (!ink) return
  const patches = layOut(bar.build, view, tones)
  // Layers from side to side are one column of pixels, drawn out.
  const isFlat = patches.every((patch) => patch.x === 0 && patch.width === 1)
  const across = isFlat ? 1 : columns
  const covered = coverPixels(patches, across, rows)
  const colours = steelColours(night)
  const image = ink.createImageData(across, rows)
  const pixels = new Uint32Array(image.data.buffer)
  for (let i = 0; i < covered.length; i++)
    pixels[i] = colours.packed[Math.min(255, Math.round(covered[i] * 255))]
  ink.putImageData(image, 0, 0)
  ink.imageSmoothingEnabled = false
  if (isFlat) ink.drawImage(canvas, 0, 0, 1, rows, 0, 0, columns, rows)
  ink.scale(dense, dense)
  for (const patch of patches) {
    const thick = Math.min(patch.width * width, patch.height * height)
    if (thick < HATCHED) continue
    const hatch = patch.disturbed ? 'lines' : patch.steel ? tones(patch.steel).hatch : 'none'
    const contrast = colours.css(patch.bright > 0.5 ? 0.1 : 0.75)
    hatchPatch(ink, patch, { width, height }, hatch, contrast, !!patch.disturbed)
  }
  if (view.across === 'y') cutShape(ink, bar.shape, { width, height })
  ink.strokeStyle = colours.rule
  ink.lineWidth = 1
  outlineOf(ink, bar.shape, view, { width: width - 1, height: height - 1 })
  ink.stroke()
}

function hatchPatch(
  ink: CanvasRenderingContext2D,
  { x, y, width: w, height: h }: Patch,
  box: Box,
  hatch: Hatch,
  colour: string,
  disturbed: boolean,
): void {
  if (hatch === 'none') return
  const [left, top, wide, tall] = [x * box.width, y * box.height, w * box.width, h * box.height]
  ink.save()
  ink.beginPath()
  ink.rect(left, top, wide, tall)
  ink.clip()
  ink.strokeStyle = colour
  ink.fillStyle = colour
  ink.globalAlpha = 0.55
  ink.lineWidth = 0.6
  ink.beginPath()
  const step = disturbed ? 4 : 5
  if (hatch === 'dots') {
    for (let py = top + 2; py < top + tall; py += 4)
      for (let px = left + 2; px < left + wide; px += 4) ink.rect(px, py, 0.8, 0.8)
    ink.fill()
  } else if (hatch === 'dashes') {
    for (let py = top + 2; py < top + tall; py += 3)
      for (let px = left + ((py * 3) % 7); px < left + wide; px += 8) {
        ink.moveTo(px, py)
        ink.lineTo(px + 4, py)
      }
    ink.stroke()
  } else {
    const lean = hatch === 'strokes' ? -1 : 1
    for (let k = -tall; k < wide + tall; k += step) {
      ink.moveTo(left + k, lean > 0 ? top + tall : top)
      ink.lineTo(left + k + tall, lean > 0 ? top : top + tall)
    }
    ink.stroke()
  }
  ink.restore()
}

/** Takes away what lies outside a round or eight-sided section. */
function cutShape(ink: CanvasRenderingContext2D, shape: DrawnBar['shape'], box: Box): void {
  if (shape !== 'round' && shape !== 'octagon') return
  ink.save()
  ink.globalCompositeOperation = 'destination-in'
  outlineOf(ink, shape, undefined, box)
  ink.fill()
  ink.restore()
}

function outlineOf(
  ink: CanvasRenderingContext2D,
  shape: DrawnBar['shape'],
  view: View | undefined,
  { width, height }: Box,
): void {
  const at = view ? 0.5 : 0
  ink.beginPath()
  if ((view && view.across !== 'y') || (shape !== 'round' && shape !== 'octagon'))
    return ink.rect(at, at, width, height)
  const [rx, ry] = [width / 2, height / 2]
  if (shape === 'round') return ink.ellipse(rx + at, ry + at, rx, ry, 0, 0, 2 * Math.PI)
  for (let k = 0; k < 8; k++) {
    const turn = (Math.PI / 4) * k + Math.PI / 8
    const reach = 1 / Math.cos(Math.PI / 8)
    ink.lineTo(rx * (1 + reach * Math.cos(turn)) + at, ry * (1 + reach * Math.sin(turn)) + at)
  }
  ink.closePath()
}
