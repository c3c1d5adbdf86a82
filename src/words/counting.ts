import type { Language } from './language.ts'

/** How a language counts: the noun under or after a number that is set apart, and the two together. */
export function counting(language: Language) {
  const rules = new Intl.PluralRules(language)
  const nounFor = (n: number, singular: string, many: string) =>
    rules.select(n) === 'one' ? singular : many
  const plural = (n: number, singular: string, many: string) => `${n} ${nounFor(n, singular, many)}`
  return { nounFor, plural }
}
