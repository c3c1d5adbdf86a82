import { type Billet, UNWEIGHED, flatAxis } from '#billet'
import { barrel as bulgeOf } from '#forming'
import { type Warp, barrel, draw } from '#warp'
import {
  levelled,
  type Movement,
  along,
  moving,
  acrossOf,
  sectionMap,
  unevennessOf,
} from '#movement'
import { type ForgingAim, closingOf, heatsOfForging } from './forge-in-heats.ts'
import type { Smithy } from './operation.ts'

/** Maps of one bar gathered from the last heat back to the first; even ones are drawn together. */
class Gathered {
  readonly warps: Warp[] = []
  fill = 1
  beyond = 0
  private factors = { length: 1, width: 1, height: 1 }
  private start = 0

  /** x = x'/λ + δ, and so on: what is gathered stays as simple. */
  drawn(from: Billet['size'], to: Billet['size']): void {
    const by = {
      length: to.length / from.length,
      width: to.width / from.width,
      height: to.height / from.height,
    }
    this.start /= by.length
    this.factors = {
      length: this.factors.length * by.length,
      width: this.factors.width * by.width,
      height: this.factors.height * by.height,
    }
  }
  burnt(scale: number): void {
    this.start += scale
  }
  add(warps: readonly Warp[]): void {
    if (warps.length === 0) return
    this.settle()
    this.warps.push(...warps)
  }
  settle(): void {
    const { length, width, height } = this.factors
    if (length !== 1 || width !== 1 || height !== 1) this.warps.push(draw(this.factors))
    const shifted = along(this.start)
    if (shifted) this.warps.push(shifted)
    this.factors = { length: 1, width: 1, height: 1 }
    this.start = 0
  }
}

export interface HowForged {
  /** The section is turned on its corner before it is squared. */
  readonly onCorner?: boolean
  /** Whether hammer and hand leave it uneven; left out, they do. */
  readonly even?: boolean
}

/** Where metal forged in heats came from: the same heats as the account's, last to first. */
export function movedInHeats(
  before: Billet,
  aim: ForgingAim,
  smithy: Smithy,
  how: HowForged = {},
): Movement {
  const closing = closingOf(before, aim, smithy)
  if (closing)
    return moving([...closing.closed.warps, along(closing.scale)], {
      ...(how.even ? {} : { uneven: unevennessOf(smithy.shop) }),
    })
  const done = heatsOfForging(before, aim, { ...smithy, densities: UNWEIGHED })
  if (done.problems) return moving([])
  const all = new Gathered()
  const heats = done.ok
  const last = heats.at(-1)
  if (last) bulge(all, before, last.bar, aim)
  for (const [i, { burnt, bar }] of [...heats.entries()].toReversed()) {
    shape(all, burnt, bar, i === heats.length - 1 && (how.onCorner ?? false))
    all.burnt(aim.scale)
  }
  all.settle()
  return moving(all.warps, {
    ...(Math.abs(all.fill - 1) > 1e-12 ? { fill: all.fill } : {}),
    ...(all.beyond > 0 ? { beyond: all.beyond } : {}),
    ...(how.even ? {} : { uneven: unevennessOf(smithy.shop) }),
  })
}

/** From one size and section to the next: level first, then section to section, then drawn. */
function shape(all: Gathered, from: Billet, to: Billet, onCorner: boolean): void {
  const level = levelled(from)
  const was = from.shape === 'cut' ? 'rectangle' : from.shape
  const now = to.shape === 'cut' ? 'rectangle' : to.shape
  if (was === now && !onCorner) all.drawn(level.size, to.size)
  else {
    // Drawn to a section of area one in a frame scaled to that, its length kept.
    const across = acrossOf(now)
    const unit = { length: to.size.length, width: across, height: across }
    all.drawn(unit, to.size)
    const map = sectionMap(was, now, onCorner)
    all.add(map.warps)
    all.beyond += map.beyond * Math.sqrt((from.volume / from.size.length) * 1)
    const old = acrossOf(was)
    all.drawn(level.size, { length: to.size.length, width: old, height: old })
  }
  all.add(level.warps)
  all.fill *= level.fill ?? 1
  all.beyond += level.beyond ?? 0
}

/** Sticking friction on hot dies; the greatest bulge drawn: 0.3 is a strong one (common practice, no source). */
const STICKS = 1
const MOST_BULGE = 0.3
/** Height over width from which a bar is tall: its sides bulge as it is pressed. */
const TALL = 1

/**
 * A tall bar bulges: layers that stand or are bent are bowed. Flat ones stay flat in it, and are left
 * as the account has them; so is a bar kept to a width, which is turned and its bulge struck back.
 */
function bulge(all: Gathered, before: Billet, after: Billet, aim: ForgingAim): void {
  const { width, height } = before.size
  if (aim.width !== undefined || after.shape !== 'rectangle' || height <= TALL * width) return
  if (flatAxis(before.build) === 'z') return
  const { value } = bulgeOf(width, height, aim.height, STICKS)
  const b = Math.min(MOST_BULGE, value)
  if (!(b > 0.005)) return
  all.add([barrel({ height: after.size.height, spread: 1, bulge: b })])
  all.beyond += (before.size.width / 2) * (1 / (1 - b) - 1)
}
