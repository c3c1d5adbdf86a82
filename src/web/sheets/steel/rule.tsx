import type { ReactNode } from 'react'

interface RuleProps {
  readonly label: string
  readonly value: number
  readonly from: number
  readonly to: number
  readonly step: number
  /** Figures under the rule, and how each is written. */
  readonly marks: readonly number[]
  readonly say: (value: number) => string
  readonly shown: ReactNode
  readonly spoken: string
  readonly onChange: (value: number) => void
}

/** A draughtsman's rule with a heavy mark that can be moved. */
export function Rule(props: RuleProps) {
  const { label, value, from, to, step, marks, say, shown, spoken, onChange } = props
  const place = (v: number) => `${((v - from) / (to - from || 1)) * 100}%`
  return (
    <label className="mark-rule">
      <span className="name">{label}</span>
      <span className="line">
        <input
          type="range"
          min={from}
          max={to}
          step={step}
          value={value}
          aria-valuetext={spoken}
          onChange={(event) => onChange(Number(event.currentTarget.value))}
        />
        <span className="scale" aria-hidden="true">
          {Array.from({ length: 21 }, (_, i) => (
            <i key={i} className={i % 5 === 0 ? 'long' : ''} style={{ left: `${i * 5}%` }} />
          ))}
          {marks.map((mark, i) => (
            <b key={i} className="note" style={{ left: place(mark) }}>
              {say(mark)}
            </b>
          ))}
        </span>
      </span>
      <span className="value">{shown}</span>
    </label>
  )
}

/** Words of which one is chosen. */
export function Choice<T extends string>({
  label,
  of,
  chosen,
  say,
  disabled = [],
  onChoose,
}: {
  readonly label: string
  readonly of: readonly T[]
  readonly chosen: T | undefined
  readonly say: (one: T) => string
  readonly disabled?: readonly T[]
  readonly onChoose: (one: T) => void
}) {
  return (
    <div className="choice" role="group" aria-label={label}>
      {of.map((one) => (
        <button
          key={one}
          type="button"
          className="word"
          aria-pressed={one === chosen}
          disabled={disabled.includes(one)}
          onClick={() => onChoose(one)}
        >
          <span>{say(one)}</span>
        </button>
      ))}
    </div>
  )
}
