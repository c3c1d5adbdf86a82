import { useSaid } from '#desk'
import { Measure } from './measure.tsx'

/**
 * What the engine says, in the language chosen. Where that has no words for it, it stays in English
 * and says so to screen readers.
 */
export function Told({
  text,
  whole,
}: {
  readonly text: string
  /** As a sentence: with a capital and a full stop. */
  readonly whole?: boolean
}) {
  const { text: said, language, isForeign } = useSaid()(text)
  const shown = <Measure text={whole ? sentence(said) : said} />
  return isForeign ? <span lang={language}>{shown}</span> : shown
}

/** Several sentences, one after another. */
export function Tolds({ texts }: { readonly texts: readonly string[] }) {
  return texts.map((text, i) => (
    <span key={text}>
      {i > 0 && ' '}
      <Told text={text} whole />
    </span>
  ))
}

export function sentence(text: string): string {
  const first = text.charAt(0).toUpperCase() + text.slice(1)
  return /[.!?]$/.test(first) ? first : `${first}.`
}
