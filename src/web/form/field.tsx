import { useId, useRef, useState } from 'react'
import type { Problem } from '#problem'
import { LEFT_FREE, type Parameter } from '#parameters'
import { type QuantityKind, readQuantity } from '#units'
import { nameIn, plainDecimals, withDecimalsOf } from '#words'
import { type Path, IN_HAND, openBars, placeOf, useDesk, useTradeWord, useWords } from '#desk'
import { Faults } from './faults.tsx'
import { Measure, bareUnit, capital } from './measure.tsx'
import { useExpress } from './say.ts'
import { Told } from './told.tsx'

export interface FieldProps {
  readonly parameter: Parameter
  readonly path: Path
  readonly value: unknown
  /** What the planner made of a number left free, SI. */
  readonly solved?: number
  readonly problems?: readonly Problem[]
  readonly label?: string
  /** Where its faults are told, if not under the field itself. */
  readonly faultsAt?: string
  /** The label is for the ear only: what stands around the field says what it is. */
  readonly bare?: boolean
  /** What the app says of it, in the language chosen; else the declaration speaks. */
  readonly help?: string
  readonly onChange: (value: unknown, within?: string) => void
}

/** One declared number, word or choice, edited where it stands. */
export function Field(props: FieldProps) {
  const { parameter: p, path, problems = [], bare } = props
  const trade = useTradeWord()
  const id = useId()
  const label = props.label ?? capital(trade(String(path.at(-1))))
  const wrong = problems.length > 0
  const control = {
    ...props,
    id,
    label,
    wrong,
    describedBy: `${id}-help${wrong ? ` ${props.faultsAt ?? `${id}-faults`}` : ''}`,
  }
  return (
    <div className={wrong ? 'field wrong' : 'field'} data-place={placeOf(path)}>
      <label htmlFor={id} className={bare ? 'hidden' : 'note soft'}>
        {label}
      </label>
      <Control {...control} />
      <span id={`${id}-help`} className="help note soft">
        {props.help ?? <Help parameter={p} value={props.value} />}
      </span>
      {props.faultsAt === undefined && (
        <div id={`${id}-faults`}>
          <Faults problems={problems} />
        </div>
      )}
    </div>
  )
}

/** What is asked, and what is chosen. */
function Help({ parameter: p, value }: { readonly parameter: Parameter; readonly value: unknown }) {
  const chosen = p.form === 'choice' ? p.options[String(value ?? p.default)] : undefined
  return (
    <>
      {p.help !== '' && <Told text={p.help} />}
      {p.help !== '' && chosen && ': '}
      {chosen && <Told text={chosen} />}
    </>
  )
}

interface ControlProps extends FieldProps {
  readonly id: string
  readonly label: string
  readonly wrong: boolean
  readonly describedBy: string
}

function Control(props: ControlProps) {
  switch (props.parameter.form) {
    case 'choice':
      return <Choice {...props} options={Object.keys(props.parameter.options)} translate />
    case 'steel':
      return <SteelChoice {...props} />
    case 'bar':
      return <Choice {...props} options={[IN_HAND, ...openBars()]} />
    case 'flag':
      return <Flag {...props} />
    default:
      return <Typed {...props} />
  }
}

function Typed(props: ControlProps) {
  const { parameter: p, value, solved, onChange, id, describedBy, wrong, path } = props
  const units = useDesk((desk) => desk.units)
  const language = useDesk((desk) => desk.language)
  const say = useExpress()
  const words = useWords()
  const [draft, setDraft] = useState<string>()
  const sitting = useRef(0)
  const typed = useRef(false)
  const kind = p.form === 'quantity' ? p.of : undefined
  const written = value === undefined ? '' : String(value)
  const free = kind !== undefined && written === LEFT_FREE
  const usual = p.default === undefined ? undefined : String(p.default)
  const shown = free
    ? solved === undefined
      ? '?'
      : say.solved(solved, kind)
    : written === ''
      ? usual !== undefined
        ? kind
          ? say.typed(usual, kind)
          : usual
        : words.piece.notSet
      : kind
        ? say.typed(written, kind)
        : path.at(-1) === 'pattern'
          ? nameIn(language, written)
          : written
  /** As it stands in the file, but for the mark of its decimals. */
  const ownText = kind ? withDecimalsOf(language, written) : written
  const readIn = (text: string) =>
    readTyped(kind ? plainDecimals(language, text) : text, p, kind && bareUnit(kind, units))
  const within = () => `${placeOf(path)} ${sitting.current}`
  const type = (text: string) => {
    typed.current = true
    setDraft(text)
    const read = readIn(text)
    if (read.sense) onChange(read.value, within())
  }
  return (
    <span className={`typed${written === '' ? ' unset' : ''}${free ? ' free' : ''}`}>
      <span aria-hidden="true" className="shown">
        <Measure text={draft ?? shown} />
      </span>
      <input
        id={id}
        type="text"
        inputMode={p.form === 'count' ? 'numeric' : undefined}
        autoComplete="off"
        spellCheck={p.form === 'text'}
        aria-describedby={describedBy}
        aria-invalid={wrong || undefined}
        value={draft ?? shown}
        onFocus={(event) => {
          sitting.current++
          typed.current = false
          setDraft(ownText)
          const field = event.currentTarget
          // Selecting would take the focus back, were it elsewhere by then, and swallow what was typed by then.
          const select = () => {
            if (document.activeElement === field && !typed.current) field.select()
          }
          queueMicrotask(select)
          // A press of the pointer sets its caret after the focus.
          requestAnimationFrame(select)
        }}
        onChange={(event) => type(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur()
          if (event.key === 'Escape' && draft !== undefined) {
            event.stopPropagation()
            event.currentTarget.blur()
          }
        }}
        onBlur={() => {
          if (draft !== undefined && draft !== ownText) {
            const read = readIn(draft)
            // Nonsense is kept too: it is told where it stands, and undone like anything else.
            onChange(read.value, within())
          }
          setDraft(undefined)
        }}
      />
    </span>
  )
}

/** What was typed as the job file holds it, and whether it makes sense yet. */
function readTyped(
  text: string,
  p: Parameter,
  unit: string | undefined,
): { readonly value: unknown; readonly sense: boolean } {
  const plain = text.trim()
  if (plain === '')
    return p.form === 'quantity' && p.free && !p.optional && p.default === undefined
      ? { value: LEFT_FREE, sense: false }
      : { value: undefined, sense: p.optional === true || p.default !== undefined }
  if (p.form === 'count') {
    const count = Number(plain)
    return { value: Number.isFinite(count) ? count : plain, sense: Number.isInteger(count) }
  }
  if (p.form !== 'quantity') return { value: text, sense: true }
  if (plain === LEFT_FREE) return { value: LEFT_FREE, sense: p.free !== undefined }
  const bare = /^[−-]?[\d\s./,-]+$/.test(plain)
  const whole = bare && unit !== undefined ? `${plain} ${unit}` : plain
  return { value: whole, sense: readQuantity(whole, p.of as QuantityKind).ok !== undefined }
}

function Choice({
  options,
  translate,
  ...props
}: ControlProps & { readonly options: readonly string[]; readonly translate?: boolean }) {
  const { parameter: p, value, onChange, id, describedBy, wrong } = props
  const trade = useTradeWord()
  const language = useDesk((desk) => desk.language)
  const words = useWords()
  const now =
    value === undefined ? (p.default === undefined ? '' : String(p.default)) : String(value)
  const all = now === '' || options.includes(now) ? options : [now, ...options]
  return (
    <span className={`chosen${value === undefined ? ' unset' : ''}`}>
      <select
        id={id}
        value={now}
        aria-describedby={describedBy}
        aria-invalid={wrong || undefined}
        onChange={(event) => onChange(event.currentTarget.value || undefined)}
      >
        {(now === '' || p.optional) && (
          <option value="">{p.optional ? words.piece.notSet : words.route.choose}</option>
        )}
        {all.map((option) => (
          <option key={option} value={option}>
            {translate ? trade(option) : nameIn(language, option)}
          </option>
        ))}
      </select>
    </span>
  )
}

function SteelChoice(props: ControlProps) {
  const declared = useDesk((desk) => desk.declared)
  const own = useDesk((desk) => desk.history?.now.steels)
  const names = [
    ...(Array.isArray(own) ? own.map((steel) => String((steel as { name?: unknown }).name)) : []),
    ...(declared?.steels.map((steel) => steel.name) ?? []),
  ]
  return <Choice {...props} options={names} />
}

function Flag({ parameter: p, value, onChange, id, describedBy }: ControlProps) {
  const words = useWords()
  const now = typeof value === 'boolean' ? value : p.default === true
  return (
    <span className={`chosen${value === undefined ? ' unset' : ''}`}>
      <select
        id={id}
        value={now ? 'yes' : 'no'}
        aria-describedby={describedBy}
        onChange={(event) => onChange(event.currentTarget.value === 'yes')}
      >
        <option value="yes">{words.route.yes}</option>
        <option value="no">{words.route.no}</option>
      </select>
    </span>
  )
}
