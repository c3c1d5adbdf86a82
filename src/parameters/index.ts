/** A number asked for, declared once: reading, writing, schema, form and help are derived from it. */
export {
  type ChoiceParameter,
  type CountParameter,
  type ListParameter,
  type Parameter,
  type Parameters,
  type QuantityParameter,
  type ValuesOf,
  declare,
  isParameter,
} from './parameter.ts'
export { LEFT_FREE, type Reading, readValues } from './read.ts'
export { writeValues } from './write.ts'
export { type ParameterRow, rangeOf, rowsOf, schemaOf } from './describe.ts'
