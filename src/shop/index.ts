/** What the smith has, and the shop's own loss factors. */
export { shopParameters } from './declaration.ts'
export { type Shop, readShop, usualShop } from './shop.ts'
