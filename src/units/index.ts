/** Reads and prints people's quantities; inside everything is SI. */
export { type QuantityKind, type UnitSystem, examplesOf, nounOf, siUnitOf } from './kind.ts'
export { type Counted, counted, printCount } from './count.ts'
export { printAsRead, reexpress } from './as-read.ts'
export { type Printing, printQuantity } from './printing.ts'
export { type Quantity, readQuantity } from './quantity.ts'
export { systemOf } from './system-of.ts'
export { type Unit, unitsOf } from './unit-table.ts'
