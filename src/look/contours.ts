import type { PatternMap } from '#pattern'
import { scaleBarLength } from './scale-bar.ts'

/** A closed line, mm from the picture's upper left corner: x, y in turn. */
export type Contour = readonly number[]

/** Outlines of the bright steel by marching squares: closed, bright on the left seen with y downward. */
export function traceContours(map: PatternMap, level = 0.5): Contour[] {
  const { width, height, alpha, means } = map
  const bright = means[0]!
  const scale = map.view.pixel * 1e3
  // A rim of nothing round the picture closes every line.
  const value = (i: number, j: number) =>
    i < 0 || j < 0 || i >= width || j >= height
      ? -level
      : (bright[j * width + i]! / 65535) * (alpha[j * width + i]! / 255) - level
  const next = new Map<number, number>()
  const points = new Map<number, readonly [number, number]>()
  // Cell (i, j) has corners at pixel centres i, i+1 and j, j+1; its sides are numbered across the whole grid.
  const across = (i: number, j: number) => 2 * ((j + 1) * (width + 2) + i + 1)
  const down = (i: number, j: number) => across(i, j) + 1
  const cut = (id: number, i: number, j: number, di: number, dj: number) => {
    if (!points.has(id)) {
      const [a, b] = [value(i, j), value(i + di, j + dj)]
      const s = a / (a - b)
      points.set(id, [(i + 0.5 + di * s) * scale, (j + 0.5 + dj * s) * scale])
    }
    return id
  }
  for (let j = -1; j < height; j++)
    for (let i = -1; i < width; i++) {
      const [a, b, c, d] = [value(i, j), value(i + 1, j), value(i + 1, j + 1), value(i, j + 1)]
      const code = (a > 0 ? 1 : 0) | (b > 0 ? 2 : 0) | (c > 0 ? 4 : 0) | (d > 0 ? 8 : 0)
      if (code === 0 || code === 15) continue
      const sides = {
        top: () => cut(across(i, j), i, j, 1, 0),
        bottom: () => cut(across(i, j + 1), i, j + 1, 1, 0),
        left: () => cut(down(i, j), i, j, 0, 1),
        right: () => cut(down(i + 1, j), i + 1, j, 0, 1),
      }
      for (const [from, to] of segments(code, a + b + c + d > 0))
        next.set(sides[from](), sides[to]())
    }
  const loops: Contour[] = []
  for (const start of next.keys()) {
    const loop: number[] = []
    for (let id: number | undefined = start; id !== undefined && next.has(id);) {
      loop.push(...points.get(id)!)
      const to: number = next.get(id)!
      next.delete(id)
      id = to === start ? undefined : to
    }
    if (loop.length >= 6) loops.push(straighten(loop, scale * 0.08))
  }
  return loops
}

type Side = 'top' | 'bottom' | 'left' | 'right'

/** From which side to which, bright kept on one hand. Saddles by the mean of the four corners. */
function segments(code: number, full: boolean): readonly (readonly [Side, Side])[] {
  switch (code) {
    case 1:
      return [['left', 'top']]
    case 2:
      return [['top', 'right']]
    case 3:
      return [['left', 'right']]
    case 4:
      return [['right', 'bottom']]
    case 5:
      return full
        ? [
            ['left', 'bottom'],
            ['right', 'top'],
          ]
        : [
            ['left', 'top'],
            ['right', 'bottom'],
          ]
    case 6:
      return [['top', 'bottom']]
    case 7:
      return [['left', 'bottom']]
    case 8:
      return [['bottom', 'left']]
    case 9:
      return [['bottom', 'top']]
    case 10:
      return full
        ? [
            ['top', 'left'],
            ['bottom', 'right'],
          ]
        : [
            ['top', 'right'],
            ['bottom', 'left'],
          ]
    case 11:
      return [['bottom', 'right']]
    case 12:
      return [['right', 'left']]
    case 13:
      return [['right', 'top']]
    default:
      return [['top', 'left']]
  }
}

/** Without points that lie within `off` of the line between those kept (Ramer's and Douglas and Peucker's scheme). */
function straighten(loop: readonly number[], off: number): number[] {
  const n = loop.length / 2
  const keep = new Uint8Array(n)
  keep[0] = keep[n - 1] = 1
  const waiting: [number, number][] = [[0, n - 1]]
  for (let span = waiting.pop(); span; span = waiting.pop()) {
    const [a, b] = span
    const [ax, ay] = [loop[2 * a]!, loop[2 * a + 1]!]
    const [dx, dy] = [loop[2 * b]! - ax, loop[2 * b + 1]! - ay]
    const size = Math.hypot(dx, dy)
    let [far, at] = [off, -1]
    for (let i = a + 1; i < b; i++) {
      const [px, py] = [loop[2 * i]! - ax, loop[2 * i + 1]! - ay]
      const away = size > 1e-9 ? Math.abs(px * dy - py * dx) / size : Math.hypot(px, py)
      if (away > far) [far, at] = [away, i]
    }
    if (at < 0) continue
    keep[at] = 1
    waiting.push([a, at], [at, b])
  }
  return loop.filter((_, k) => keep[k >> 1] === 1)
}

/** The contours as SVG at true size: bright steel white, dark steel filled or left as lines; a scale bar below. */
export function drawContours(map: PatternMap, options: { readonly fill?: boolean } = {}): string {
  const { fill = false } = options
  const scale = map.view.pixel * 1e3
  const [w, h] = [map.width * scale, map.height * scale]
  const line = Math.max(0.05, Math.min(0.2, w / 2000))
  const path = (loops: readonly Contour[]) =>
    loops
      .map((loop) => {
        const pairs = []
        for (let i = 0; i < loop.length; i += 2)
          pairs.push(`${short(loop[i]!)} ${short(loop[i + 1]!)}`)
        return `M${pairs.join('L')}Z`
      })
      .join('')
  const metal = traceContours({ ...map, means: [new Uint16Array(map.alpha.length).fill(65535)] })
  const bar = scaleBarLength(map.width, 1 / map.view.pixel) * 1e3
  const foot = h + 6
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${short(w)}mm" height="${short(h + 10)}mm" viewBox="0 0 ${short(w)} ${short(h + 10)}">`,
    `<title>${map.view.title}</title>`,
    `<path d="${path(metal)}" fill="${fill ? '#555' : 'none'}" stroke="#171716" stroke-width="${line}" fill-rule="evenodd"/>`,
    `<path d="${path(traceContours(map))}" fill="${fill ? '#fff' : 'none'}" stroke="#171716" stroke-width="${line}" fill-rule="evenodd"/>`,
    `<path d="M1 ${short(foot)}h${short(bar)}m0 -1v2m-${short(bar)} 0v-2" fill="none" stroke="#171716" stroke-width="0.2"/>`,
    `<text x="${short(bar + 2.5)}" y="${short(foot + 1)}" font-size="3" font-family="sans-serif">${short(bar)} mm</text>`,
    '</svg>',
  ].join('\n')
}

function short(value: number): string {
  return String(Math.round(value * 1000) / 1000)
}
