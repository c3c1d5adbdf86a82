/** Round temperatures of the degrees shown, within a range in kelvin, `every` degrees apart. */
export function roundHeats(
  [low, high]: readonly [low: number, high: number],
  every: number,
  fahrenheit: boolean,
): { readonly K: number; readonly degrees: number }[] {
  const shown = (K: number) => (fahrenheit ? ((K - 273.15) * 9) / 5 + 32 : K - 273.15)
  const kelvin = (d: number) => (fahrenheit ? ((d - 32) * 5) / 9 : d) + 273.15
  const first = Math.ceil(shown(low) / every - 1e-6)
  const last = Math.floor(shown(high) / every + 1e-6)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const degrees = (first + i) * every
    return { K: kelvin(degrees), degrees }
  })
}
