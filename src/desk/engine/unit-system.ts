import { type QuantityKind, type UnitSystem, unitsOf } from '#units'

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

export function isInch(text: string | undefined, kind: QuantityKind): boolean {
  return text !== undefined && systemOf(text, kind) === 'inch'
}
