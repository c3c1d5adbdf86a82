/** How light the darkest and the brightest steels of the trade etch (the classes of the room for steel). */
const DARKEST = 0.22
const BRIGHTEST = 0.82

/** A steel's etched lightness as a share of what lies between the darkest and the brightest: what a picture weighs with. */
export function brightness(lightness: number): number {
  return Math.min(1, Math.max(0, (lightness - DARKEST) / (BRIGHTEST - DARKEST)))
}

/** The same of several steels by name. */
export function brightnessOf(
  light: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  return Object.fromEntries(Object.entries(light).map(([steel, l]) => [steel, brightness(l)]))
}
