import { type Catalogue, english } from './english.ts'
import type { Language } from './language.ts'
import { type FindSentence, sentencesBy } from './sentences/find-sentence.ts'

/**
 * A language: what the app says, the words of the trade where they are not the declarations' own, and
 * the sentences of the engine.
 */
interface Spoken {
  readonly catalogue: Catalogue
  readonly trade: Translations
  readonly sentences: Translations
  readonly sentence: FindSentence
}

type Translations = Readonly<Record<string, string>>

/** What a shop calls otherwise than the job file does. */
const shopWords: Translations = {
  mass: 'weight',
  'mass within': 'weight within',
  'hammer mass': 'hammer weight',
  'stamp share': 'stamp, share pressed',
}

const spoken = new Map<Language, Spoken>([
  ['en', { catalogue: english, trade: shopWords, sentences: {}, sentence: (sentence) => sentence }],
])

/** Other languages than the first are fetched when they are wanted. */
const fetched: Readonly<Partial<Record<Language, () => Promise<Spoken>>>> = {
  de: async () => {
    const [{ german }, { tradeGerman }, { shopGerman }, { germanSentences }] = await Promise.all([
      import('./german.ts'),
      import('./trade-german.ts'),
      import('./shop-german.ts'),
      import('./sentences/german/all.ts'),
    ])
    const trade = { ...tradeGerman, ...shopGerman }
    return {
      catalogue: german,
      trade,
      sentences: germanSentences,
      sentence: sentencesBy(germanSentences, (word) => trade[spaced(word)]),
    }
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
  const plain = spaced(word)
  return spoken.get(language)?.trade[plain] ?? plain
}

/** A name as it is called in a language: `wrought iron` is “Schweißeisen”; most names are the same. */
export function nameIn(language: Language, name: string): string {
  return spoken.get(language)?.trade[name] ?? name
}

/** A sentence as it is told, and the language that is: English where there are no other words for it. */
export interface Told {
  readonly text: string
  readonly language: Language
}

/** A sentence of the engine, which speaks English, in the language chosen. */
export function said(sentence: string, language: Language): Told {
  const there = spoken.get(language)
  const text = there?.sentence(sentence) ?? there?.trade[spaced(sentence)]
  return text === undefined ? { text: sentence, language: 'en' } : { text, language }
}

/** All that is there of a language that is ready, by the English: what holds it complete reads this. */
export function translationsIn(
  language: Language,
): { readonly trade: Translations; readonly sentences: Translations } | undefined {
  return spoken.get(language)
}

/** `closeWith` is two words. */
function spaced(word: string): string {
  return /^[A-Z]/.test(word) ? word : word.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
}
