import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readPng } from '#formats'
import { billetwright } from './command-line.ts'

let folder = ''
beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), 'pictures-'))))
afterAll(() => rmSync(folder, { recursive: true }))

const at = (name: string) => join(folder, name)
const png = (name: string) => readPng(readFileSync(at(name)))

describe('pictures from the command line', { timeout: 60_000 }, () => {
  it('draws a face true to size, and measures its own lines again', () => {
    const out = at('plate.png')
    const drawn = billetwright([
      'face',
      'jobs/builders-plate.json',
      '--out',
      out,
      '--ppmm',
      '4',
      '--map',
      'layers',
    ])
    expect(drawn.error).toBe('')
    expect(drawn.code).toBe(0)
    const picture = png('plate.png')
    expect(picture.perMetre).toBeCloseTo(4_000, 0)
    // 140 mm of plate and a rim of 1 mm all round.
    expect(picture.width).toBeGreaterThanOrEqual(568)
    const measured = billetwright([
      'measure',
      out,
      '--from',
      '6 mm, 20 mm',
      '--to',
      '136 mm, 20 mm',
      '--json',
    ])
    expect(measured.code).toBe(0)
    const { linesPerMetre, brightShare } = JSON.parse(measured.out)
    // The plan asks for 1.2 lines per mm; what lies between two thick joints is a little denser.
    expect(linesPerMetre / 1200).toBeGreaterThan(0.9)
    expect(linesPerMetre / 1200).toBeLessThan(1.1)
    expect(brightShare).toBeGreaterThan(0.15)
    expect(brightShare).toBeLessThan(0.4)
  })

  it('draws a section in 16 bits, and in outlines', () => {
    const job = 'jobs/galley-knife.json'
    const cut = ['section', job, '--at', '160 mm', '--ppmm', '10', '--out']
    expect(billetwright([...cut, at('cut.png'), '--bits', '16']).code).toBe(0)
    expect(png('cut.png').data).toBeInstanceOf(Uint16Array)
    expect(billetwright([...cut, at('lines.svg'), '--map', 'lines']).code).toBe(0)
    expect(readFileSync(at('lines.svg'), 'utf8')).toMatch(/^<svg /)
  })

  it('draws every step of every bar, and on the way what lies between in size', () => {
    // Two bars and few steps.
    const job = 'jobs/patterns/san-mai.json'
    const ask = ['steps', job, '--pictures', at('steps'), '--ppmm', '1', '--between', '1']
    const run = billetwright(ask)
    expect(run.error).toBe('')
    expect(run.code).toBe(0)
    const lines = run.out.trim().split('\n')
    const names = readdirSync(at('steps'))
    expect(names).toContain('1-core-take-bar-face.png')
    expect(names.length).toBe(2 * lines.length)
    const weld = lines.findIndex((line) => /-weld-50: /.test(line))
    const [before, half, after] = lines
      .slice(weld - 1, weld + 2)
      .map((line) => Number(/([\d.]+) mm$/.exec(line)?.[1]))
    expect(before).toBeGreaterThan(half!)
    expect(half).toBeGreaterThan(after!)
  })

  it.each([
    [['face', 'jobs/galley-knife.json', '--out', 'x.png', '--bar', 'haft'], /no bar called "haft"/],
    [['section', 'jobs/galley-knife.json', '--at', '9 m', '--out', 'x.png'], /no metal/],
  ])('says what is amiss: %j', (words, told) => {
    const answer = billetwright(words)
    expect(answer.code).toBeGreaterThan(0)
    expect(answer.error).toMatch(told)
  })
})
