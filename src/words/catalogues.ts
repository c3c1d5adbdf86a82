import { type Catalogue, english } from './english.ts'
import { german } from './german.ts'
import type { Language } from './language.ts'

const catalogues: Readonly<Record<Language, Catalogue>> = { en: english, de: german }

export function wordsIn(language: Language): Catalogue {
  return catalogues[language]
}
