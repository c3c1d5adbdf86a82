/** One whole heat: in the fire, soaked, worked. */
export { type HeatCycle, type HeatOrder, heatsFor, runHeat } from './heat-cycle.ts'
