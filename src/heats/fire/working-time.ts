import type { Billet } from '#billet'
import type { Heat } from '#operations'
import type { Shop } from '#shop'
import { orderFor, run, sectionOf, stopOf } from './heat-order.ts'

/** A thin plate cools as one temperature, so its time stands for every bar by volume over skin. */
const THIN = 0.006
const FEW_SECONDS = 2

/** Volume over skin of a long bar, m. */
function depthOf({ thickness, width, shape }: ReturnType<typeof sectionOf>): number {
  if (shape === 'round') return thickness / 4
  return width === undefined ? thickness / 2 : 1 / (2 / thickness + 2 / width)
}

/**
 * Seconds a bar can be worked in one heat, from fire to stop heat. One run of the heating model for
 * each pair of heat and stop, on a thin plate; other sections by their volume over skin, less what
 * the skin of a thick bar runs ahead of its core. Smooth in the sizes, so that a plan settles.
 */
export function workingTimes(shop: Shop): (bar: Billet, heat: Heat) => number {
  const seconds = new Map<string, number>()
  return (bar, heat) => {
    const stop = stopOf(heat, shop)
    if (stop === undefined || !(heat.temperature > stop)) return FEW_SECONDS
    const key = `${heat.purpose} ${heat.temperature} ${stop}`
    let thin = seconds.get(key)
    if (thin === undefined) {
      const order = orderFor(heat, { shape: 'plate', thickness: THIN }, shop, 293.15)
      thin = run({ ...order, soak: Math.max(order.soak ?? 0, 1) }).working.value
      seconds.set(key, thin)
    }
    const depth = depthOf(sectionOf(bar))
    // The skin of a thick bar is at the stop heat before the whole is: it loses a share of its fall.
    const lead = LEAD * depth
    const fall = Math.max(heat.temperature - stop, 1)
    return Math.max(FEW_SECONDS, (thin * depth) / (THIN / 2) / (1 + lead / fall))
  }
}

/** K the skin runs ahead of the whole, for each metre of volume over skin: fitted to the heating model. */
const LEAD = 1500
