import { expect, test } from 'vitest'
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
  for (const { name, title } of pieceKinds)
    expect([name, edgesOf({ kind: name }) !== 'none']).toEqual([
      name,
      /knife|sword|dagger/i.test(title),
    ])
})
