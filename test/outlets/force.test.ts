import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { billetwright } from './command-line.ts'

const folder = mkdtempSync(join(tmpdir(), 'billetwright-'))
afterAll(() => rmSync(folder, { recursive: true }))

const bar = ['force', '--steel', '1084', '--section', '40 x 50 mm', '--to', '32 mm']
const square = 'M0 0H10V10H0Z'
const mark = ['force', '--steel', '1095', '--heat', '1100 °C', '--across', '10 mm']
const asData = (args: readonly string[]) => {
  const { out, code } = billetwright([...args, '--json'])
  expect(code).toBe(0)
  return JSON.parse(out) as { answer: never }
}

describe('force, of a bar', () => {
  it('comes out as the short form of the spread law says, two squeezes worked by hand', () => {
    const { answer } = asData([...bar, '--heat', '1100 °C']) as {
      answer: { width: number[]; length: number[]; passes: number }
    }
    // g = 1.25 twice; bite 40 over width 40.00, then over 44.18: S = 0.446 and 0.4217.
    const s = (ratio: number) => 0.14 + 0.36 * ratio - 0.054 * ratio * ratio
    const once = 40 * 1.25 ** s(1)
    const twice = once * 1.25 ** s(40 / once)
    expect(answer.passes).toBe(2)
    expect((answer.width[1] ?? 0) * 1000).toBeCloseTo(twice, 6)
    expect((answer.width[1] ?? 0) * 0.032 * (answer.length[1] ?? 0)).toBeCloseTo(2e-4, 12)
    expect(answer.width[0]).toBeLessThan(answer.width[2] ?? 0)
  })

  it('blows are work over energy: ½ m v² of 4 lb at 8 m/s, 0.91 × 15/16 of it into the bar', () => {
    const { answer } = asData([...bar, '--heat', '1100 °C', '--hammer', '4 lb']) as {
      answer: { judged: { judgement: { work: { value: number }; blows: { value: number } } }[] }
    }
    const { work, blows } = answer.judged[0]!.judgement
    const energy = 0.5 * 4 * 0.45359237 * 8 * 8
    expect(blows.value).toBeCloseTo(work.value / (energy * (1 - 0.3 ** 2) * (15 / 16)), 6)
  })

  it('says in words what hammer and press must have', () => {
    const { out } = billetwright([...bar, '--heat', '1100 °C'])
    expect(out).toMatch(/4 lb hand hammer: \d+ blows \(\d+ to \d+\), \d+ heats/)
    expect(out).toMatch(/a press: must have \d+ kN \(\d+ kN to \d+ kN\)/)
    expect(out).toMatch(/Shida/)
  })

  it('a small hammer is told to give way, with cures', () => {
    const { out } = billetwright([...bar, '--heat', '1000 °C', '--hammer', '2 lb'])
    expect(out).toMatch(/marginal|cannot/)
    expect(out).toMatch(/try: .*press/i)
  })
})

describe('force, of a mark', () => {
  it('measures the outline and tells three heats', () => {
    const { out, code } = billetwright([...mark, '--emblem', square, '--depth', '1 mm'])
    expect(code).toBe(0)
    expect(out).toContain('100 mm² raised, edge 40.0 mm')
    for (const heat of ['1000 °C', '1100 °C', '1200 °C']) expect(out).toContain(heat)
  })

  it('reads an SVG file as it reads its path', () => {
    const file = join(folder, 'square.svg')
    writeFileSync(
      file,
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path fill="black" d="${square}"/></svg>`,
    )
    const [drawn, told] = [file, square].map(
      (emblem) => billetwright([...mark, '--emblem', emblem, '--depth', '1 mm']).out,
    )
    expect(drawn).toBe(told)
  })

  it('what is ground off is gone from the depth', () => {
    const { out } = billetwright([
      ...mark,
      '--emblem',
      square,
      '--depth',
      '0.5 mm',
      '--off',
      '0.4 mm',
    ])
    expect(out).toMatch(/0\.10 mm is left when 0\.40 mm has come off/)
    expect(out).toMatch(/Only 0\.1 mm of the mark is left/)
  })

  it('a drawing that cannot be read is a problem, not a wrong number', () => {
    const moved = join(folder, 'moved.svg')
    writeFileSync(moved, `<svg><g transform="scale(2)"><path d="${square}"/></g></svg>`)
    for (const [emblem, what] of [
      [moved, 'transform'],
      ['M0 0L10', 'does not read'],
    ] as const) {
      const { code, error } = billetwright([...mark, '--emblem', emblem, '--depth', '1 mm'])
      expect(code).toBe(1)
      expect(error).toContain(what)
    }
  })
})

it('words that are off are told, with exit code 2; a steel that is none, with 1', () => {
  for (const args of [
    ['force'],
    [...bar, '--heat', '1100 °C', '--hammer', '4 lb', '--press', '25 ton'],
  ]) {
    const { code, error } = billetwright(args)
    expect(code, args.join(' ')).toBe(2)
    expect(error).toContain('billetwright force')
  }
  const none = billetwright(['force', '--steel', 'wood', ...bar.slice(3), '--heat', '1100 °C'])
  expect(none.code).toBe(1)
  expect(none.error).toContain('wood')
})
