import { useMemo } from 'react'
import {
  type DeclaredOperation,
  type Written,
  barNames,
  edit,
  stepsOf,
  useDesk,
  useTradeWord,
  useWords,
  valueAt,
  withValue,
} from '#desk'
import { type Parameters, isParameter } from '#parameters'
import { readQuantity } from '#units'
import { FacePicture } from '../../drawing/face-picture.tsx'
import { SteelSwatch } from '../../drawing/steel-swatch.tsx'
import { Field } from '../../form/field.tsx'
import { capital } from '../../form/measure.tsx'
import { useSay } from '../../form/say.ts'
import { PatternPictures } from './pattern-pictures.tsx'
import { ShopLedger } from './shop-ledger.tsx'

/** The pattern wished for, how fine, and of which steels. */
export function PatternColumn() {
  const words = useWords()
  const trade = useTradeWord()
  const declared = useDesk((desk) => desk.declared)
  const job = useDesk((desk) => desk.history?.now)
  if (!job || !declared) return null
  const path = ['wishes', 'pattern']
  return (
    <aside className="column pattern" aria-label={words.piece.pattern}>
      <header className="head">
        <h2 className="title">{words.piece.pattern}</h2>
        <span className="note soft">{words.piece.patternNote}</span>
      </header>
      <div className="ledger">
        <Field
          parameter={declared.wishes.pattern}
          path={path}
          label={capital(trade('pattern'))}
          value={valueAt(job, path)}
          onChange={(value, within) =>
            edit(withValue(useDesk.getState().history?.now ?? {}, path, value), within)
          }
        />
      </div>
      <FacePicture label={words.take.face} />
      <PatternPictures />
      <Fineness />
      <Steels job={job} operations={declared.operations} />
      <ShopLedger />
    </aside>
  )
}

const MOST_PER_INCH = 120

/** Lines across the face on a rule, from bold to fine. */
function Fineness() {
  const words = useWords()
  const say = useSay()
  const units = useDesk((desk) => desk.units)
  const declared = useDesk((desk) => desk.declared)
  const job = useDesk((desk) => desk.history?.now)
  const worked = useDesk((desk) => desk.worked)
  const text = valueAt(job, ['wishes', 'lines'])
  const read = typeof text === 'string' ? readQuantity(text, 'lines').ok?.si : undefined
  const perInch = read === undefined ? 0 : read * 0.0254
  const set = (value: unknown, within?: string) =>
    edit(withValue(useDesk.getState().history?.now ?? {}, ['wishes', 'lines'], value), within)
  if (!declared) return null
  return (
    <section className="fineness">
      <div className="ledger">
        <Field
          parameter={declared.wishes.lines}
          path={['wishes', 'lines']}
          label={words.piece.fineOrBold}
          value={text}
          onChange={set}
        />
      </div>
      <div className="rule">
        <input
          type="range"
          min={0}
          max={MOST_PER_INCH}
          value={Math.round(perInch)}
          aria-label={words.piece.fineOrBold}
          aria-valuetext={words.piece.lines(Math.round(perInch))}
          onChange={(event) => {
            const n = Number(event.currentTarget.value)
            const typed = units === 'metric' ? `${(n / 25.4).toFixed(2)} per mm` : `${n} per inch`
            set(n === 0 ? undefined : typed, 'rule of lines')
          }}
        />
        <svg className="ticks" viewBox="0 0 120 11" preserveAspectRatio="none" aria-hidden="true">
          <path
            vectorEffect="non-scaling-stroke"
            d={Array.from({ length: 25 }, (_, i) => `M${i * 5} 0V${i % 6 === 0 ? 11 : 5}`).join('')}
          />
        </svg>
        <p className="note soft ends">
          <span>{words.piece.bold}</span>
          <span>{words.piece.fine}</span>
        </p>
      </div>
      <p className="note soft">
        {worked?.sound &&
          (worked.lines
            ? read === undefined
              ? say.lines(worked.lines.perMetre)
              : words.piece.linesFound(say.lines(read), say.lines(worked.lines.perMetre))
            : words.piece.linesNone)}
      </p>
    </section>
  )
}

/** The steels the stacks are laid of; changing one changes it in every sheet. */
function Steels({
  job,
  operations,
}: {
  readonly job: Written
  readonly operations: readonly DeclaredOperation[]
}) {
  const words = useWords()
  const steels = useMemo(() => [...new Set(steelsOf(job, operations))], [job, operations])
  return (
    <section className="steels">
      <h3>{words.piece.steels}</h3>
      {steels.length === 0 && <p className="note soft">{words.piece.noSteels}</p>}
      <div className="ledger">
        {steels.map((steel) => (
          <div key={steel} className="steel-line">
            <SteelSwatch steel={steel} />
            <Field
              parameter={{ form: 'steel', help: '' }}
              help={words.piece.steelNote}
              path={['steels of the stacks', steel]}
              label={words.piece.steelOf(steel)}
              value={steel}
              onChange={(value) => {
                if (typeof value === 'string') edit(replaceSteel(job, operations, steel, value))
              }}
            />
          </div>
        ))}
      </div>
    </section>
  )
}

type Visit = (value: string) => string

/** Every steel named anywhere in the route, by what the operations declare; `visit` may change it. */
function eachSteel(group: Written, parameters: Parameters, visit: Visit): Written {
  const one = (p: Parameters[string] | undefined, value: unknown): unknown => {
    if (p?.form === 'steel') return typeof value === 'string' ? visit(value) : value
    if (p?.form !== 'list' || !Array.isArray(value)) return value
    const { item } = p
    return value.map((v: unknown) =>
      isParameter(item)
        ? one(item, v)
        : typeof v === 'object' && v !== null
          ? eachSteel(v as Written, item, visit)
          : v,
    )
  }
  return Object.fromEntries(
    Object.entries(group).map(([name, value]) => [name, one(parameters[name], value)]),
  )
}

function steelsOf(job: Written, operations: readonly DeclaredOperation[]): string[] {
  const found: string[] = []
  for (const bar of barNames(job))
    for (const step of stepsOf(job, bar))
      eachSteel(step, parametersOf(step, operations), (steel) => {
        found.push(steel)
        return steel
      })
  return found
}

function replaceSteel(
  job: Written,
  operations: readonly DeclaredOperation[],
  from: string,
  to: string,
): Written {
  return {
    ...job,
    bars: Object.fromEntries(
      barNames(job).map((bar) => [
        bar,
        stepsOf(job, bar).map((step) =>
          eachSteel(step, parametersOf(step, operations), (steel) => (steel === from ? to : steel)),
        ),
      ]),
    ),
  }
}

function parametersOf(step: Written, operations: readonly DeclaredOperation[]): Parameters {
  return operations.find((o) => o.name === step.do)?.parameters ?? {}
}
