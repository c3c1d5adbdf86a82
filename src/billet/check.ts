import type { Problem } from '#problem'
import { CONSERVED, axisLength, boxVolume } from '#geometry'
import { type Billet, barVolume } from './billet.ts'
import { type Build, thicknessOf } from './build.ts'

/**
 * What must always be true of the metal. An empty list is a sound billet; anything else is a fault
 * of the operation that made it, and the laws report it by name.
 */
export function checkBillet(billet: Billet): Problem[] {
  const problems: Problem[] = []
  const wrong = (at: string, what: string, why: string) =>
    problems.push({ at, what, why, try: ['mend the operation that made this billet'] })
  const { size, volume } = billet
  for (const [name, side] of Object.entries(size)) {
    if (!(Number.isFinite(side) && side > 0))
      wrong(`size.${name}`, `${name} is ${side}`, 'every side is more than nothing')
  }
  if (!(Number.isFinite(volume) && volume > 0))
    wrong('volume', `volume is ${volume}`, 'there must be metal')
  if (volume > boxVolume(size) * (1 + CONSERVED))
    wrong('volume', 'more metal than its box holds', 'the box encloses the metal')
  if (billet.shape !== 'cut') {
    const plain = barVolume(size, billet.shape)
    if (Math.abs(volume - plain) > CONSERVED * plain) {
      wrong(
        'volume',
        `a plain ${billet.shape} bar of this size holds ${plain} m³, not ${volume}`,
        'section × length is the volume of a plain bar',
      )
    }
  }
  if (!(billet.worked > 0 && billet.worked <= 1 + CONSERVED))
    wrong('worked', `worked is ${billet.worked}`, 'a share of the height at welding, 0 to 1')
  const { build } = billet
  if (build.form === 'layered' && billet.shape === 'rectangle') {
    const side = size[axisLength[build.axis]]
    if (Math.abs(thicknessOf(build) - side) > CONSERVED * side) {
      wrong(
        'build',
        `layers add up to ${thicknessOf(build)} m across a side of ${side} m`,
        'layers fill the bar',
      )
    }
  }
  checkBuild(build, 'build', wrong)
  return problems
}

function checkBuild(
  build: Build,
  at: string,
  wrong: (at: string, what: string, why: string) => void,
): void {
  if (build.form === 'worked') return checkBuild(build.of, `${at}.of`, wrong)
  if (build.form === 'layered') {
    if (build.layers.length === 0) wrong(at, 'no layer is left', 'a build has at least one layer')
    build.layers.forEach((layer, i) => {
      if (!(Number.isFinite(layer.thickness) && layer.thickness > 0))
        wrong(`${at}.layers[${i}]`, `thickness is ${layer.thickness}`, 'a layer has thickness')
      if (i > 0 && layer.steel === build.layers[i - 1].steel)
        wrong(`${at}.layers[${i}]`, 'like lies on like', 'like on like is one layer')
    })
    if (build.laid < build.layers.length && build.laid > 0)
      wrong(at, 'fewer sheets laid than layers there', 'merging only lessens the count')
    return
  }
  const shares = build.parts.reduce((sum, part) => sum + part.share, 0)
  if (Math.abs(shares - 1) > CONSERVED)
    wrong(at, `shares add up to ${shares}`, 'the parts are the whole')
  build.parts.forEach((part, i) => checkBuild(part.build, `${at}.parts[${i}]`, wrong))
}
