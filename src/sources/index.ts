/** The bibliography and the Figure type. */
export { type SourceKey, bibliography, isSourceKey } from './bibliography.ts'
export { type Figure, type Standing, cite } from './figure.ts'
