import { expect, test } from 'vitest'
import { textPlot } from './text-plot.ts'

const axes = {
  width: 24,
  height: 5,
  sayX: (x: number) => `${x} s`,
  sayY: (y: number) => `${y}`,
}

test('a plot is drawn where its numbers say', () => {
  const plot = textPlot(
    [
      {
        sign: '*',
        points: [
          [0, 0],
          [10, 100],
          [20, 100],
        ],
      },
    ],
    axes,
  )
  expect(plot.join('\n')).toBe(
    [
      '100 ┤           *************',
      '    ┤        ***',
      ' 50 ┤     ***',
      '    ┤  ***',
      '  0 ┤**',
      '    └────────────────────────',
      '     0 s                 20 s',
    ].join('\n'),
  )
})

test('nothing to plot is no plot; a level line has room above and below', () => {
  expect(textPlot([], axes)).toEqual([])
  const level = textPlot(
    [
      {
        sign: '-',
        points: [
          [0, 3],
          [5, 3],
        ],
      },
    ],
    axes,
  )
  expect(level[2]).toBe('  3 ┤------------------------')
})
