import { expect, it } from 'vitest'
import { dangersOf } from './dangers.ts'

/** As a weld in borax declares them. */
const weld = ['heat', 'glare', 'gas', 'flux', 'strike']

it('of two welds only the first is marked, fire and hammer on neither, and none is left out', () => {
  const first = dangersOf(weld, [], (name) => name)
  const second = dangersOf(weld, weld, (name) => name)
  const marked = (found: typeof first) => found.filter((d) => d.kind === 'new').map((d) => d.word)
  expect(marked(first)).toEqual(['flux'])
  expect(marked(second)).toEqual([])
  expect(second.map((d) => d.word).toSorted()).toEqual([...weld].toSorted())
})

it('what shares a word stands once, and new before usual', () => {
  const word = (name: string) => (name === 'quench' ? 'oil' : 'fire')
  expect(dangersOf(['heat', 'gas', 'quench'], [], word)).toEqual([
    { word: 'oil', kind: 'new' },
    { word: 'fire', kind: 'usual' },
  ])
})
