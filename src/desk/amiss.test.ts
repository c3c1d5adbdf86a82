import { expect, it } from 'vitest'
import { amissAt } from './amiss.ts'

const now = { bars: { 'a[b]': [{ do: 'stack' }, { do: 'weld' }], a: [{ do: 'stack' }] } }

/** A job that is stopped at these places. */
const stopped = (places: readonly string[], agrees?: boolean) =>
  amissAt({
    history: { now },
    worked: {
      sound: false,
      problems: places.map((at) => ({ at, what: 'w', why: 'y', try: [] })),
      ...(agrees !== undefined && { weight: { agrees } }),
    },
  } as never)

it('leads to the first step that stops, whatever its bar is called', () => {
  expect(stopped(['bars.a[b][1].close', 'bars.a[0]'])).toEqual({
    sheet: 'route',
    bar: 'a[b]',
    step: 1,
  })
})

it('leads to the first step of a bar that is amiss as a whole', () => {
  expect(stopped(['bars.a'])).toEqual({ sheet: 'route', bar: 'a', step: 0 })
})

it('leads to the piece where the piece contradicts itself, though steps stop too', () => {
  expect(stopped(['bars.a[0]', 'piece.length'])).toEqual({ sheet: 'piece' })
  expect(stopped(['bars.a[0]'], false)).toEqual({ sheet: 'piece' })
  expect(stopped(['bars.a[0]'], true)).toEqual({ sheet: 'route', bar: 'a', step: 0 })
})

it('leads nowhere from a sound job, or from a card not yet begun', () => {
  expect(amissAt({ history: { now }, worked: { sound: true, problems: [] } } as never)).toBe(
    undefined,
  )
  expect(amissAt({ history: { now: {} }, worked: { sound: false, problems: [] } } as never)).toBe(
    undefined,
  )
})
