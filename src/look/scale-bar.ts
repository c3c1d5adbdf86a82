import { GROUNDS, type Image, samples } from './image.ts'

type Stroke = readonly (readonly [number, number])[]

/** Our own plain digits as strokes, 1 high, widths beside them; y upward. */
const GLYPHS: Readonly<Record<string, { width: number; strokes: readonly Stroke[] }>> = {
  '0': { width: 0.6, strokes: [arc(0.3, 0.5, 0.3, 0.5, 0, 1)] },
  '1': {
    width: 0.4,
    strokes: [
      [
        [0, 0.78],
        [0.25, 1],
        [0.25, 0],
      ],
    ],
  },
  '2': { width: 0.6, strokes: [[...arc(0.3, 0.7, 0.28, 0.3, 0.45, -0.12), [0, 0], [0.6, 0]]] },
  '3': {
    width: 0.58,
    strokes: [
      [...arc(0.28, 0.75, 0.27, 0.25, 0.42, -0.25), ...arc(0.28, 0.25, 0.3, 0.25, 0.25, -0.42)],
    ],
  },
  '4': {
    width: 0.62,
    strokes: [
      [
        [0.46, 0],
        [0.46, 1],
        [0, 0.3],
        [0.62, 0.3],
      ],
    ],
  },
  '5': {
    width: 0.58,
    strokes: [[[0.54, 1], [0.08, 1], [0.05, 0.55], ...arc(0.27, 0.31, 0.3, 0.31, 0.33, -0.4)]],
  },
  '6': { width: 0.6, strokes: [[[0.5, 1], [0.12, 0.55], ...arc(0.3, 0.3, 0.3, 0.3, 0.45, 1.45)]] },
  '7': {
    width: 0.58,
    strokes: [
      [
        [0, 1],
        [0.58, 1],
        [0.2, 0],
      ],
    ],
  },
  '8': {
    width: 0.6,
    strokes: [arc(0.3, 0.76, 0.25, 0.24, 0, 1), arc(0.3, 0.26, 0.3, 0.26, 0, 1)],
  },
  '9': { width: 0.6, strokes: [[[0.1, 0], [0.48, 0.45], ...arc(0.3, 0.7, 0.3, 0.3, -0.05, 0.95)]] },
  '.': {
    width: 0.16,
    strokes: [
      [
        [0.08, 0],
        [0.08, 0.04],
      ],
    ],
  },
  '/': {
    width: 0.4,
    strokes: [
      [
        [0, -0.1],
        [0.4, 1.1],
      ],
    ],
  },
  ' ': { width: 0.28, strokes: [] },
  m: {
    width: 0.84,
    strokes: [
      [
        [0, 0.62],
        [0, 0],
      ],
      [[0, 0.42], ...arc(0.2, 0.42, 0.2, 0.2, 0.5, 0), [0.4, 0]],
      [[0.4, 0.42], ...arc(0.6, 0.42, 0.2, 0.2, 0.5, 0), [0.8, 0]],
    ],
  },
  i: {
    width: 0.1,
    strokes: [
      [
        [0.05, 0],
        [0.05, 0.62],
      ],
      [
        [0.05, 0.86],
        [0.05, 0.9],
      ],
    ],
  },
  n: {
    width: 0.44,
    strokes: [
      [
        [0, 0.62],
        [0, 0],
      ],
      [[0, 0.42], ...arc(0.2, 0.42, 0.2, 0.2, 0.5, 0), [0.4, 0]],
    ],
  },
  µ: {
    width: 0.5,
    strokes: [
      [
        [0, 0.62],
        [0, -0.25],
      ],
      [[0, 0.2], ...arc(0.2, 0.2, 0.2, 0.2, -0.5, 0), [0.4, 0.62]],
      [
        [0.4, 0.62],
        [0.4, 0],
      ],
    ],
  },
}

/** Part of an ellipse, its ends in turns from the right, anticlockwise positive. */
function arc(x: number, y: number, rx: number, ry: number, from: number, to: number): Stroke {
  const n = Math.max(6, Math.ceil(28 * Math.abs(to - from)))
  return Array.from({ length: n + 1 }, (_, i) => {
    const turn = 2 * Math.PI * (from + ((to - from) * i) / n)
    return [x + rx * Math.cos(turn), y + ry * Math.sin(turn)] as const
  })
}

/** Round lengths for a bar, m. */
const LENGTHS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1e3, 2e3, 5e3, 1e4, 2e4, 5e4, 1e5, 2e5].map(
  (um) => um * 1e-6,
)

/** The length a scale bar shows: the longest round one that takes no more than a third of the width. */
export function scaleBarLength(width: number, perMetre: number): number {
  return LENGTHS.findLast((l) => l * perMetre <= width / 3) ?? LENGTHS[0]!
}

/** The picture with a strip below it, in which a bar of a round length stands with its length in figures. */
export function drawScaleBar(image: Image, ground: keyof typeof GROUNDS): Image {
  const { width, height, channels, perMetre } = image
  const size = Math.round(Math.min(40, Math.max(14, width / 45)))
  const strip = Math.round(size * 2.4)
  const bits = image.data instanceof Uint16Array ? 16 : 8
  const { data, most } = samples(width * (height + strip) * channels, bits)
  data.set(image.data)
  const colours = GROUNDS[ground]
  const paint = (at: number, share: number) => {
    for (let k = 0; k < channels; k++) {
      const ink = k === 3 ? 1 : colours.ink[k]!
      const back = k === 3 ? 1 : colours.ground[k]!
      data[at * channels + k] = Math.round((back + share * (ink - back)) * most)
    }
  }
  const length = scaleBarLength(width, perMetre)
  const across = length * perMetre
  const left = size
  const line = Math.max(1, size / 10)
  const middle = strip / 2
  const text = length < 1e-3 ? `${Math.round(length * 1e6)} µm` : `${Math.round(length * 1e3)} mm`
  const strokes: Stroke[] = [
    [
      [left, middle],
      [left + across, middle],
    ],
    [
      [left, middle - size / 3],
      [left, middle + size / 3],
    ],
    [
      [left + across, middle - size / 3],
      [left + across, middle + size / 3],
    ],
    ...writeText(text, left + across + size * 0.7, middle + size * 0.36, size * 0.72),
  ]
  for (let i = 0; i < width * strip; i++) paint(width * height + i, 0)
  const ink = new Float32Array(width * strip)
  for (const stroke of strokes) drawStroke(ink, width, strip, stroke, line)
  ink.forEach((share, i) => share > 0 && paint(width * height + i, share))
  return { ...image, height: height + strip, data }
}

/** Strokes of a line of text, its foot at (x, y), y downward. */
export function writeText(text: string, x: number, y: number, size: number): Stroke[] {
  let at = x
  return [...text].flatMap((letter) => {
    const glyph = GLYPHS[letter] ?? GLYPHS[' ']!
    const start = at
    at += (glyph.width + 0.22) * size
    return glyph.strokes.map((s) => s.map(([u, v]) => [start + u * size, y - v * size] as const))
  })
}

/** Lays a round-ended line on a sheet of ink, its rim one pixel soft. */
function drawStroke(
  ink: Float32Array,
  width: number,
  height: number,
  stroke: Stroke,
  line: number,
): void {
  for (let k = 1; k < stroke.length; k++) {
    const [[ax, ay], [bx, by]] = [stroke[k - 1]!, stroke[k]!]
    const reach = line / 2 + 1
    const [dx, dy] = [bx - ax, by - ay]
    const square = dx * dx + dy * dy || 1
    for (
      let y = Math.max(0, Math.floor(Math.min(ay, by) - reach));
      y < Math.min(height, Math.ceil(Math.max(ay, by) + reach));
      y++
    )
      for (
        let x = Math.max(0, Math.floor(Math.min(ax, bx) - reach));
        x < Math.min(width, Math.ceil(Math.max(ax, bx) + reach));
        x++
      ) {
        const [px, py] = [x + 0.5 - ax, y + 0.5 - ay]
        const s = Math.min(1, Math.max(0, (px * dx + py * dy) / square))
        const share = line / 2 + 0.5 - Math.hypot(px - s * dx, py - s * dy)
        const at = y * width + x
        ink[at] = Math.max(ink[at]!, Math.min(1, Math.max(0, share)))
      }
  }
}
