import type { Billet } from '#billet'
import type { Shop } from '#shop'

/**
 * Share of a reduction in height that goes into width: the shop's own measured share if it has one,
 * else Tomlinson and Stringer's short form in bite over width, S = 0.14 + 0.36 b/W − 0.054 (b/W)²
 * (from memory, high confidence; no text confirmed it). Narrow dies bite less and so spread less.
 */
export function spreadOf(bar: Billet, shop: Shop): number {
  if (shop.spread !== undefined) return shop.spread
  const bite = Math.min(shop.dieWidth, bar.size.length)
  const ratio = Math.min(bite / bar.size.width, 3)
  return 0.14 + 0.36 * ratio - 0.054 * ratio * ratio
}
