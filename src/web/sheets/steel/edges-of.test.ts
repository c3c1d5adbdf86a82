import { expect, test } from 'vitest'
import { readValues } from '#parameters'
import { pieceKinds } from '#piece'
import { wordsIn } from '#words'
import { edgesOf } from './edges-of.ts'

const viewsOf = (kind?: string) => wordsIn('en').steelSheet.views[edgesOf(kind && { kind })]

test('sides are called as the piece has them', () => {
  expect(viewsOf('full-tang-knife')).toMatchObject({ spine: 'Spine', point: 'Point' })
  expect(viewsOf('dagger').spine).toBe('Other edge')
  for (const nothing of ['plaque', 'bar', undefined])
    expect(viewsOf(nothing)).toMatchObject({ butt: 'One end', point: 'Other end' })
})

test('every kind with a point and a butt is a blade here, and no other', () => {
  for (const { name, title, parameters, examples, build } of pieceKinds) {
    const isBlade = /knife|sword|dagger/i.test(title)
    expect([name, edgesOf({ kind: name }) !== 'none']).toEqual([name, isBlade])
    // Distances along it are told from the end that is called so.
    const read = readValues(parameters, examples[0])
    const made = read.ok && build(read.ok.values)
    expect([name, made?.ok?.origin]).toEqual([name, isBlade ? 'the butt' : 'the left end'])
  }
})
