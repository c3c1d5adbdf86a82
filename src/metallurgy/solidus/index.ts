/** How near to burning. */
export { type Overheating, checkOverheating, solidus } from './overheating.ts'
