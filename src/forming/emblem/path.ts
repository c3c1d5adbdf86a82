import { type Result, failed, ok } from '#problem'

export type Point = readonly [number, number]

/** A closed line of an outline; `joints` says which points are corners of the drawing, not of the flattening. */
export interface Ring {
  readonly points: readonly Point[]
  readonly joints: readonly boolean[]
}

const argumentCount: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
}

interface Command {
  readonly letter: string
  readonly numbers: readonly number[]
}

const numberAt = /[\s,]*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)/y
const flagAt = /[\s,]*([01])/y

/** Splits path data into commands; arc flags may stand without a space. */
function readCommands(d: string): Command[] | string {
  const commands: Command[] = []
  let at = 0
  const skip = () => {
    while (at < d.length && /[\s,]/.test(d[at]!)) at++
  }
  skip()
  while (at < d.length) {
    const letter = d[at]!
    const count = argumentCount[letter.toUpperCase()]
    if (count === undefined) return `“${letter}” at character ${at + 1} is no path command`
    at++
    let first = true
    for (;;) {
      const numbers: number[] = []
      for (let i = 0; i < count; i++) {
        const isFlag = count === 7 && (i === 3 || i === 4)
        const pattern = isFlag ? flagAt : numberAt
        pattern.lastIndex = at
        const found = pattern.exec(d)
        if (!found) {
          if (i === 0 && !first) break
          return `“${letter}” wants ${count} numbers; number ${i + 1} is missing at character ${at + 1}`
        }
        numbers.push(Number(found[1]))
        at = pattern.lastIndex
      }
      if (numbers.length < count) break
      const name = !first && letter === 'M' ? 'L' : !first && letter === 'm' ? 'l' : letter
      commands.push({ letter: name, numbers })
      first = false
      if (count === 0) break
    }
    skip()
  }
  return commands
}

/** Points of a cubic from 0 (left out) to 1, close enough that no chord strays more than the tolerance. */
function flattenCubic(p: readonly [Point, Point, Point, Point], tolerance: number): Point[] {
  const bend = Math.max(
    Math.hypot(p[0][0] - 2 * p[1][0] + p[2][0], p[0][1] - 2 * p[1][1] + p[2][1]),
    Math.hypot(p[1][0] - 2 * p[2][0] + p[3][0], p[1][1] - 2 * p[2][1] + p[3][1]),
  )
  const parts = Math.min(500, Math.max(1, Math.ceil(Math.sqrt((0.75 * bend) / tolerance))))
  return Array.from({ length: parts }, (_, i) => {
    const t = (i + 1) / parts
    const s = 1 - t
    const at = (k: 0 | 1) =>
      s * s * s * p[0][k] + 3 * s * s * t * p[1][k] + 3 * s * t * t * p[2][k] + t * t * t * p[3][k]
    return [at(0), at(1)] as const
  })
}

/** An elliptical arc as SVG 1.1 appendix F.6 turns ends into centre and angles. */
function flattenArc(
  from: Point,
  numbers: readonly number[],
  to: Point,
  tolerance: number,
): Point[] {
  let [rx, ry] = [Math.abs(numbers[0]!), Math.abs(numbers[1]!)]
  const [tilt, large, sweep] = [(numbers[2]! * Math.PI) / 180, numbers[3]! !== 0, numbers[4]! !== 0]
  if (rx === 0 || ry === 0) return [to]
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)]
  const [dx, dy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2]
  const [x, y] = [c * dx + s * dy, -s * dx + c * dy]
  const stretch = (x / rx) ** 2 + (y / ry) ** 2
  if (stretch === 0) return []
  if (stretch > 1) [rx, ry] = [rx * Math.sqrt(stretch), ry * Math.sqrt(stretch)]
  const root = (rx * ry) ** 2 - (rx * y) ** 2 - (ry * x) ** 2
  const k =
    (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, root) / ((rx * y) ** 2 + (ry * x) ** 2))
  const [ex, ey] = [(k * rx * y) / ry, (-k * ry * x) / rx]
  const [cx, cy] = [
    c * ex - s * ey + (from[0] + to[0]) / 2,
    s * ex + c * ey + (from[1] + to[1]) / 2,
  ]
  const start = Math.atan2((y - ey) / ry, (x - ex) / rx)
  let turn = Math.atan2((-y - ey) / ry, (-x - ex) / rx) - start
  if (sweep && turn < 0) turn += 2 * Math.PI
  if (!sweep && turn > 0) turn -= 2 * Math.PI
  const step = 2 * Math.acos(Math.max(0.5, 1 - tolerance / Math.max(rx, ry)))
  const parts = Math.min(2000, Math.max(1, Math.ceil(Math.abs(turn) / step)))
  return Array.from({ length: parts }, (_, i) => {
    if (i === parts - 1) return to
    const a = start + (turn * (i + 1)) / parts
    const [u, v] = [rx * Math.cos(a), ry * Math.sin(a)]
    return [c * u - s * v + cx, s * u + c * v + cy] as const
  })
}

function bad(what: string) {
  return failed({
    at: 'path',
    what: 'The emblem’s outline does not read as SVG path data.',
    why: what,
    try: [
      'Copy the text of the d="…" of one <path>.',
      'Give area, perimeter and stroke width instead.',
    ],
  })
}

/** A rough size of the drawing, to set the tolerance by: the spread of all numbers in it. */
function sizeOf(commands: readonly Command[]): number {
  const all = commands
    .filter((c) => c.letter.toUpperCase() !== 'A')
    .flatMap((c) => c.numbers.map(Math.abs))
  const arcs = commands
    .filter((c) => c.letter.toUpperCase() === 'A')
    .flatMap((c) => [Math.abs(c.numbers[0]!), Math.abs(c.numbers[1]!)])
  return Math.max(1e-9, ...all, ...arcs)
}

/**
 * Reads SVG path data (M L H V C S Q T A Z, absolute and relative) into closed rings, curves
 * flattened to `fineness` of the drawing's size. Open lines are closed, as filling does. Drawing
 * units; y as drawn.
 */
export function readOutline(d: string, fineness = 5e-5): Result<Ring[]> {
  const commands = readCommands(d)
  if (typeof commands === 'string') return bad(commands)
  if (commands.length === 0) return bad('there is nothing in it')
  if (commands[0]!.letter.toUpperCase() !== 'M') return bad('it does not begin with M')
  const tolerance = fineness * sizeOf(commands)
  const rings: { points: Point[]; joints: boolean[] }[] = []
  let ring: { points: Point[]; joints: boolean[] } = { points: [], joints: [] }
  let [at, start, handle, kind]: [Point, Point, Point, string] = [[0, 0], [0, 0], [0, 0], '']
  const close = () => {
    if (ring.points.length > 0) rings.push(ring)
    ring = { points: [], joints: [] }
  }
  const add = (points: readonly Point[]) => {
    if (ring.points.length === 0) {
      ring.points.push(at)
      ring.joints.push(true)
    }
    points.forEach((p, i) => {
      ring.points.push(p)
      ring.joints.push(i === points.length - 1)
    })
    at = points.at(-1) ?? at
  }
  for (const { letter, numbers: n } of commands) {
    const name = letter.toUpperCase()
    const [ox, oy] = letter === name ? [0, 0] : at
    const point = (i: number): Point => [n[i]! + ox, n[i + 1]! + oy]
    const mirrored = (of: string): Point =>
      of.includes(kind) && kind !== '' ? [2 * at[0] - handle[0], 2 * at[1] - handle[1]] : at
    if (name === 'M') {
      close()
      at = point(0)
      start = at
    } else if (name === 'Z') {
      close()
      at = start
    } else if (name === 'L') add([point(0)])
    else if (name === 'H') add([[n[0]! + ox, at[1]]])
    else if (name === 'V') add([[at[0], n[0]! + oy]])
    else if (name === 'A') add(flattenArc(at, n, point(5), tolerance))
    else if (name === 'C' || name === 'S') {
      const first = name === 'C' ? point(0) : mirrored('CS')
      const [second, end] = name === 'C' ? [point(2), point(4)] : [point(0), point(2)]
      handle = second
      add(flattenCubic([at, first, second, end], tolerance))
    } else {
      const control = name === 'Q' ? point(0) : mirrored('QT')
      const end = name === 'Q' ? point(2) : point(0)
      handle = control
      const third = (p: Point): Point => [
        p[0] + (2 / 3) * (control[0] - p[0]),
        p[1] + (2 / 3) * (control[1] - p[1]),
      ]
      add(flattenCubic([at, third(at), third(end), end], tolerance))
    }
    kind = name
  }
  close()
  return ok(rings.map(tidy).filter((r) => r.points.length >= 3))
}

/** Drops points that repeat the one before, and a last point that repeats the first. */
function tidy({ points, joints }: Ring): Ring {
  const same = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-12
  const keep = points.map((p, i) => i === 0 || !same(p, points[i - 1]!))
  const kept = points.flatMap((p, i) => (keep[i] ? [{ p, joint: joints[i]! }] : []))
  if (kept.length > 1 && same(kept[0]!.p, kept.at(-1)!.p)) kept.pop()
  return { points: kept.map((k) => k.p), joints: kept.map((k) => k.joint) }
}
