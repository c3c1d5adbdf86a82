import { type Axis, axisLength } from '#geometry'
import { type Billet, type Build, countLayers, flatAxis } from '#billet'

/** Lines met along the face: layers that stand across a direction of the bar. */
export interface FaceLines {
  readonly along: Axis
  readonly perMetre: number
}

/** Work that leaves the lines of the face where they are: it only takes metal off, or dents it here and there. */
const leavesLines = ['stamp', 'ground', 'grind to shape', 'groove', 'drill']

function asLaid(build: Build): Build {
  return build.form === 'worked' &&
    (build.shares || leavesLines.some((by) => build.by.startsWith(by)))
    ? asLaid(build.of)
    : build
}

/** Lines per metre where the layers stand square to the length or the width of the face. */
export function faceLines(billet: Billet): FaceLines | undefined {
  const build = asLaid(billet.build)
  const axis = flatAxis(build)
  if (axis === undefined || axis === 'z') return undefined
  const { merged } = countLayers(build, axis)
  return merged > 1 ? { along: axis, perMetre: merged / billet.size[axisLength[axis]] } : undefined
}
