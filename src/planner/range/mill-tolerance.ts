import type { Tolerances } from '#shop'

const mm = (n: number) => n / 1000

/** EN 10058 flats, plus or minus, m: up to a size [BSSA]. */
const enWidth = [
  [40, 0.75],
  [80, 1],
  [100, 1.5],
  [120, 2],
  [150, 2.5],
] as const
const enThickness = [
  [20, 0.5],
  [40, 1],
  [80, 1.5],
] as const

/** ASTM A29 flats, mm [LUC]: thickness by width (rows) and thickness (columns); the wider side of the width's. */
const a29 = [
  { width: 25, thickness: [0.18, 0.2, 0.25, 0.25], across: 0.5 },
  { width: 50, thickness: [0.18, 0.3, 0.4, 0.8], across: 1 },
  { width: 100, thickness: [0.2, 0.4, 0.5, 0.8], across: 1.5 },
  { width: 150, thickness: [0.25, 0.4, 0.5, 0.8], across: 2.5 },
  { width: 200, thickness: [0.4, 0.4, 0.65, 0.8], across: 3 },
] as const
const a29Columns = [6, 12, 25, 50]

/** Thinner than this it is sheet or strip, outside both standards' flats, m. */
const FLAT_FROM = mm(5)

/** How far a bought bar's thickness and width may be off, m. */
export function millTolerance(
  thickness: number,
  width: number,
  { bars, sheetThickness }: Pick<Tolerances, 'bars' | 'sheetThickness'>,
): { readonly thickness: number; readonly width: number } {
  if (bars === 'exact') return { thickness: 0, width: 0 }
  if (thickness < FLAT_FROM - 1e-6)
    return { thickness: sheetThickness * thickness, width: mm(enWidth[0][1]) }
  if (bars === 'EN 10058')
    return { thickness: upTo(enThickness, thickness), width: upTo(enWidth, width) }
  const row = a29.find((r) => width <= mm(r.width) + 1e-6) ?? a29[a29.length - 1]
  const column = a29Columns.findIndex((t) => thickness <= mm(t) + 1e-6)
  return {
    thickness: mm(row.thickness[column < 0 ? 3 : column]),
    width: mm(row.across),
  }
}

/** The entry for a size; the last one beyond the table. */
function upTo(table: readonly (readonly [most: number, off: number])[], size: number): number {
  const row = table.find(([most]) => size <= mm(most) + 1e-6) ?? table[table.length - 1]
  return mm(row[1])
}
