/** How light the darkest and the brightest steels of the trade etch; between them lies all that a picture shows. */
const DARKEST = 0.22
const BRIGHTEST = 0.82

/** Lightness of etched steels as shares of what lies between the darkest and the brightest. */
export function brightnessOf(
  light: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  return Object.fromEntries(
    Object.entries(light).map(([steel, l]) => [
      steel,
      Math.min(1, Math.max(0, (l - DARKEST) / (BRIGHTEST - DARKEST))),
    ]),
  )
}
