import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest'
import { main } from './main.ts'

const job = 'jobs/galley-knife.json'
let folder = ''
beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), 'pictures-'))))
afterAll(() => rmSync(folder, { recursive: true }))
afterEach(() => void vi.restoreAllMocks())

/** One command line, in this process: the code it ends with and all it says. */
async function said(...words: string[]) {
  const told: string[] = []
  const hear = (text: unknown) => told.push(String(text)) > 0
  vi.spyOn(process.stdout, 'write').mockImplementation(hear)
  vi.spyOn(process.stderr, 'write').mockImplementation(hear)
  const code = await main(words)
  vi.restoreAllMocks()
  return { code, text: told.join('') }
}

describe('the command line', () => {
  it('counts steps as the card does, whichever bar they are of', async () => {
    // "clad" begins the third bar of the galley knife.
    const number = /^ *([0-9]+) +clad /m.exec((await said('plan', job)).text)?.[1] ?? ''
    expect(Number(number)).toBeGreaterThan(1)
    const face = ['face', job, '--ppmm', '1', '--out', join(folder, 'step.png'), '--step']
    expect((await said(...face, number)).text).toContain('after clad')
    expect((await said(...face, number, '--bar', 'knife')).text).toContain('after clad')
    const other = await said(...face, '1', '--bar', 'knife')
    expect(other.code).toBe(2)
    expect(other.text).toContain(`--step ${number} to`)
  })

  it('says where a picture cannot be put, and does not call it a fault of its own', async () => {
    const nowhere = join(folder, 'no-such-folder', 'face.png')
    expect(existsSync(nowhere)).toBe(false)
    const { code, text } = await said('face', job, '--ppmm', '1', '--step', '1', '--out', nowhere)
    expect(code).toBe(1)
    expect(text).toBe(`"${nowhere}" cannot be written: there is no such folder.\n`)
  })

  it('tells the range by the steps of the card, and says of which makings', async () => {
    const { text } = await said('range', job, '--draws', '20')
    expect(text).toMatch(/step 16, forge to shape: in one of them, the bar is/)
    expect(text).not.toMatch(/bars\./)
    expect(text).toMatch(/those that come out \([0-9.]+ %\), nine in ten/)
  })
})
