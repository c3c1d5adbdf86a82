/** Diffusion, scale, heating and cooling, transformation, hardening, tempering, etching. */
export { type HeatColour, heatColour } from './heating/index.ts'
