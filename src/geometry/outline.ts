/** A place in a plane, m. */
export interface Point {
  readonly x: number
  readonly y: number
}

/** A closed loop of straight sides; the last point joins the first. */
export type Outline = readonly Point[]

/** Area inside, m²; negative for a clockwise loop. */
export function outlineArea(outline: Outline): number {
  let twice = 0
  for (let i = 0; i < outline.length; i++) {
    const a = outline[i]
    const b = outline[(i + 1) % outline.length]
    twice += a.x * b.y - b.x * a.y
  }
  return twice / 2
}

/** A circle as a loop of n sides with its corners on the circle, anticlockwise. */
export function circleOutline(centre: Point, diameter: number, n = 72): Point[] {
  return Array.from({ length: n }, (_, i) => ({
    x: centre.x + (diameter / 2) * Math.cos((2 * Math.PI * i) / n),
    y: centre.y + (diameter / 2) * Math.sin((2 * Math.PI * i) / n),
  }))
}
