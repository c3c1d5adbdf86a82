/** Elements a grade sheet may name. Iron is the rest. */
export const elements = [
  'C',
  'Mn',
  'Si',
  'Ni',
  'Cr',
  'Mo',
  'V',
  'W',
  'Co',
  'Cu',
  'N',
  'P',
  'S',
  'Al',
  'Ti',
  'Nb',
  'As',
  'Zr',
  'B',
] as const

export type Element = (typeof elements)[number]

/** Mass per cent of each element, as grade sheets print it; iron is the rest. */
export type Composition = Readonly<Partial<Record<Element, number>>>

/** Mass per cent of one element; what is not named is absent. */
export function percent(composition: Composition, element: Element): number {
  return composition[element] ?? 0
}
