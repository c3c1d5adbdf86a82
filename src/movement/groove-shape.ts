/** Cross-section of a groove: what is cut away and how wide it is below the face. */
export interface GrooveShape {
  readonly area: number
  /** Width at a depth below the face, m. */
  widthAt(below: number): number
  /** Depth cut at a distance from its middle line, m. */
  depthAt(off: number): number
}

/**
 * `round`: as deep as half its width or deeper it is a half round under straight walls, shallower it
 * is an arc; `square`: straight walls and a flat floor; `v`: straight flanks to a line. Exact areas.
 */
export function grooveShape(
  form: 'round' | 'square' | 'v',
  width: number,
  depth: number,
): GrooveShape {
  const half = width / 2
  if (form === 'square') {
    return {
      area: width * depth,
      widthAt: () => width,
      depthAt: (off) => (Math.abs(off) < half ? depth : 0),
    }
  }
  if (form === 'v') {
    return {
      area: (width * depth) / 2,
      widthAt: (below) => width * Math.max(0, 1 - below / depth),
      depthAt: (off) => depth * Math.max(0, 1 - Math.abs(off) / half),
    }
  }
  if (depth >= half) {
    const wall = depth - half
    return {
      area: width * wall + (Math.PI * half * half) / 2,
      widthAt: (below) => (below <= wall ? width : 2 * chord(half, below - wall)),
      depthAt: (off) => (Math.abs(off) < half ? wall + chord(half, off) : 0),
    }
  }
  const radius = (half * half + depth * depth) / (2 * depth)
  const angle = 2 * Math.asin(Math.min(1, half / radius))
  return {
    area: (radius * radius * (angle - Math.sin(angle))) / 2,
    widthAt: (below) => 2 * chord(radius, radius - depth + below),
    depthAt: (off) => (Math.abs(off) < half ? chord(radius, off) - (radius - depth) : 0),
  }
}

/** Half the chord of a circle at a distance from its middle. */
function chord(radius: number, off: number): number {
  return Math.sqrt(Math.max(0, radius * radius - off * off))
}
