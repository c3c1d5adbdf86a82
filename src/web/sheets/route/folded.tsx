import { type ReactNode, Suspense, useState } from 'react'

/** What stands open, by name: going to another sheet and back folds nothing. */
const opened = new Set<string>()

interface FoldedProps {
  readonly name: string
  readonly title: string
  readonly isOpen?: boolean
  readonly children: () => ReactNode
}

/** A heading that unfolds what is under it; neither fetched nor worked out before. */
export function Folded({ name, title, isOpen, children }: FoldedProps) {
  const [open, setOpen] = useState(isOpen ?? opened.has(name))
  return (
    <section className={open ? 'folded' : 'folded shut'}>
      <h3>
        <button
          type="button"
          className="fold"
          aria-expanded={open}
          onClick={() => {
            setOpen(!open)
            if (open) opened.delete(name)
            else opened.add(name)
          }}
        >
          {title}
        </button>
        <span className="on-paper">{title}</span>
      </h3>
      {open && <Suspense fallback={<p aria-busy="true" />}>{children()}</Suspense>}
    </section>
  )
}
