import type { PieceDrawing } from '#desk'
import type { Point } from '#geometry'
import { TRUE, scaleToFit } from './scale.ts'

/** From metres to px. */
export type Px = (m: number) => number

/** What is small beside the plan is drawn larger than it is, as far as there is room. */
const LARGEST = 5

/** The scale of a section. */
export function sectionScale({ size }: PieceDrawing, room: number) {
  return scaleToFit(size.width, room, LARGEST)
}

/** The section, cut metal hatched. */
export function SectionDrawing({
  piece,
  label,
  room,
  thickness,
}: {
  readonly piece: PieceDrawing
  readonly label: string
  readonly room: number
  /** Drawn as thick as this instead, m. */
  readonly thickness?: number
}) {
  const own = sectionScale(piece, room)
  const { ratio } = own
  const by = thickness === undefined ? 1 : thickness / piece.size.height
  const px = (m: number) => m * TRUE * ratio
  const [width, height] = [px(piece.size.width), px(piece.size.height * by)]
  const stretched = {
    top: piece.section.top.map(({ x, y }) => ({ x, y: y * by })),
    bottom: piece.section.bottom.map(({ x, y }) => ({ x, y: y * by })),
  }
  return (
    <svg
      width={width + 2}
      height={height + 2}
      viewBox={`${-width / 2 - 1} ${-height / 2 - 1} ${width + 2} ${height + 2}`}
      role="img"
      aria-label={label}
      data-scale={own.words}
    >
      <defs>
        <pattern
          id="cut-metal"
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <path d="M0 2.5H5" className="hatch-line" />
        </pattern>
      </defs>
      <path d={outlineOf(stretched, px)} className="cut" />
    </svg>
  )
}

/** A face as a line of an SVG path. */
export function lineOf(points: readonly Point[], px: Px): string {
  return points
    .map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${px(x).toFixed(2)} ${px(-y).toFixed(2)}`)
    .join('')
}

export function outlineOf(
  { top, bottom }: { readonly top: readonly Point[]; readonly bottom: readonly Point[] },
  px: Px,
): string {
  return `${lineOf([...top, ...bottom.toReversed()], px)}Z`
}
