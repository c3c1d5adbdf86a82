import { type PointerEvent, Suspense, lazy, memo } from 'react'
import type { Problem } from '#problem'
import {
  type Row,
  edit,
  go,
  measurementAt,
  moveStep,
  removeStep,
  stepsOf,
  useDesk,
  useSaid,
  useTradeWord,
  useWords,
} from '#desk'
import { nameIn } from '#words'
import { CautionMark, WrongMark } from '../../form/faults.tsx'
import { Measure, capital } from '../../form/measure.tsx'
import { useExpress } from '../../form/say.ts'
import { Told, Tolds } from '../../form/told.tsx'
import { Account, type Ratios } from './account.tsx'
import type { CardRow } from './card-rows.ts'
import { focusRow } from './focus-step.ts'
import type { Lane } from './lanes.ts'
import { OnPaper } from './on-paper.tsx'
import { OpenStep } from './open-step.tsx'
import { stepWords } from './step-words.ts'

const StandingLine = lazy(async () => ({
  default: (await import('./measured/standing-line.tsx')).StandingLine,
}))

interface StepRowProps {
  readonly row: CardRow
  readonly open: boolean
  readonly ratios: Ratios
  readonly problems: readonly Problem[]
  readonly grab: (event: PointerEvent, row: CardRow) => void
  readonly add: (row: CardRow) => void
}

/** One step: what is done, and what the bar is after it. Drawn again only when it says another thing. */
export const StepRow = memo(OneStep, (a, b) => {
  const same = a.row.step === b.row.step && a.row.row === b.row.row
  const placed =
    a.row.number === b.row.number &&
    a.row.index === b.row.index &&
    a.row.told.length === b.row.told.length
  const drawn = a.ratios.section === b.ratios.section && a.ratios.bench === b.ratios.bench
  const wrong = a.problems.length > 0 || b.problems.length > 0
  return (
    same && placed && drawn && !wrong && a.open === b.open && a.grab === b.grab && a.add === b.add
  )
})

function OneStep({ row: card, open, ratios, problems, grab, add }: StepRowProps) {
  const words = useWords()
  const trade = useTradeWord()
  const size = useExpress()
  const language = useDesk((desk) => desk.language)
  const declared = useDesk((desk) => desk.declared)
  const { row, bar, index, number, step } = card
  const operation = declared?.operations.find((o) => o.name === step.do)
  const place = `bars.${bar}[${index}]`
  const isWorked = useDesk((desk) => desk.worked !== undefined)
  // As text, so that a row is drawn again only when its own numbers change.
  const solved = useDesk(({ worked, sound }) =>
    JSON.stringify(
      Object.entries(worked?.solved ?? sound?.solved ?? {}).filter(([at]) => at.startsWith(place)),
    ),
  )
  const isMeasured = useDesk((desk) => measurementAt(desk.history?.now, { bar, index }) >= 0)
  const own = problems
  const name = capital(trade(String(step.do)))
  const said = operation
    ? stepWords(step, operation.parameters, {
        size,
        steel: (steel) => nameIn(language, steel),
        word: trade,
        solved: (key) => new Map(JSON.parse(solved) as [string, number][]).get(`${place}.${key}`),
      })
    : declared && words.route.unknown(String(step.do))
  const move = (by: -1 | 1) => {
    const job = useDesk.getState().history?.now
    if (!job) return
    const to = index + by
    if (to < 0 || to >= stepsOf(job, bar).length) return
    edit(moveStep(job, { bar, index }, { bar, index: by > 0 ? to + 1 : to }))
    focusRow({ bar, index: to })
  }
  return (
    <div className={`step${own.length > 0 ? ' wrong' : ''}`}>
      <span className="marks">{own.length > 0 ? <WrongMark /> : <RowMark row={row} />}</span>
      <div className="step-grid">
        <span
          className="number soft"
          aria-hidden="true"
          title={words.route.drag(number, name)}
          onPointerDown={(event) => grab(event, card)}
        >
          {number}
        </span>
        <button
          type="button"
          className="name"
          aria-expanded={open}
          aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown Delete"
          data-step={`${bar} ${index}`}
          onClick={() => go(open ? { bar: undefined, step: undefined } : { bar, step: index })}
          onKeyDown={(event) => {
            if (event.altKey && event.key === 'ArrowUp') move(-1)
            else if (event.altKey && event.key === 'ArrowDown') move(1)
            else if (event.key === 'Delete') {
              const job = useDesk.getState().history?.now
              if (job) edit(removeStep(job, { bar, index }))
              focusRow({ bar, index: Math.min(index, stepsOf(job ?? {}, bar).length - 2) })
            } else return
            event.preventDefault()
          }}
        >
          <b>{name}</b>
        </button>
        <span className="said note soft">
          <Measure text={said ?? ''} />
        </span>
        {row ? (
          <Account row={row} ratios={ratios} told={card.told} />
        ) : (
          <span className="unworked note soft">{isWorked && words.route.notWorked}</span>
        )}
      </div>
      {isMeasured && (
        <Suspense fallback={null}>
          <StandingLine bar={bar} index={index} />
        </Suspense>
      )}
      {row && row.warnings.length > 0 && !open && (
        <p className="warning note">
          <Tolds texts={row.warnings.map((w) => w.what)} />
        </p>
      )}
      {own.length > 0 && !open && (
        <p className="warning note">
          <b>
            <Told text={own[0].what} whole />
          </b>
        </p>
      )}
      {row && <OnPaper row={row} told={card.told} />}
      {open && <OpenStep card={card} problems={own} name={name} add={() => add(card)} />}
    </div>
  )
}

/** A mark in the margin: something is to be minded here that the shop or the plan does not usually bring. */
function RowMark({ row }: { readonly row?: Row }) {
  const said = useSaid()
  if (!row || row.warnings.length === 0) return null
  const warnings = row.warnings.map((w) => said(w.what).text).join('; ')
  return (
    <span title={warnings}>
      <CautionMark />
      <span className="hidden">{warnings}</span>
    </span>
  )
}

/** The bars in the margin: one line each, and where they come together. */
export function Lanes({
  lanes,
  at,
  own,
}: {
  readonly lanes: readonly Lane[]
  readonly at: number
  readonly own: string
}) {
  if (lanes.length === 0) return null
  const mine = lanes.find((l) => l.bar === own)?.lane ?? 0
  return (
    <span className="lanes" aria-hidden="true">
      {lanes.map((lane) => {
        const ends = lane.joins && lane.to === at
        const style = { '--lane': lane.lane, '--into': mine } as never
        return (
          <i
            key={lane.bar}
            style={style}
            className={[
              lane.from === at ? 'begins' : '',
              ends ? 'joins' : '',
              lane.to === at && !ends ? 'ends' : '',
              lane.bar === own ? 'own' : '',
            ].join(' ')}
          />
        )
      })}
    </span>
  )
}
