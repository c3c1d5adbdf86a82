import { type Billet } from '#billet'
import { type Bar, drawOut } from '#forming'
import type { Smithy, Step } from './operation.ts'
import { type Passes, barOf, judgeSqueezing } from './judge.ts'
import type { Judged } from './working.ts'

export interface Drawn {
  /** Nothing holds the sides: the width is what spread makes it. */
  readonly free?: boolean
  /** Index of the step's heat in which it is worked; the first if left out. */
  readonly heat?: number
  /** What it is brought to stands for a shape forged freely. */
  readonly shaped?: boolean
  /** Section it is brought to, m; the step's own if left out. */
  readonly to?: { readonly height: number; readonly width: number }
}

/** The account of a bar forged from one section to another. */
export function judgeDrawn(
  before: Billet,
  step: Step,
  smithy: Smithy,
  { free = false, heat = 0, shaped = false, to = barOf(step.after) }: Drawn = {},
): Judged | undefined {
  const measured = smithy.shop.spread
  const start = barOf(before, step.after.volume)
  const tools = (bite: number) => ({ bite, ...(measured !== undefined && { measured }) })
  const drawing = (bite: number) => drawOut(start, free ? { height: to.height } : to, tools(bite))
  const spread = (): readonly [number, number] => {
    const { bar, length } = drawing(Math.min(smithy.shop.dieWidth, before.size.length))
    return [bar.length / length[1], bar.length / length[0]]
  }
  return judgeSqueezing(
    {
      before,
      step,
      heat: step.heats[heat],
      passes: (bite) => drawing(bite).passes,
      shaped,
      ...(free && { width: spread() }),
    },
    smithy,
  )
}

/** A squeeze whose volume and mean height are those of a section stood on its corner. */
function cornered(area: number, tall: number, volume: number): Bar {
  return { height: tall, width: area / tall, length: volume / area }
}

/**
 * Corners forged down: each diagonal in turn brought from its height to the flats, as if the whole
 * section were pressed, which is the most it can take. A square has two diagonals; eight corners four.
 */
export function corners(
  before: Billet,
  step: Step,
  diagonals: readonly { readonly from: number; readonly to: number; readonly count: number }[],
): Passes {
  const { volume, size } = step.after
  const had = before.volume / before.size.length
  const has = volume / size.length
  const total = diagonals.reduce((n, { count }) => n + count, 0)
  let done = 0
  return diagonals.flatMap(({ from, to, count }) =>
    Array.from({ length: count }, () => {
      const area = (share: number) => had * (has / had) ** share
      const squeeze = {
        before: cornered(area(done / total), from, volume),
        after: cornered(area((done + 1) / total), Math.min(from, to), volume),
      }
      done++
      return squeeze
    }),
  )
}

/** A bar driven shorter on its end: squeezes of a quarter at most, the whole face under the hammer. */
export function upsets(
  over: number,
  by: number,
  section: { readonly width: number; readonly height: number },
): Passes {
  const ratio = over / (over - by)
  const n = Math.max(1, Math.ceil(Math.log(ratio) / Math.log(1.25) - 1e-9))
  const at = (i: number): Bar => {
    const grown = ratio ** (i / (2 * n))
    return {
      height: over / ratio ** (i / n),
      width: section.width * grown,
      length: section.height * grown,
    }
  }
  return Array.from({ length: n }, (_, i) => ({ before: at(i), after: at(i + 1) }))
}

const SLICES = 5

/** A taper as short bars of its own sections, each drawn from the full section to the one in its middle. */
export function tapered(
  full: Bar,
  thin: { readonly width: number; readonly height: number },
  over: number,
  bite: number,
  measured?: number,
): Passes {
  return Array.from({ length: SLICES }, (_, i) => (i + 0.5) / SLICES).flatMap((t) => {
    const to = {
      height: full.height + (thin.height - full.height) * t,
      width: full.width + (thin.width - full.width) * t,
    }
    const stock = ((over / SLICES) * to.height * to.width) / (full.height * full.width)
    return drawOut({ ...full, length: stock }, to, {
      bite,
      ...(measured !== undefined && { measured }),
    }).passes
  })
}
