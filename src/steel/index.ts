/** Grades as data, read and checked. */
export { type Composition, type Element, elements, percent } from './composition.ts'
export { type Density, DESIGN_DENSITY, densityOf, designDensity } from './density.ts'
export { findGrade } from './find-grade.ts'
export { type EtchClass, type Family, type Grade, brightnessOf, compositionOf } from './grade.ts'
export { grades } from './grades.ts'
export { gradeForm } from './grade-form.ts'
export { readGrade } from './read-grade.ts'
