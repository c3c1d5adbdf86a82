/** Steel hot: what it holds, how it conducts, what colour it is. */
export { type HeatColour, heatColour } from './heat-colour.ts'
export { conductivity, elongation, enthalpy, specificHeat } from './steel-properties.ts'
