import { expect, it } from 'vitest'
import { layLanes } from './lanes.ts'

const row = (bar: string, joins: readonly string[] = []) => ({ bar, joins })

it('one bar is one line', () => {
  expect(layLanes([row('a'), row('a')], 'a')).toEqual([
    { bar: 'a', lane: 0, from: 0, to: 1, joins: false },
  ])
})

it('bars run beside the one that takes them, and end in the row that does', () => {
  const rows = [row('left'), row('left'), row('core'), row('core', ['left', 'edge']), row('core')]
  const withEdge = [row('edge'), ...rows]
  const lanes = layLanes(withEdge, 'core')
  const of = (bar: string) => lanes.find((l) => l.bar === bar)
  expect(of('core')).toMatchObject({ lane: 0, from: 3, to: 5, joins: false })
  expect(of('edge')).toMatchObject({ from: 0, to: 4, joins: true })
  expect(of('left')).toMatchObject({ from: 1, to: 4, joins: true })
  expect(of('edge')?.lane).not.toBe(of('left')?.lane)
})

it('no two lines of one lane are ever in one row', () => {
  const rows = ['a', 'a', 'b', 'c', 'c'].map((bar) => row(bar)).concat(row('d', ['a', 'b', 'c']))
  const lanes = layLanes(rows, 'd')
  for (let i = 0; i < rows.length; i++) {
    const here = lanes.filter((l) => l.from <= i && i <= l.to).map((l) => l.lane)
    expect(new Set(here).size).toBe(here.length)
  }
})
