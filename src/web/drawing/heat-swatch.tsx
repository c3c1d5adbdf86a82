import { useDesk } from '#desk'

/** The colour a bar at this temperature (K) glows, always beside its number; below 500 °C nothing. */
export function HeatSwatch({ temperature }: { readonly temperature: number }) {
  const glow = useDesk((desk) => desk.declared?.glow)
  const celsius = temperature - 273.15
  if (!glow || celsius < 500) return null
  const colour = glow[Math.min(glow.length - 1, Math.round((celsius - 500) / 10))]
  return <span className="swatch" aria-hidden="true" style={{ background: colour }} />
}
