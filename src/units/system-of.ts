import type { QuantityKind, UnitSystem } from './kind.ts'
import { unitsOf } from './unit-table.ts'

/** The system a typed quantity is in, by the last unit in it; undefined where units belong to both. */
export function systemOf(text: string, kind: QuantityKind): UnitSystem | undefined {
  const units = unitsOf[kind].flatMap((unit) =>
    [unit.name, ...unit.also].map((name) => ({ name, system: unit.system })),
  )
  const typed = text.trim().toLowerCase()
  const found = units
    .filter(({ name }) => name !== '' && typed.endsWith(name.toLowerCase()))
    .sort((a, b) => b.name.length - a.name.length)[0]
  return found === undefined || found.system === 'both' ? undefined : found.system
}
