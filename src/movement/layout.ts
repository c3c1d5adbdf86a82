import { type Axis, type Size, axisLength } from '#geometry'
import type { Build, Joined } from '#billet'
import { turn } from '#warp'
import { type Branch, type Movement, laid, stays, through, turned } from './movement.ts'

/**
 * A bar as its build says it lies: flat layers as sheets, parts that follow one another as pieces,
 * each as thick as its share. What is known only by its shares lies in bands across the section.
 */
export function layoutOf(build: Build, size: Size, inSection: InSection = inBands): Branch {
  if (build.form === 'worked') return layoutOf(build.of, size, inSection)
  if (build.form === 'layered') {
    const { axis } = build
    const whole = build.layers.reduce((sum, layer) => sum + layer.thickness, 0)
    const scale = size[axisLength[axis]] / whole
    const layers = build.layers.map((l) => ({ ...l, thickness: l.thickness * scale }))
    if (axis === 'z') return { layers }
    if (axis === 'y') return through([turn('quarter')], { layers })
    const onEnd = turned(
      { x: { was: 'z' }, y: { was: 'y' }, z: { was: 'x', reversed: true } },
      { length: size.height, width: size.width, height: size.length },
    )
    return through([onEnd], { layers })
  }
  return build.axis === 'section'
    ? inSection(build, size)
    : partsAlong(build, build.axis, size, inSection)
}

/** How parts lie that share a section in a way not told. */
export type InSection = (joined: Joined, size: Size) => Movement

function inBands(joined: Joined, size: Size): Movement {
  return partsAlong(joined, 'y', size, inBands)
}

function partsAlong({ parts }: Joined, axis: Axis, size: Size, inSection: InSection): Movement {
  const side = axisLength[axis]
  const seats = parts.flatMap(({ build, share, times }) => {
    const each = (share / times) * size[side]
    const from = layoutOf(build, { ...size, [side]: each }, inSection)
    return Array.from({ length: times }, () => ({ side: each, from }))
  })
  return laid(axis, seats)
}

/** A branch as the movement of a step that starts a bar. */
export function startingFrom(branch: Branch): Movement {
  return 'warps' in branch ? branch : { ...stays, branches: [branch] }
}
