import { expect, test } from 'vitest'
import { sentencesBy } from './find-sentence.ts'

const find = sentencesBy(
  {
    'weld the stack first': 'das Paket erst schweißen',
    'Look along it.': 'Daran entlangsehen.',
    '{0} deep': '{0} tief',
    '{0} deep or less': '{0} tief oder weniger',
    'the bar “{0}” is used up': 'der Stab „{0!}“ ist verbraucht',
    'the bar is {0} too small in {1}': 'der Stab ist in der {1} {0} zu klein',
    'opening the cuts': 'das Öffnen der Schnitte',
    '{0} pulls young welds open': '{0} zieht junge Schweißungen auf',
    '{0} hardens through': '{0} härtet durch',
    '{0} stays soft at the middle ({1})': '{0} bleibt in der Mitte weich ({1})',
    'In {0}, thick: {1}.': '{0}, dick: {1}.',
    'one of: {0}': 'eines von: {0}',
  },
  (word) => ({ length: 'Länge', edge: 'Schneide', oil: 'Öl', holes: 'Löcher', or: 'oder' })[word],
)

test.each([
  // A capital and a full stop come back as they came.
  ['weld the stack first', 'das Paket erst schweißen'],
  ['Weld the stack first.', 'Das Paket erst schweißen.'],
  ['look along it', 'Daran entlangsehen'],
  // What says most is tried first.
  ['4 mm deep or less', '4 mm tief oder weniger'],
  ['4 mm deep', '4 mm tief'],
  // What is put in takes its new place, is said too where it is a word or a sentence, and stays where it was typed.
  ['the bar is 1/8 in too small in length', 'der Stab ist in der Länge 1/8 in zu klein'],
  ['the bar “edge” is used up', 'der Stab „edge“ ist verbraucht'],
  [
    'Opening the cuts pulls young welds open',
    'Das Öffnen der Schnitte zieht junge Schweißungen auf',
  ],
  [
    'In oil, thick: 1084 hardens through; O1 hardens through.',
    'Öl, dick: 1084 härtet durch; O1 härtet durch.',
  ],
  ['one of: holes or x, length', 'eines von: Löcher oder x, Länge'],
  // A template that meets only a part of the sentence gives way to one that explains it all.
  [
    'In oil, thick: 1084 stays soft at the middle (4 mm deep); O1 stays soft at the middle (6 mm deep).',
    'Öl, dick: 1084 bleibt in der Mitte weich (4 mm tief); O1 bleibt in der Mitte weich (6 mm tief).',
  ],
  // Sentences in a row.
  [
    'Look along it. The bar is 2 mm too small in length.',
    'Daran entlangsehen. Der Stab ist in der Länge 2 mm zu klein.',
  ],
])('%s', (english, german) => {
  expect(find(english)).toBe(german)
})

test('what is not there is not said by halves', () => {
  expect(find('Look along it. Nobody wrote this down.')).toBeUndefined()
  expect(find('shallow')).toBeUndefined()
})
