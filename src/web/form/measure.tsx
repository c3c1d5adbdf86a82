import type { QuantityKind, UnitSystem } from '#units'

/** A text in which fractions are set as fractions: `2 1/8 in`. */
export function Measure({ text }: { readonly text: string }) {
  // The face has the thin space, not the narrow one.
  const parts = text.replaceAll('\u202f', '\u2009').split(/(\d+\/\d+)/)
  return (
    <>
      {parts.map((part, i) =>
        i % 2 === 1 ? (
          <span key={i} className="frac">
            {part}
          </span>
        ) : (
          part
        ),
      )}
    </>
  )
}

/** The unit a bare number is taken to be in. */
export function bareUnit(kind: QuantityKind, units: UnitSystem): string | undefined {
  const bare: Partial<Record<QuantityKind, readonly [metric: string, inch: string]>> = {
    length: ['mm', 'in'],
    mass: ['g', 'oz'],
    temperature: ['°C', '°F'],
    time: ['min', 'min'],
    angle: ['°', '°'],
    lines: ['per mm', 'per inch'],
    twist: ['mm pitch', 'per inch'],
    ratio: ['%', '%'],
  }
  return bare[kind]?.[units === 'metric' ? 0 : 1]
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
