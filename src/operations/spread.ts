import type { Billet } from '#billet'
import { drawOut, drawPass } from '#forming'
import type { Shop } from '#shop'

/** Length of bar under the dies at one blow, m. */
export function biteOn(bar: Billet, shop: Shop): number {
  return Math.min(shop.dieWidth, bar.size.length)
}

/**
 * A bar shorter than its dies is reckoned as if it reached across them: working back cuts bars
 * longer and shorter, and a section that changed with the cut would never settle.
 */
const toolsFor = (shop: Shop) => ({
  bite: shop.dieWidth,
  ...(shop.spread !== undefined && { measured: shop.spread }),
})

/** Share of a small reduction in height that goes into width: the shop's own measure, else by bite and width. */
export function spreadOf(bar: Billet, shop: Shop): number {
  const { height, width, length } = bar.size
  return drawPass({ height, width, length }, 0.99 * height, toolsFor(shop)).coefficient.value
}

/**
 * Width a bar comes to when its height (m, level) is brought to another and nothing holds its sides:
 * squeeze by squeeze, the spread found anew as the bar widens.
 */
export function widthAt(bar: Billet, from: number, to: number, shop: Shop): number {
  const { width, length } = bar.size
  const tools = toolsFor(shop)
  if (to >= from) return width * (from / to) ** spreadOf(bar, shop)
  return drawOut({ height: from, width, length }, { height: to }, tools).bar.width
}
