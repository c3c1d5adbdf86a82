import { beforeAll, expect, test } from 'vitest'
import { type Language, loadWords, wordsIn } from './index.ts'

beforeAll(() => loadWords('de'))

/** Everything a catalogue says, its holes filled with one. */
function saidOfOne(words: unknown, at = ''): [at: string, text: string][] {
  if (typeof words === 'string') return [[at, words]]
  if (typeof words === 'function') {
    const fill = (one: unknown) =>
      (words as (...holes: unknown[]) => unknown)(...Array(words.length).fill(one))
    let told: unknown
    try {
      told = fill(1)
    } catch {
      // It is told the figure as it is printed.
      told = fill('1')
    }
    return typeof told === 'string' ? [[at, told]] : []
  }
  return Object.entries(words as object).flatMap(([key, inner]) =>
    // A list of heights is no count.
    key === 'recipe' ? [] : saidOfOne(inner, `${at}.${key}`),
  )
}

const several: Readonly<Record<Language, RegExp>> = {
  en: /(?<!of )\b1 (?!is\b|as\b|across\b|stands\b)[a-z]+s\b/,
  de: /(?<!von )\b1 (?:Hitzen|Lagen|Schläge|Drücke|Bleche|Wege|Minuten|Stunden|Fehlern|Stücke|Schritte|Fassungen|Zahlen|Stähle|Stäbe)\b/,
}

test.each(['en', 'de'] as const)('one is no plural: %s', (language) => {
  const texts = saidOfOne(wordsIn(language))
  expect(texts.length).toBeGreaterThan(300)
  expect(texts.filter(([, text]) => several[language].test(text))).toEqual([])
})
