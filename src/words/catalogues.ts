import { type Catalogue, english } from './english.ts'
import type { Language } from './language.ts'

/** A language: what the app says, and the words of the trade where they are not the declarations' own. */
interface Spoken {
  readonly catalogue: Catalogue
  readonly trade: Readonly<Record<string, string>>
}

const spoken = new Map<Language, Spoken>([['en', { catalogue: english, trade: {} }]])

/** Other languages than the first are fetched when they are wanted. */
const fetched: Readonly<Partial<Record<Language, () => Promise<Spoken>>>> = {
  de: async () => {
    const [{ german }, { tradeGerman }] = await Promise.all([
      import('./german.ts'),
      import('./trade-german.ts'),
    ])
    return { catalogue: german, trade: tradeGerman }
  },
}

/** Has a language ready; to be waited for before it is chosen. */
export async function loadWords(language: Language): Promise<void> {
  const fetch = fetched[language]
  if (fetch && !spoken.has(language)) spoken.set(language, await fetch())
}

/** The catalogue of a language that is ready; English of one that is not. */
export function wordsIn(language: Language): Catalogue {
  return spoken.get(language)?.catalogue ?? english
}

/** A word of the declarations as it is shown: `closeWith` is "close with", in German "schließen mit". */
export function tradeWord(word: string, language: Language): string {
  const plain = /^[A-Z]/.test(word)
    ? word
    : word.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
  return spoken.get(language)?.trade[plain] ?? plain
}
