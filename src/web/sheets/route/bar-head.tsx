import { useId } from 'react'
import { edit, removeBar, renameBar, useDesk, useWords, withValue } from '#desk'

/** The head of one bar of several: its name, and whether it becomes the piece. */
export function BarHead({ bar, finish }: { readonly bar: string; readonly finish: boolean }) {
  const words = useWords()
  const id = useId()
  const declared = useDesk((desk) => desk.declared)
  const act = (change: (job: Readonly<Record<string, unknown>>) => typeof job) => {
    const job = useDesk.getState().history?.now
    if (job) edit(change(job))
  }
  return (
    <div className="bar-head">
      <label className="hidden" htmlFor={id}>
        {words.route.renameBar}
      </label>
      <input
        key={bar}
        id={id}
        type="text"
        className="bar-name"
        autoComplete="off"
        maxLength={60}
        size={Math.max(4, bar.length)}
        defaultValue={bar}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur()
        }}
        onBlur={(event) => {
          const name = event.currentTarget.value.trim()
          act((job) => renameBar(job, bar, name, declared?.operations ?? []))
        }}
      />
      {finish ? (
        <span className="note soft">{words.route.finishBar}</span>
      ) : (
        <button
          type="button"
          className="word note"
          onClick={() => act((job) => withValue(job, ['finish'], bar))}
        >
          {words.route.makeFinish}
        </button>
      )}
      <button
        type="button"
        className="word note"
        aria-label={`${words.route.removeBar}: ${bar}`}
        onClick={() => act((job) => removeBar(job, bar))}
      >
        {words.route.removeBar}
      </button>
    </div>
  )
}
