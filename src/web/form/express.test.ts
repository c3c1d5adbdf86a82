import { beforeAll, expect, test } from 'vitest'
import { loadWords, nameIn } from '#words'
import { expressIn } from './express.ts'

beforeAll(() => loadWords('de'))

test('fields and rows say a size as typed in its own units, marked where it is rounded to others', () => {
  const inch = expressIn('inch', 'en')
  expect(inch.typed('5 1/4 in', 'length')).toBe('5 1/4 in')
  expect(inch.typed('0.0625 in', 'length')).toBe('0.0625 in')
  expect(inch.typed('140 mm', 'length')).toBe('≈ 5 33/64 in')
  expect(inch.solved(0.14, 'length')).toBe('5 33/64 in')
  expect(expressIn('metric', 'en').typed('5 1/4 in', 'length')).toBe('133.35 mm')
})

test('German writes decimal commas, and says a pitch in words', () => {
  const german = expressIn('metric', 'de')
  expect(german.typed('5.5 mm', 'length')).toBe('5,5 mm')
  expect(german.typed('1/8 in', 'length')).toBe('≈ 3,18 mm')
  expect(german.typed('18.5 mm pitch', 'twist')).toBe('18,5 mm je Umdrehung')
})

test('steels and patterns have their German names where they have one, and no other name is touched', () => {
  expect(nameIn('de', 'wrought iron')).toBe('Schweißeisen')
  expect(nameIn('de', 'three-bar opposed twist, wrapped edge')).toContain('Torsion')
  expect(nameIn('de', '14C28N')).toBe('14C28N')
  expect(nameIn('en', 'wrought iron')).toBe('wrought iron')
})
