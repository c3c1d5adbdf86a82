/** Languages the app speaks. A new one is one catalogue beside `english.ts`, checked by the compiler. */
export const languages = { en: 'English', de: 'Deutsch' } as const

export type Language = keyof typeof languages

/** The language for a tag such as `de-AT`; English where there is none. */
export function languageOf(tag: string): Language {
  const short = tag.slice(0, 2).toLowerCase()
  return short in languages ? (short as Language) : 'en'
}
