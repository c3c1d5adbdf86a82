import { type Axis, type Size, axisLength } from '#geometry'
import type { Billet, Layer, Turn } from '#billet'
import type { Imprint } from '#piece'
import { type Warp, affine, shift, sideBySide, turn } from '#warp'

/** How uneven forging leaves the bar: error of each face over the thickness, and the length of a wave, m. */
export interface Unevenness {
  readonly amplitude: number
  readonly wavelength: number
}

/** Where a point of the metal after the step lay before it. */
export interface Movement {
  /** Pull-back maps in the order they are applied to a point of the metal after the step. */
  readonly warps: readonly Warp[]
  /** What each branch of the last warp that branches leads to; left out, all leads to input 0. */
  readonly branches?: readonly Branch[]
  /** What a negative branch leads to (the core of a roll); left out, to no metal. */
  readonly below?: Branch
  /** Solid share of the box that this step closes up (powder, gaps); left out, 1: metal is only moved. */
  readonly fill?: number
  /**
   * How far outside the bar before a point of the box after may come from, m: the account's box is
   * square where the real bar bulges, is dragged or keeps its corners round. The outside layer goes on there.
   */
  readonly beyond?: number
  /** Volume is kept on the whole and not at each place: what a die pushes aside flows further than is drawn. */
  readonly onTheWhole?: true
  /** What the piece's front face has been pressed in by: it is drawn with it from here on. */
  readonly imprint?: Imprint
  /** What hammer and hand leave, on top of the even movement. */
  readonly uneven?: Unevenness
}

/** One of the bars that went in, sheets off the rack (from the bottom up, centred), or a movement of its own. */
export type Branch = { readonly input: number } | { readonly layers: readonly Layer[] } | Movement

/** The metal stays where it is. */
export const stays: Movement = { warps: [] }

export function input(index: number): Branch {
  return { input: index }
}

/** One bar moved; maps in pull-back order, what does nothing left out. */
export function moving(
  warps: readonly (Warp | undefined)[],
  more: Omit<Movement, 'warps'> = {},
): Movement {
  return { warps: warps.filter((warp) => warp !== undefined), ...more }
}

/** A branch with maps of its own before what it leads to. */
export function through(warps: readonly (Warp | undefined)[], to: Branch): Branch {
  const own = warps.filter((warp) => warp !== undefined)
  if (own.length === 0) return to
  if ('warps' in to) return { ...to, warps: [...own, ...to.warps] }
  return { warps: own, branches: [to] }
}

/** The start of the bar moved by so much, m; nothing where it did not. */
export function along(x: number): Warp | undefined {
  return x === 0 ? undefined : shift({ x })
}

/** Metal off the faces: the frame moves to the middle of what is left. */
export function peeled(
  off: Partial<Record<Axis, { readonly low: number; readonly high: number }>>,
): Warp | undefined {
  const x = off.x?.low ?? 0
  const [y, z] = (['y', 'z'] as const).map((a) => ((off[a]?.low ?? 0) - (off[a]?.high ?? 0)) / 2)
  return x === 0 && y === 0 && z === 0 ? undefined : shift({ x, y, z })
}

/** A skin off all of the bar, as much at one end as at the other. */
export function skinned(before: Billet, after: Billet): Movement {
  return moving([along((before.size.length - after.size.length) / 2)])
}

/** The bar laid on another side: `size` is its size before. */
export function turned(by: Turn, size: Size): Warp {
  const axes = ['x', 'y', 'z'] as const
  const now = (was: Axis) => axes.find((axis) => by[axis].was === was) as Axis
  const rows: [number, number, number][] = []
  const offset: [number, number, number] = [0, 0, 0]
  axes.forEach((was, row) => {
    const axis = now(was)
    const sign = by[axis].reversed ? -1 : 1
    rows.push([0, 1, 2].map((k) => (axes[k] === axis ? sign : 0)) as [number, number, number])
    // x is counted from the start, the others from the middle.
    if (was === 'x') offset[row] += size.length / 2
    if (axis === 'x') offset[row] -= (sign * size[axisLength[was]]) / 2
  })
  return affine({ rows: rows as [(typeof rows)[0], (typeof rows)[0], (typeof rows)[0]], offset })
}

/** One of several pieces laid along an axis. */
export interface Seat {
  /** Its side on that axis before its faces are ground, m. */
  readonly side: number
  /** Ground off its two faces there, m. */
  readonly low?: number
  readonly high?: number
  /** What it is, in its own frame. */
  readonly from: Branch
}

/** Pieces laid one after another along an axis, low to high. */
export function laid(axis: Axis, seats: readonly Seat[]): Movement {
  const given = {
    widths: seats.map((seat) => seat.side),
    grind: seats.map(({ low = 0, high = 0 }) => ({ low, high })),
  }
  const row = sideBySide(given)
  if (axis === 'y') return { warps: [row], branches: seats.map((seat) => seat.from) }
  if (axis === 'z')
    return {
      warps: [turn('quarter-back'), row],
      branches: seats.map((seat) => through([turn('quarter')], seat.from)),
    }
  const whole = seats.reduce((sum, { side, low = 0, high = 0 }) => sum + side - low - high, 0)
  // y of the row runs along the bar; back in each piece x is counted from its start again.
  const lay = affine({
    rows: [
      [0, -1, 0],
      [1, 0, 0],
      [0, 0, 1],
    ],
    offset: [0, -whole / 2, 0],
  })
  const back = (side: number) =>
    affine({
      rows: [
        [0, 1, 0],
        [-1, 0, 0],
        [0, 0, 1],
      ],
      offset: [side / 2, 0, 0],
    })
  return {
    warps: [lay, row],
    branches: seats.map((seat) => through([back(seat.side)], seat.from)),
  }
}

/** The faces that meet ground alike; bright pieces as they are. */
export function meeting(
  pieces: readonly { readonly side: number; readonly from: Branch; readonly bright?: boolean }[],
  cleanUp: number,
): Seat[] {
  const last = pieces.length - 1
  return pieces.map(({ side, from, bright }, i) => ({
    side,
    from,
    low: i > 0 && !bright ? cleanUp : 0,
    high: i < last && !bright ? cleanUp : 0,
  }))
}
