import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { billetwright } from './command-line.ts'

const folder = mkdtempSync(join(tmpdir(), 'billetwright-'))
afterAll(() => rmSync(folder, { recursive: true }))

const stack = {
  do: 'stack',
  sheets: [
    { steel: '1095', thickness: '3 mm' },
    { steel: '15N20', thickness: '1.5 mm' },
  ],
  repeat: 7,
  closeWith: '1095',
  width: '40 mm',
  length: '120 mm',
}
const piece = { kind: 'bar', length: '140 mm', width: '60 mm', thickness: '8 mm' }
const job = (change: Record<string, unknown>) => ({
  billetwright: 1,
  name: 'trial',
  piece,
  bars: { main: [stack, { do: 'weld' }, { do: 'draw out', height: '10 mm', width: '60 mm' }] },
  ...change,
})

/** Runs `check` on all of these files in one process and hands back what a person reads of each. */
function check(texts: readonly (readonly [name: string, text: string])[]): {
  readonly code: number | null
  readonly told: ReadonlyMap<string, string>
} {
  const paths = texts.map(([name, text]) => {
    const path = join(folder, `${name.replaceAll(' ', '-')}.json`)
    writeFileSync(path, text)
    return path
  })
  const { code, out, error } = billetwright(['check', ...paths])
  expect(error).toBe('')
  expect(out).not.toMatch(/\bat .*\.ts:\d+|\bat Object|node:internal/)
  const parts = out.split(/^== .*$/m).slice(1)
  return { code, told: new Map(texts.map(([name], i) => [name, parts[i] ?? ''])) }
}

describe('a malformed job is told where, why and what to try', () => {
  const cases: [
    name: string,
    text: string,
    place: string | RegExp,
    cause: string | RegExp,
    cure: string | RegExp,
  ][] = [
    [
      'wrong unit',
      JSON.stringify(job({ piece: { ...piece, length: '140 kg' } })),
      'piece.length',
      /kg/,
      /mm/,
    ],
    [
      'negative size',
      JSON.stringify(job({ bars: { main: [{ ...stack, width: '-40 mm' }] } })),
      'bars.main[0].width',
      /outside/,
      /at least/,
    ],
    [
      'unknown steel',
      JSON.stringify(job({ bars: { main: [{ ...stack, closeWith: '1O95' }] } })),
      'bars.main[0].closeWith',
      /1O95/,
      /1095/,
    ],
    [
      'cycle of bars',
      JSON.stringify(
        job({
          bars: {
            a: [{ do: 'lay side by side', row: ['b'] }],
            b: [{ do: 'lay side by side', row: ['a'] }],
          },
          finish: 'a',
        }),
      ),
      /bars\.(a|b)/,
      /wait for one another/,
      /stack of its own/,
    ],
    [
      'missing bar',
      JSON.stringify(job({ bars: { a: [{ do: 'lay side by side', row: ['core'] }] } })),
      'bars.a[0]',
      /no bar called "core"/,
      /add a bar/,
    ],
    [
      'layers ground away',
      JSON.stringify(
        job({
          bars: {
            main: [
              stack,
              { do: 'weld' },
              { do: 'draw out', height: '4 mm' },
              { do: 'restack', pieces: 3, cleanUp: '3 mm' },
            ],
          },
        }),
      ),
      'bars.main[3].cleanUp',
      /leaves nothing/,
      /grind less/,
    ],
    [
      'piece larger than the stock gives',
      JSON.stringify(
        job({
          bars: {
            main: [
              { ...stack, length: '10 mm' },
              { do: 'weld' },
              { do: 'draw out', height: '10 mm', width: '60 mm' },
            ],
          },
        }),
      ),
      'bars.main',
      /short|long/,
      /\?|longer|cut/,
    ],
    ['NaN', '{ "billetwright": 1, "name": "x", "seed": NaN }', 'line 1', /NaN/, /unit/],
    [
      'Infinity',
      JSON.stringify(job({})).replace('"140 mm"', 'Infinity'),
      'line 1',
      /Infinity/,
      /unit/,
    ],
    ['50 MB', `{"note":"${'x'.repeat(50e6)}"}`, /50 mb|file/, /MB|million/, /sample|right file/],
    ['deep nesting', '['.repeat(200_000), 'file', /nested/, /brackets/],
    ['not JSON', '{ "billetwright": 1, "name": "x" "bars": {} }', 'line 1', /JSON/, /comma/],
    ['no format', '{}', 'billetwright', /format/, /"billetwright": 1/],
    ['newer format', '{ "billetwright": 99 }', 'billetwright', /99/, /newer/],
    [
      'unknown operation',
      JSON.stringify(job({ bars: { main: [stack, { do: 'drow out' }] } })),
      'bars.main[1].do',
      /drow out/,
      /draw out/,
    ],
  ]
  let checked: ReturnType<typeof check>
  beforeAll(() => {
    checked = check(cases.map(([name, text]) => [name, text]))
  })

  it('ends with code 1, having told of each', () => {
    expect(checked.code).toBe(1)
    expect(checked.told.size).toBe(cases.length)
  })

  it.each(cases)('%s', (name, _text, place, cause, cure) => {
    const told = checked.told.get(name)
    expect(told).toMatch(
      place instanceof RegExp ? place : new RegExp(place.replace(/[[\]().]/g, '\\$&')),
    )
    expect(told).toMatch(cause)
    expect(told).toMatch(cure)
  })

  it('a file that is not there', () => {
    const { code, error } = billetwright(['plan', join(folder, 'nowhere.json')])
    expect(code).toBe(1)
    expect(error).toContain('no such file')
  })
})

describe('the command line itself', () => {
  it('answers bad usage with code 2 and the nearest command', () => {
    expect(billetwright(['plam'])).toMatchObject({
      code: 2,
      error: expect.stringContaining('"plan"'),
    })
    expect(billetwright(['plan'])).toMatchObject({ code: 2 })
    expect(billetwright(['plan', '--colour', 'x.json'])).toMatchObject({ code: 2 })
  })
  it('helps, whole and for a command', () => {
    const { code, out } = billetwright(['help'])
    expect(code).toBe(0)
    const names = [...out.matchAll(/^ {2}([a-z-]+) {1,}[A-Z]/gm)].map(([, name]) => name)
    expect(names.length).toBeGreaterThan(15)
    for (const name of [names[0], names.at(-1) as string]) {
      expect(billetwright(['help', name])).toMatchObject({
        code: 0,
        out: expect.stringContaining(`billetwright ${name}`),
      })
    }
  })
  it('reads standard input', () => {
    expect(billetwright(['check', '-'], JSON.stringify(job({}))).code).toBe(0)
  })
  it('prints no escape codes when asked not to', () => {
    expect(billetwright(['plan', '-'], JSON.stringify(job({}))).out).not.toContain('\u001b')
  })
})
