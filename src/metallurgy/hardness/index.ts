/** Hardness from the quench and after the temper; growth and bow. */
export { asQuenchedHardness } from './as-quenched.ts'
export { type Distortion, type QuenchedLayer, distort } from './distortion.ts'
export { rockwell, vickers } from './scales.ts'
export { type Temper, type TemperedHardness, temperChart, temperedHardness } from './temper.ts'
