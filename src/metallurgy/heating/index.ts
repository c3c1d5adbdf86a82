/** A bar in the fire, in air and in the quench. */
export { type BarHeat, type BarSection, type HeatOptions, biotNumber, heatBar } from './heat-bar.ts'
export { type Fire, type Surroundings, fireAt, fires, inAir, quenchFilm } from './surroundings.ts'
