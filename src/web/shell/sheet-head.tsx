import type { ReactNode } from 'react'
import { useDesk } from '#desk'

/** The head of a sheet: what the job is called, a note at the right, an ink rule below. */
export function SheetHead({
  title,
  children,
}: {
  readonly title?: string
  readonly children?: ReactNode
}) {
  const name = useDesk((desk) => desk.history?.now.name)
  return (
    <header className="head">
      {title === undefined ? (
        <h1 className="title">{typeof name === 'string' ? setApostrophes(name) : '–'}</h1>
      ) : (
        <h2 className="title">{title}</h2>
      )}
      <div className="note soft">{children}</div>
    </header>
  )
}

/** A typed apostrophe as it is set. */
export function setApostrophes(text: string): string {
  return text.replace(/(?<=\p{L})'(?=\p{L})/gu, '’')
}
