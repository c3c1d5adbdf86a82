import type { PieceKind } from '#piece'
import { readValues } from '#parameters'
import { type UnitSystem, printQuantity } from '#units'

/** Sizes to begin a piece of this kind with, as a job file holds them, round in the units they will be changed in. */
export function startingSizes(
  kind: PieceKind,
  system: UnitSystem,
): Readonly<Record<string, string>> {
  const read = readValues(kind.parameters, kind.examples[0])
  if (read.problems) return {}
  return Object.fromEntries(
    kind.sizes.map((name) => [name, roundSize(read.ok.values[name] as number, system)]),
  )
}

const INCH = 0.0254

/** To the step a size so large would be named in: 125 mm, 6 mm, 2 1/2 in, 5/32 in. */
function roundSize(m: number, system: UnitSystem): string {
  if (system === 'inch') {
    const inches = m / INCH
    const parts = inches >= 2 ? 4 : inches >= 0.5 ? 8 : inches >= 0.25 ? 16 : 32
    return printQuantity((Math.round(inches * parts) / parts) * INCH, 'length', { system })
  }
  const step = m >= 0.05 ? 5 : m >= 0.005 ? 1 : 0.5
  return `${Math.round((m * 1000) / step) * step} mm`
}

/** A length of a route up to the next half millimetre or sixteenth: nobody draws a bar to a hundredth. */
export function upTo(m: number, system: UnitSystem): string {
  if (system === 'inch')
    return printQuantity((Math.ceil((m / INCH) * 16 - 1e-6) / 16) * INCH, 'length', { system })
  return `${Math.ceil(m * 2000 - 1e-6) / 2} mm`
}
