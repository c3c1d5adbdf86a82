/** Grades as data, read and checked. */
export { type Composition, type Element, elements, percent } from './composition.ts'
