import type { ScaleLinear } from 'd3-scale'
import { line } from 'd3-shape'
import { useDesk } from '#desk'
import type { Treated } from '#job'
import { numberIn } from '../../form/number-in.ts'

const WIDE = 416
const TALL = 110

type Profile = Treated['profiles'][number]
type Point = readonly [place: number, carbon: number]

interface CarbonProfileProps {
  readonly profile: Profile
  readonly y: ScaleLinear<number, number>
  readonly fill: (steel: string) => string
  readonly isLight: (steel: string) => boolean
}

/** Carbon across the finished layers from one face inward, over the steel of each, with the scale all cells share. */
export function CarbonProfile({ profile, y, fill, isLight }: CarbonProfileProps) {
  const language = useDesk((desk) => desk.language)
  const figure = numberIn(language, { minimumFractionDigits: 2 })
  const deep = profile.shown.at(-1)?.to ?? 1
  const x = (place: number) => (place / deep) * WIDE
  const path = line<Point>(
    ([place]) => x(place),
    ([, carbon]) => y(carbon),
  )
  const ticks = y.ticks(4)
  return (
    <div className="profile">
      <svg
        viewBox={`0 0 ${WIDE} ${TALL}`}
        preserveAspectRatio="none"
        className="carbon-cell"
        aria-hidden="true"
      >
        {profile.shown.map(({ steel, to }, i) => {
          const from = profile.shown[i - 1]?.to ?? 0
          return (
            <g key={i} className={isLight(steel) ? 'on-light' : 'on-dark'}>
              <rect x={x(from)} width={x(to - from) + 0.3} height={TALL} fill={fill(steel)} />
              <path className="level" d={path(within(profile.across, from, to)) ?? ''} />
            </g>
          )
        })}
      </svg>
      <ol className="note soft" aria-hidden="true">
        {ticks.map((carbon) => (
          <li key={carbon} style={{ top: `${(y(carbon) / TALL) * 100}%` }}>
            {figure(carbon)} %
          </li>
        ))}
      </ol>
    </div>
  )
}

/** The line within a layer, and to its faces half way to what lies beyond. */
function within(across: readonly Point[], from: number, to: number): Point[] {
  const first = across.findIndex(([place]) => place > from)
  const own = across.slice(first).filter(([place]) => place < to)
  const [before, after] = [across[first - 1], across[first + own.length]]
  const half = (a: Point, b: Point | undefined) => (b ? (a[1] + b[1]) / 2 : a[1])
  const [head, tail] = [own[0], own.at(-1)]
  if (!head || !tail) return []
  return [[from, half(head, before)], ...own, [to, half(tail, after)]]
}
