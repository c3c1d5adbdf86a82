import { printQuantity } from '#units'
import type { Tool } from '#forming'
import type { Shop } from '#shop'
import type { Working } from './working.ts'

/** A tool of the shop, as a smith calls it. */
export interface ShopTool {
  readonly name: string
  readonly way: Working['way']
  readonly tool: Tool
}

/** The hammer a stamp is struck with where the shop says nothing else: 4 lb at 8 m/s (common practice; from memory). */
export const fourPounds: ShopTool = {
  name: '4 lb hand hammer',
  way: 'hand hammer',
  tool: { kind: 'hand', mass: 1.81436948, speed: 8 },
}

/** What the shop forges with, the quicker tool first; nothing where it has neither hammer nor press. */
export function toolsOf(shop: Shop): readonly ShopTool[] {
  const tools: ShopTool[] = []
  if (shop.hammer !== 'none') {
    const { hammerMass: mass, hammerSpeed: speed, hammer } = shop
    const weighs = printQuantity(Number(mass.toPrecision(3)), 'mass')
    const power = hammer === 'power'
    tools.push({
      name: power ? `power hammer of ${weighs}` : `hand hammer of ${weighs}`,
      way: power ? 'power hammer' : 'hand hammer',
      tool: { kind: hammer, mass, speed },
    })
  }
  if (shop.pressForce !== undefined) {
    const press: ShopTool = {
      name: `press of ${printQuantity(shop.pressForce, 'force')}`,
      way: 'press',
      tool: {
        kind: 'press',
        force: shop.pressForce,
        speed: shop.pressSpeed,
        opening: shop.greatestOpening,
      },
    }
    if (shop.hammer === 'power') tools.push(press)
    else tools.unshift(press)
  }
  return tools
}
