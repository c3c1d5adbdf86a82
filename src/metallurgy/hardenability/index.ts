/** How deep a steel hardens, in which quench. */
export { type Hardening, hardenThrough } from './harden-through.ts'
export { idealDiameter } from './ideal-diameter.ts'
export { jominyCurve } from './jominy.ts'
export { type Quench, type QuenchMedium, quenches } from './quench-severity.ts'
export { type SectionShape, criticalSize } from './section.ts'
