import { type ReactNode, useLayoutEffect, useRef, useState } from 'react'
import type { PieceDrawing } from '#desk'
import type { Point, Size } from '#geometry'
import { TRUE, scaleToFit } from '../../drawing/scale.ts'
import { type Px, lineOf, outlineOf } from '../../drawing/section-drawing.tsx'
import { usePen } from '../../drawing/use-pen.ts'

/** Px round the plan for its dimensions, and the most it may be tall beside type of the usual size. */
export const LEFT = 72
/** Px from the plan to its dimension line. */
const ASIDE = 33
const TALLEST = 420
/** What is small is drawn larger than it is, as far as there is room. */
const LARGEST = 5
const TOP = 55
const GAP = 44

interface PieceDrawingProps {
  readonly piece: PieceDrawing
  /** What stands on each dimension line: a field where the size can be typed. */
  readonly dimension: (side: keyof Size) => ReactNode
  readonly words: { readonly plan: string; readonly edge: string; readonly section: string }
  readonly label: string
  /** Outline of the stamp's raised face, as a path of SVG, in units of its own. */
  readonly emblem?: string
  /** Thickness of a cure, m: drawn dashed over the edge. */
  readonly ghost?: number
  /** Px across. */
  readonly room: number
}

/** The scale at which a piece is drawn. */
export function scaleOfPiece({ size }: PieceDrawing, room: number, pen: number) {
  const byLength = scaleToFit(size.length, room - LEFT - 2, LARGEST)
  const byWidth = scaleToFit(size.width, pen * TALLEST, LARGEST)
  return byLength.ratio < byWidth.ratio ? byLength : byWidth
}

/** Plan, long edge and section of the piece, to scale, with its three dimensions to be typed. */
export function ScaleDrawing({
  piece,
  dimension,
  words,
  label,
  emblem,
  ghost,
  room: wide,
}: PieceDrawingProps) {
  const scale = scaleOfPiece(piece, wide, usePen())
  const px = (m: number) => m * TRUE * scale.ratio
  const [length, width] = [px(piece.size.length), px(piece.size.width)]
  const height = Math.max(px(piece.size.height), 2)
  const ghostHeight = ghost === undefined ? 0 : px(ghost)
  const room = Math.max(height, ghostHeight)
  const edgeTop = TOP + Math.max(width, 44) + GAP + (room - height)
  const whole = { width: LEFT + length + 2, height: edgeTop + height + 33 }
  const cutX = LEFT + px(piece.section.x)
  return (
    <div className="scale-drawing" style={{ width: whole.width, height: whole.height }}>
      <svg width={whole.width} height={whole.height} role="img" aria-label={label}>
        <Arrows />
        <g transform={`translate(${LEFT} ${TOP + width / 2})`}>
          <Plan piece={piece} px={px} emblem={emblem} />
        </g>
        <CutMarks x={cutX} top={TOP} bottom={TOP + width} />
        <Dimension from={[LEFT, TOP - 30]} to={[LEFT + length, TOP - 30]} reach={24} />
        <Dimension from={[LEFT - ASIDE, TOP]} to={[LEFT - ASIDE, TOP + width]} reach={ASIDE - 6} />
        <g transform={`translate(${LEFT} ${edgeTop + height / 2})`}>
          <path d={outlineOf(piece.edge, px)} className="ink-line" />
          {ghostHeight > height && (
            <path
              className="ghost"
              d={`M0 ${height / 2}V${height / 2 - ghostHeight}H${length}V${height / 2}`}
            />
          )}
        </g>
        <ShortDimension x={LEFT - ASIDE} top={edgeTop} bottom={edgeTop + height} />
        <text x={LEFT} y={edgeTop + height + 24} className="note">
          {words.edge}
        </text>
      </svg>
      <Placed x={LEFT + length / 2} y={TOP - 30}>
        {dimension('length')}
      </Placed>
      <Aside y={TOP + width / 2}>{dimension('width')}</Aside>
      <Aside y={edgeTop - 33}>{dimension('height')}</Aside>
    </div>
  )
}

function Placed({
  x,
  y,
  children,
}: {
  readonly x: number
  readonly y: number
  readonly children: ReactNode
}) {
  return (
    <div className="placed" style={{ left: x, top: y }}>
      {children}
    </div>
  )
}

/** On the dimension line beside the plan, and never over its outline: what is too long for that grows outward. */
function Aside({ y, children }: { readonly y: number; readonly children: ReactNode }) {
  const half = ASIDE - 6
  return (
    <div className="aside" style={{ left: LEFT - ASIDE - half, width: 2 * half, top: y }}>
      <div className="placed">{children}</div>
    </div>
  )
}

function Plan({
  piece,
  px,
  emblem,
}: {
  readonly piece: PieceDrawing
  readonly px: Px
  readonly emblem: string | undefined
}) {
  const length = px(piece.size.length)
  const half = px(piece.size.width) / 2
  return (
    <>
      <path
        className="centre-line"
        d={`M-11 0H${length + 11}M${length / 2} ${-half - 11}V${half + 11}`}
      />
      {piece.grooves.map(({ path, width, face }, i) => (
        <g key={i} className={face === 'back' ? 'hidden-line' : ''}>
          <path d={grooveOf(path, px)} className="groove" strokeWidth={px(width) + 1} />
          <path
            d={grooveOf(path, px)}
            className="groove-floor"
            strokeWidth={Math.max(0, px(width) - 1)}
          />
        </g>
      ))}
      {piece.lines.map(({ name, points }, i) => (
        <path key={`${name} ${i}`} d={lineOf(points, px)} className="thin-line" />
      ))}
      {piece.stamp && emblem !== undefined && (
        <EmblemOutline stamp={piece.stamp} px={px} path={emblem} />
      )}
      {piece.stamp && emblem === undefined && (
        <rect
          className="stamp"
          x={px(piece.stamp.at.x - piece.stamp.length / 2)}
          y={px(-piece.stamp.at.y - piece.stamp.width / 2)}
          width={px(piece.stamp.length)}
          height={px(piece.stamp.width)}
        />
      )}
      {piece.outline.map((loop, i) => (
        <path key={i} d={`${lineOf(loop, px)}Z`} className="ink-line" />
      ))}
    </>
  )
}

/** The emblem in the middle of its box, as large as the box holds it, as it is pressed. */
function EmblemOutline({
  stamp,
  px,
  path,
}: {
  readonly stamp: NonNullable<PieceDrawing['stamp']>
  readonly px: Px
  readonly path: string
}) {
  const drawn = useRef<SVGPathElement>(null)
  const [box, setBox] = useState<DOMRect>()
  useLayoutEffect(() => setBox(drawn.current?.getBBox()), [path])
  const fit = box ? Math.min(px(stamp.length) / box.width, px(stamp.width) / box.height) : 0
  const [x, y] = box ? [box.x + box.width / 2, box.y + box.height / 2] : [0, 0]
  const shown = Number.isFinite(fit) && fit > 0
  const at = `translate(${px(stamp.at.x)} ${px(-stamp.at.y)}) scale(${fit}) translate(${-x} ${-y})`
  return (
    <path
      ref={drawn}
      d={path}
      className="thin-line emblem"
      {...(shown ? { transform: at } : { visibility: 'hidden' })}
    />
  )
}

/** A groove that comes back to its start is a ring: its path leaves out the way home. */
function grooveOf(path: readonly Point[], px: Px): string {
  const [first, last] = [path[0], path.at(-1)]
  const step = (a: Point, b: Point) => Math.hypot(b.x - a.x, b.y - a.y)
  const whole = path.slice(1).reduce((sum, p, i) => sum + step(path[i], p), 0)
  const ring = path.length > 4 && last !== undefined && step(first, last) < whole / 4
  return lineOf(path, px) + (ring ? 'Z' : '')
}

function Arrows() {
  return (
    <defs>
      <marker
        id="arrow"
        viewBox="0 0 8 6"
        refX="8"
        refY="3"
        markerWidth="8"
        markerHeight="6"
        orient="auto-start-reverse"
      >
        <path d="M0 0 8 3 0 6z" className="arrow" />
      </marker>
    </defs>
  )
}

type Xy = readonly [number, number]

/** A dimension line with its arrows and the two lines it measures from. */
function Dimension({
  from,
  to,
  reach,
}: {
  readonly from: Xy
  readonly to: Xy
  readonly reach: number
}) {
  const level = from[1] === to[1]
  const tail = ([x, y]: Xy) =>
    level ? `M${x} ${y - 6}V${y + reach}` : `M${x - 6} ${y}H${x + reach}`
  return (
    <g className="dimension">
      <path d={tail(from) + tail(to)} className="thin-line" />
      <path
        d={`M${from.join(' ')}L${to.join(' ')}`}
        className="thin-line"
        markerStart="url(#arrow)"
        markerEnd="url(#arrow)"
      />
    </g>
  )
}

/** A dimension too short for its own number: arrows from outside. */
function ShortDimension({
  x,
  top,
  bottom,
}: {
  readonly x: number
  readonly top: number
  readonly bottom: number
}) {
  return (
    <g className="dimension">
      <path d={`M${x - 8} ${top}H${x + 30}M${x - 8} ${bottom}H${x + 30}`} className="thin-line" />
      <path d={`M${x} ${top - 15}V${top}`} className="thin-line" markerEnd="url(#arrow)" />
      <path d={`M${x} ${bottom + 15}V${bottom}`} className="thin-line" markerEnd="url(#arrow)" />
    </g>
  )
}

function CutMarks({
  x,
  top,
  bottom,
}: {
  readonly x: number
  readonly top: number
  readonly bottom: number
}) {
  return (
    <g className="cut-mark">
      <path d={`M${x} ${top - 14}V${top - 2}`} />
      <path d={`M${x} ${top - 14}H${x + 12}`} markerEnd="url(#arrow)" className="thin-line" />
      <path d={`M${x} ${bottom + 2}V${bottom + 14}`} />
      <path d={`M${x} ${bottom + 14}H${x + 12}`} markerEnd="url(#arrow)" className="thin-line" />
      <text x={x + 18} y={top - 9}>
        A
      </text>
      <text x={x + 18} y={bottom + 19}>
        A
      </text>
    </g>
  )
}
