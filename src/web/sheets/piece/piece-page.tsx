import {
  type DeclaredKind,
  barNames,
  edit,
  go,
  useDesk,
  useTradeWord,
  useWords,
  valueAt,
  withValue,
} from '#desk'
import type { Problem } from '#problem'
import type { Size } from '#geometry'
import { SectionDrawing, sectionScale } from '../../drawing/section-drawing.tsx'
import { usePen } from '../../drawing/use-pen.ts'
import { useRoom } from '../../drawing/use-room.ts'
import { Faults } from '../../form/faults.tsx'
import { Field } from '../../form/field.tsx'
import { problemsAt } from '../../form/fields.tsx'
import { Measure } from '../../form/measure.tsx'
import { useSay } from '../../form/say.ts'
import { Told } from '../../form/told.tsx'
import { WeightWish } from '../../form/weight-wish.tsx'
import { SheetHead } from '../../shell/sheet-head.tsx'
import { PatternColumn } from './pattern-column.tsx'
import { PieceLedger } from './piece-ledger.tsx'
import { LEFT, ScaleDrawing, scaleOfPiece } from './scale-drawing.tsx'

export function PiecePage() {
  const words = useWords()
  const declared = useDesk((desk) => desk.declared)
  const kindName = useDesk((desk) => valueAt(desk.history?.now, ['piece', 'kind']))
  const piece = useDesk((desk) => desk.piece)
  const worked = useDesk((desk) => desk.worked)
  const sound = useDesk((desk) => desk.sound)
  const begun = useDesk((desk) => barNames(desk.history?.now ?? {}).length > 0)
  const kind = declared?.kinds.find(({ name }) => name === kindName)
  const problems = (worked?.problems ?? []).filter(({ at }) => /^(piece|wishes|name)\b/.test(at))
  const weight = worked?.weight
  const disagrees = weight !== undefined && !weight.agrees
  const told = disagrees ? problems.filter(({ at }) => at !== 'piece.mass') : problems
  const [place, whole] = useRoom<HTMLDivElement>()
  const pen = usePen()
  const room = whole > BESIDE ? whole - pen * LEDGER : whole
  const route = (worked?.problems ?? []).find(({ at }) => at.startsWith('bars'))
  return (
    <>
      <section className="column" aria-label={words.piece.title}>
        <SheetHead>{piece && words.piece.drawn(scaleOfPiece(piece, room, pen).words)}</SheetHead>
        <div ref={place} className={kind ? 'drawn' : 'drawn bare'}>
          <div className="drawings">
            {kind && piece && room > 0 && <Drawing kind={kind} problems={told} room={room} />}
            {kindName === undefined && <p className="empty">{words.piece.none}</p>}
            {disagrees && <WeightWish weight={weight} />}
            <Faults problems={told.filter(({ at }) => at === 'piece')} />
            {kind && !begun && (
              <p className="note waits">
                <Measure text={words.piece.noRoute} />{' '}
                <button type="button" className="word note" onClick={() => go({ sheet: 'route' })}>
                  {words.route.blankStart}
                </button>
              </p>
            )}
            {route && begun && !disagrees && told.length === 0 && (
              <p className="note waits">
                <b>{words.piece.routeProblem}</b> <Told text={route.what} whole />{' '}
                <button type="button" className="word note" onClick={() => go({ sheet: 'route' })}>
                  {words.piece.toRoute}
                </button>
              </p>
            )}
            {worked && !worked.sound && sound && (
              <p className="note soft waits">{words.piece.waits}</p>
            )}
          </div>
          <PieceLedger kind={kind} problems={told} />
        </div>
      </section>
      <PatternColumn />
    </>
  )
}

/** Px from which the ledger stands beside the drawing, and what it takes. */
const BESIDE = 760
const LEDGER = 246

/** The drawing, its dimensions typed where they stand. */
function Drawing({
  kind,
  problems,
  room,
}: {
  readonly kind: DeclaredKind
  readonly problems: readonly Problem[]
  readonly room: number
}) {
  const words = useWords()
  const say = useSay()
  const trade = useTradeWord()
  const pen = usePen()
  const piece = useDesk((desk) => desk.piece)
  const job = useDesk((desk) => desk.history?.now)
  const weight = useDesk((desk) => desk.worked?.weight)
  // Only an outline that was found to read.
  const emblem = useDesk((desk) => {
    const found = desk.sound?.rows.findLast((row) => row.title === 'stamp')?.values.emblem
    return typeof found === 'string' ? found : undefined
  })
  if (!piece || !job) return null
  const dimension = (side: keyof Size) => {
    const name = piece.overall[side]
    const parameter = name === undefined ? undefined : kind.parameters[name]
    if (name === undefined || !parameter)
      return (
        <span className="measured">
          <Measure text={say.length(piece.size[side])} />
        </span>
      )
    const path = ['piece', name]
    return (
      <Field
        bare
        parameter={parameter}
        label={`${words.piece.plan}: ${trade(name)}`}
        path={path}
        value={valueAt(job, path)}
        problems={problemsAt(problems, path)}
        onChange={(value, within) =>
          edit(withValue(useDesk.getState().history?.now ?? {}, path, value), within)
        }
      />
    )
  }
  const forSection = Math.min(300 * pen, room - LEFT - 6)
  const told = `${trade(kind.title)}, ${say.size(piece.size)}`
  return (
    <>
      <ScaleDrawing
        room={room}
        piece={piece}
        dimension={dimension}
        words={{
          plan: words.piece.plan,
          edge: words.piece.longEdge,
          section: words.piece.section,
        }}
        label={told}
        emblem={emblem}
        ghost={weight && !weight.agrees ? weight.cures[0]?.thickness : undefined}
      />
      <figure className="section-figure">
        <SectionDrawing piece={piece} room={forSection} label={`${words.piece.section}, ${told}`} />
        <figcaption className="note soft">
          {words.piece.section}, {sectionScale(piece, forSection).words};{' '}
          {words.piece.weighs(say.mass(piece.mass))}
        </figcaption>
      </figure>
    </>
  )
}
