/** Where the steel changes on heating and on cooling. */
export { ac1, bainiteStart, fullAustenite, martensiteStart } from './critical-points.ts'
export {
  type HardeningWindow,
  type SharedWindow,
  hardeningWindow,
  shareWindow,
} from './hardening-window.ts'
export { martensiteFinish, retainedAustenite } from './martensite.ts'
