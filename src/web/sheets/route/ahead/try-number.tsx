import { useEffect, useState } from 'react'
import {
  type Tried,
  type Weighed,
  barNames,
  edit,
  pathOf,
  secondEngine,
  useDesk,
  useWords,
  valueAt,
  withValue,
} from '#desk'
import { Faults } from '../../../form/faults.tsx'
import { Field } from '../../../form/field.tsx'
import { useExpress } from '../../../form/say.ts'
import { moveOf, useSayWatched, watched } from './moves.ts'

interface TryNumberProps {
  readonly number: Weighed['numbers'][number]
  readonly close: () => void
}

/** A value is planned with when nothing was typed for this long, ms. */
const AFTER_TYPING = 200

/** Another value for one number: what would move, before it is taken. */
export function TryNumber({ number, close }: TryNumberProps) {
  const { ahead } = useWords()
  const job = useDesk((desk) => desk.history?.now)
  const size = useExpress()
  const declared = useDesk((desk) => desk.declared)
  const [value, setValue] = useState<unknown>()
  const [found, setFound] = useState<{ readonly tried: Tried; readonly of: unknown }>()
  const path = [...pathOf(number.at, barNames(job ?? {})), number.name]
  const place = `${number.at}.${number.name}`
  const other =
    job && value !== undefined && value !== valueAt(job, path) ? { job, place, value } : undefined
  useEffect(() => {
    if (!job || value === undefined) return
    let wanted = true
    const path = [...pathOf(number.at, barNames(job)), number.name]
    const timer = setTimeout(() => {
      secondEngine()
        .ask({ ask: 'try', job, other: withValue(job, path, value) })
        .then((tried) => wanted && setFound({ tried, of: value }))
        .catch((fault: Error) => useDesk.setState({ notice: { words: fault.message } }))
    }, AFTER_TYPING)
    return () => {
      wanted = false
      clearTimeout(timer)
    }
  }, [job, value, number])
  const step = valueAt(job, path.slice(0, -1)) as { readonly do?: unknown } | undefined
  const parameter = declared?.operations.find((o) => o.name === step?.do)?.parameters[number.name]
  if (!job || !parameter) return null
  const written = valueAt(job, path)
  const was =
    typeof written === 'string'
      ? size.typed(written, number.of)
      : size.solved(number.value, number.of)
  const tried = found?.of === value ? found?.tried : undefined
  return (
    <div className="try-number" role="group" aria-label={ahead.tryInstead(was)}>
      <Field
        parameter={parameter}
        path={['try', number.at, number.name]}
        label={ahead.tryInstead(was)}
        value={value ?? written}
        onChange={setValue}
      />
      {other && tried?.before && tried.after && <Moves tried={tried} />}
      {other && tried && <Faults problems={tried.problems} />}
      <p className="presses">
        {other && tried?.after && (
          <button
            type="button"
            className="press done"
            onClick={() => {
              edit(withValue(job, path, value))
              close()
            }}
          >
            {ahead.take}
          </button>
        )}
        <button type="button" className="press" onClick={close}>
          {ahead.leave}
        </button>
      </p>
    </div>
  )
}

/** What a change moves, a line a figure; what stays is told as softly. */
function Moves({ tried: { before, after } }: { readonly tried: Tried }) {
  const { ahead } = useWords()
  const said = useSayWatched()
  if (!before || !after) return null
  return (
    <table className="note moves" aria-label={ahead.moves}>
      <thead className="soft">
        <tr>
          <td />
          <th scope="col">{ahead.now}</th>
          <th scope="col">{ahead.then}</th>
          <td />
        </tr>
      </thead>
      <tbody>
        {watched.flatMap((what) => {
          const [was, is] = [before[what], after[what]]
          if (was === undefined || is === undefined) return []
          const by = moveOf(before, after, what)
          return (
            <tr key={what} className={by === 0 ? 'soft' : undefined}>
              <th scope="row">{ahead.whole[what]}</th>
              <td>{said.figure(what, was)}</td>
              <td>{by === 0 ? '' : said.figure(what, is)}</td>
              <td>{by === 0 ? ahead.stays : <b>{said.move(what, by, before)}</b>}</td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
