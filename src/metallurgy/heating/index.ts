/** A bar in the fire, in air and in the quench; what colour it is. */
export { type BarHeat, type BarSection, type HeatOptions, biotNumber, heatBar } from './heat-bar.ts'
export { type HeatColour, heatColour } from './heat-colour.ts'
export { type HeatCycle, type HeatOrder, heatsFor, runHeat } from './heat-cycle.ts'
export { conductivity, elongation, enthalpy, specificHeat } from './steel-properties.ts'
export { type Fire, type Surroundings, fireAt, fires, inAir, quenchFilm } from './surroundings.ts'
