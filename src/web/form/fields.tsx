import { useId } from 'react'
import type { Problem } from '#problem'
import { LEFT_FREE, type ListParameter, type Parameters, isParameter } from '#parameters'
import {
  type Path,
  edit,
  placeOf,
  useDesk,
  useTradeWord,
  useWords,
  valueAt,
  withValue,
} from '#desk'
import { Faults } from './faults.tsx'
import { Field } from './field.tsx'
import { capital } from './measure.tsx'

interface FieldsProps {
  readonly parameters: Parameters
  /** Where the group stands in the job. */
  readonly path: Path
  readonly problems: readonly Problem[]
  readonly solved?: Readonly<Record<string, number>>
}

/** A group of declared parameters as fields in a row; lists as rows of their own. */
export function Fields({ parameters, path, problems, solved }: FieldsProps) {
  const job = useDesk((desk) => desk.history?.now)
  const trade = useTradeWord()
  const id = useId()
  if (!job) return null
  return (
    <>
      {Object.entries(parameters).map(([name, parameter]) => {
        const at = [...path, name]
        const own = { path: at, problems: problemsAt(problems, at), value: valueAt(job, at) }
        if (parameter.form === 'list')
          return <List key={name} parameter={parameter} problems={problems} path={at} />
        return (
          <Field
            key={name}
            {...own}
            parameter={parameter}
            solved={solved?.[placeOf(at)]}
            faultsAt={`${id}-${name}`}
            onChange={(value, within) => edit(withValue(current(), at, value), within)}
          />
        )
      })}
      {Object.entries(parameters).map(([name, parameter]) => {
        const wrong = problemsAt(problems, [...path, name])
        if (parameter.form === 'list' || wrong.length === 0) return null
        return (
          <div key={name} id={`${id}-${name}`} className="field-faults">
            <span className="note soft">{capital(trade(name))}: </span>
            <Faults problems={wrong} />
          </div>
        )
      })}
    </>
  )
}

/** The job as it stands when something is pressed, not as it was drawn. */
function current() {
  return useDesk.getState().history?.now ?? {}
}

export function problemsAt(problems: readonly Problem[], path: Path): readonly Problem[] {
  const place = placeOf(path)
  return problems.filter((problem) => problem.at === place)
}

interface ListProps {
  readonly parameter: ListParameter
  readonly path: Path
  readonly problems: readonly Problem[]
}

function List({ parameter, path, problems }: ListProps) {
  const words = useWords()
  const trade = useTradeWord()
  const job = useDesk((desk) => desk.history?.now)
  const given = valueAt(job, path)
  const items = Array.isArray(given)
    ? (given as readonly unknown[])
    : ((parameter.default ?? []) as readonly unknown[])
  const { item } = parameter
  const name = capital(trade(String(path.at(-1))))
  const set = (next: readonly unknown[]) => edit(withValue(current(), path, next))
  const blank = isParameter(item) ? (item.default ?? '') : startOf(item, items.at(-1))
  return (
    <fieldset className="list">
      <legend className="note soft">{name}</legend>
      <ol>
        {items.map((value, i) => (
          <li key={i} className="item">
            <span className="note soft count" aria-hidden="true">
              {i + 1}
            </span>
            {isParameter(item) ? (
              <Field
                bare
                label={`${name} ${i + 1}`}
                parameter={item}
                path={[...path, i]}
                value={value}
                problems={problemsAt(problems, [...path, i])}
                onChange={(next, within) =>
                  edit(withValue(current(), [...path, i], next ?? ''), within)
                }
              />
            ) : (
              <Fields parameters={item} path={[...path, i]} problems={problems} />
            )}
            <span className="acts">
              {i > 0 && (
                <button
                  type="button"
                  className="word note"
                  aria-label={`${words.route.itemUp}: ${name} ${i + 1}`}
                  onClick={() => set(items.toSpliced(i - 1, 2, items[i], items[i - 1]))}
                >
                  {words.route.itemUp}
                </button>
              )}
              {items.length > parameter.fewest && (
                <button
                  type="button"
                  className="word note"
                  aria-label={`${words.route.removeItem}: ${name} ${i + 1}`}
                  onClick={() => set(items.toSpliced(i, 1))}
                >
                  {words.route.removeItem}
                </button>
              )}
            </span>
          </li>
        ))}
      </ol>
      {items.length < parameter.most && (
        <button type="button" className="word note" onClick={() => set([...items, blank])}>
          {words.route.addItem}
        </button>
      )}
      <Faults problems={problemsAt(problems, path)} />
    </fieldset>
  )
}

/** A new item like the last one; else what must be there. */
function startOf(item: Parameters, last: unknown): unknown {
  if (typeof last === 'object' && last !== null) return { ...last }
  const start: Record<string, unknown> = {}
  for (const [name, p] of Object.entries(item)) {
    if (p.optional || p.default !== undefined) continue
    if (p.form === 'quantity') start[name] = p.free ? LEFT_FREE : ''
    else if (p.form === 'count') start[name] = p.min
    else start[name] = p.form === 'choice' ? Object.keys(p.options)[0] : ''
  }
  return start
}
