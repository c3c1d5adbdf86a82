import { lazy, useLayoutEffect, useRef } from 'react'
import type { Problem } from '#problem'
import {
  type DrawnBar,
  type Row,
  closeOpen,
  duplicateStep,
  edit,
  measurementAt,
  moveStep,
  removeStep,
  stepsOf,
  useDesk,
  useWords,
  withValue,
} from '#desk'
import { BarDrawing } from '../../drawing/bar-drawing.tsx'
import { HeatSwatch } from '../../drawing/heat-swatch.tsx'
import { BENCH, SECTION } from '../../drawing/lay-out-build.ts'
import { scaleToFit } from '../../drawing/scale.ts'
import { usePen } from '../../drawing/use-pen.ts'
import { CautionMark, Faults } from '../../form/faults.tsx'
import { Field } from '../../form/field.tsx'
import { Fields } from '../../form/fields.tsx'
import { Measure } from '../../form/measure.tsx'
import { useSay } from '../../form/say.ts'
import { Told } from '../../form/told.tsx'
import type { CardRow } from './card-rows.ts'
import { focusRow, showOpened } from './focus-step.ts'
import { Folded } from './folded.tsx'
import { useFetchedHeatTimes } from './heat-times.ts'
import { StepFacts } from './step-facts.tsx'

const MeasuredHere = lazy(async () => ({
  default: (await import('./measured/measured-here.tsx')).MeasuredHere,
}))

const noteParameter = { form: 'text', optional: true, longest: 2000, help: '' } as const

interface OpenStepProps {
  readonly card: CardRow
  readonly problems: readonly Problem[]
  readonly name: string
  readonly add: () => void
}

/** The open row: before and after, the numbers of the step to be changed in place, and its cautions. */
export function OpenStep({ card, problems, name, add }: OpenStepProps) {
  const words = useWords()
  const { bar, index, step, row } = card
  const declared = useDesk((desk) => desk.declared)
  const solved = useDesk((desk) => desk.worked?.solved)
  const length = useDesk((desk) => stepsOf(desk.history?.now ?? {}, bar).length)
  const isMeasured = useDesk((desk) => measurementAt(desk.history?.now, { bar, index }) >= 0)
  const operation = declared?.operations.find((o) => o.name === step.do)
  const opened = useRef<HTMLDivElement>(null)
  useLayoutEffect(() => {
    if (opened.current) showOpened(opened.current, { bar, index })
  }, [bar, index])
  const path = ['bars', bar, index]
  const place = `bars.${bar}[${index}]`
  const shown = Object.keys(operation?.parameters ?? {})
  const placed = (at: string) => shown.some((key) => at.startsWith(`${place}.${key}`))
  const act = (change: (job: Readonly<Record<string, unknown>>) => typeof job) => () => {
    const job = useDesk.getState().history?.now
    if (job) edit(change(job))
  }
  return (
    <div ref={opened} className="open-step" role="group" aria-label={name}>
      <p className="note soft">{operation && <Told text={operation.summary} />}</p>
      {row && <BeforeAndAfter row={row} />}
      <div className="fields">
        {operation && (
          <Fields
            parameters={operation.parameters}
            path={path}
            problems={problems}
            solved={solved}
          />
        )}
        {operation && shown.length === 0 && <p className="note soft">{words.route.nothingAsked}</p>}
        <Field
          parameter={noteParameter}
          help={words.route.notePlace}
          label={words.route.note}
          path={[...path, 'note']}
          value={step.note}
          onChange={(value, within) =>
            edit(withValue(useDesk.getState().history?.now ?? {}, [...path, 'note'], value), within)
          }
        />
      </div>
      <Faults problems={problems.filter(({ at }) => !placed(at))} />
      <div className="acts">
        <button type="button" className="word" onClick={add}>
          {words.route.addHere}
        </button>
        <button
          type="button"
          className="word"
          onClick={act((job) => duplicateStep(job, { bar, index }))}
        >
          {words.route.duplicate}
        </button>
        <button
          type="button"
          className="word"
          disabled={index === 0}
          onClick={act((job) => moveStep(job, { bar, index }, { bar, index: index - 1 }))}
        >
          {words.route.up}
        </button>
        <button
          type="button"
          className="word"
          disabled={index >= length - 1}
          onClick={act((job) => moveStep(job, { bar, index }, { bar, index: index + 2 }))}
        >
          {words.route.down}
        </button>
        <button
          type="button"
          className="word"
          onClick={() => {
            closeOpen()
            act((job) => removeStep(job, { bar, index }))()
            focusRow({ bar, index: Math.min(index, length - 2) })
          }}
        >
          {words.route.remove}
        </button>
        <button
          type="button"
          className="word"
          onClick={() => {
            closeOpen()
            focusRow({ bar, index })
          }}
        >
          {words.route.close}
        </button>
      </div>
      <Folded
        name={`measured ${place}`}
        title={words.ahead.measured}
        isOpen={isMeasured || undefined}
      >
        {() => <MeasuredHere bar={bar} index={index} />}
      </Folded>
      {row && <RowNotes row={row} />}
    </div>
  )
}

/** Px for the bars before and after, lying side by side. */
const ROOM = 360

function BeforeAndAfter({ row }: { readonly row: Row }) {
  const words = useWords()
  const say = useSay()
  const bars = [...row.before, row.after]
  const longest = Math.max(...bars.map((b) => b.size.length + b.size.width))
  const scale = scaleToFit(longest, ROOM * usePen())
  const draw = (bar: DrawnBar, caption: string, key: string) => (
    <figure key={key}>
      <span className="pair">
        <BarDrawing
          bar={bar}
          view={SECTION}
          ratio={scale.ratio}
          label={words.route.sectionOf(say.size(bar.size))}
        />
        <BarDrawing
          bar={bar}
          view={BENCH}
          ratio={scale.ratio}
          label={words.route.benchOf(say.size(bar.size))}
        />
      </span>
      <figcaption className="note soft">
        {caption} <Measure text={say.size(bar.size)} />
      </figcaption>
    </figure>
  )
  return (
    <div className="before-after">
      {row.before.map((bar, i) => draw(bar, words.route.before, `before ${i}`))}
      {row.heats.length > 0 && (
        <span className="between" aria-hidden="true">
          {row.heats.flatMap((heat, i) =>
            Array.from({ length: Math.min(heat.count, 12) }, (_, k) => (
              <HeatSwatch key={`${i} ${k}`} temperature={heat.temperature} />
            )),
          )}
        </span>
      )}
      {draw(row.after, words.route.after, 'after')}
      <span className="note soft scale">{scale.words}</span>
    </div>
  )
}

function RowNotes({ row }: { readonly row: Row }) {
  useFetchedHeatTimes()
  return (
    <div className="row-notes note">
      <StepFacts row={row} />
      {row.cautions.map((c) => (
        <p key={c.name}>
          <CautionMark />{' '}
          <b>
            <Told text={c.danger} />
          </b>{' '}
          <Told text={c.care} />{' '}
          <span className="soft">
            (<Told text={c.restsOn} />)
          </span>
        </p>
      ))}
    </div>
  )
}
