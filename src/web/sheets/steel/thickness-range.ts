import type { DrawnBar } from '#desk'

/** So much of the metal may be thinner than the scale: what grinding has left of an outer layer would stretch it. */
const SCRAPS = 0.01

/** Round thicknesses, each twice the one before, that hold the layers of the metal, m. */
export function thicknessLadder(build: DrawnBar['build'], unit: number): number[] {
  const all = thicknessesOf(build).toSorted((a, b) => a - b)
  const [thickest] = all.slice(-1)
  if (thickest === undefined) return []
  let scraps = all.reduce((sum, thick) => sum + thick, 0) * SCRAPS
  const thinnest = all.find((thick) => (scraps -= thick) < 0) ?? thickest
  const rung = (m: number) => Math.log2(m / unit)
  // A sheet is shown by itself where like was welded to like, and is thinner where it was pressed or twisted.
  const low = Math.floor(rung(thinnest / 2))
  const high = Math.max(low + 2, Math.ceil(rung(thickest) - 1e-6))
  return Array.from({ length: high - low + 1 }, (_, i) => unit * 2 ** (low + i))
}

function thicknessesOf(build: DrawnBar['build']): number[] {
  if (build.form === 'layered') return build.layers.map((layer) => layer.thickness)
  if (build.form === 'worked') return thicknessesOf(build.of)
  return build.parts.flatMap((part) => thicknessesOf(part.build))
}
