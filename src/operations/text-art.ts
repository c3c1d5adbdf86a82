import { axisLength } from '#geometry'
import { type Billet, type Build, countLayers, flatAxis, steelsIn, thicknessOf } from '#billet'

/** Columns and rows of a drawing. */
export const DRAWING = { columns: 64, rows: 16 } as const

/** Letters of the steels in order of first meeting: flat, then where layers no longer lie flat. */
const FLAT = '#.o+=x-*'
const DISTURBED = '%:0&~X_^'

type View = 'section' | 'side'

/**
 * A bar drawn in characters from its account: the section, or the side along the bar where its
 * layers or parts follow one another lengthwise. Bare metal of a round or octagon section is left
 * blank round about. Each character is the steel at its middle: fine layers show as their grain.
 */
export function drawBar(bar: Billet): string {
  const view: View = runsAlong(bar.build) ? 'side' : 'section'
  const steels = steelsIn(bar.build)
  const rows: string[] = []
  for (let row = DRAWING.rows - 1; row >= 0; row--) {
    const v = (row + 0.5) / DRAWING.rows
    let line = ''
    for (let column = 0; column < DRAWING.columns; column++) {
      const u = (column + 0.5) / DRAWING.columns
      const at = view === 'section' ? { x: 0.5, y: u, z: v } : { x: u, y: 0.5, z: v }
      line += view === 'section' && outside(bar, u, v) ? ' ' : letterAt(bar.build, at, steels)
    }
    rows.push(line.trimEnd())
  }
  return [titleOf(bar, view), legendOf(steels), ...rows].join('\n')
}

function titleOf(bar: Billet, view: View): string {
  const mm = (m: number) => (m * 1000).toFixed(2)
  const { length, width, height } = bar.size
  const axis = flatAxis(bar.build) ?? 'z'
  const { laid, merged } = countLayers(bar.build, axis)
  return [
    `${mm(length)} × ${mm(width)} × ${mm(height)} mm`,
    `${(bar.volume * 1e6).toFixed(3)} cm³ ${bar.shape}`,
    `${merged} layers of ${laid} laid along its ${axisLength[axis]}`,
    bar.bond,
    `worked ${bar.worked.toFixed(2)}`,
    `spare ${axisLength[bar.spare]}`,
    view,
  ].join(', ')
}

function legendOf(steels: readonly string[]): string {
  return steels.map((steel, i) => `${FLAT[i % 8]} ${DISTURBED[i % 8]} ${steel}`).join('   ')
}

function runsAlong(build: Build): boolean {
  if (build.form === 'worked') return runsAlong(build.of)
  return build.axis === 'x' && (build.form === 'joined' || build.layers.length > 1)
}

/** Beyond a round or octagon section. */
function outside(bar: Billet, u: number, v: number): boolean {
  const [a, b] = [Math.abs(2 * u - 1), Math.abs(2 * v - 1)]
  if (bar.shape === 'round') return a * a + b * b > 1
  return bar.shape === 'octagon' && a + b > Math.SQRT2
}

type Place = Readonly<Record<'x' | 'y' | 'z', number>>

/** The letter at a place in a bar, each side 0 to 1. */
function letterAt(build: Build, at: Place, steels: readonly string[], letters = FLAT): string {
  if (build.form === 'worked') return letterAt(build.of, at, steels, DISTURBED)
  if (build.form === 'layered') {
    let left = at[build.axis] * thicknessOf(build)
    const layer = build.layers.find((one) => (left -= one.thickness) < 0) ?? build.layers.at(-1)
    return letters[steels.indexOf(layer?.steel ?? '') % 8]
  }
  if (build.axis === 'section') return letterWrapped(build.parts, at, steels, letters)
  let left = at[build.axis]
  for (const part of build.parts) {
    if (left >= part.share) {
      left -= part.share
      continue
    }
    const within = (left / part.share) * part.times
    return letterAt(part.build, { ...at, [build.axis]: within % 1 }, steels, letters)
  }
  return letterAt(build.parts[build.parts.length - 1].build, at, steels, letters)
}

/** Parts that tile or wrap the section are drawn one round another, the first in the middle. */
function letterWrapped(
  parts: readonly { readonly build: Build; readonly share: number }[],
  at: Place,
  steels: readonly string[],
  letters: string,
): string {
  const out = Math.max(Math.abs(2 * at.y - 1), Math.abs(2 * at.z - 1)) ** 2
  let filled = 0
  const part = parts.find((one) => out < (filled += one.share)) ?? parts[parts.length - 1]
  return letterAt(part.build, at, steels, letters)
}
