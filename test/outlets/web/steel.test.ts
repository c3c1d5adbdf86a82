import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Browser, type Page, chromium } from 'playwright-core'
import { build } from 'vite'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { browserPath, softwareCard } from './open-app.ts'

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url))
const job = (name: string) => readFileSync(at(`../../../jobs/${name}.json`), 'utf8')

/** What the page is asked, and what it answers: see the page's own text. */
interface Asked {
  readonly job: string
  readonly side: string
  readonly ppmm: number
  readonly part?: object
  readonly depth?: number
}
type Differences = Readonly<
  Record<
    | 'pixels'
    | 'resolved'
    | 'within'
    | 'parted'
    | 'partedOff'
    | 'fine'
    | 'byCard'
    | 'byEngine'
    | 'look',
    number
  >
>

let browser: Browser
let page: Page
let folder: string

/** The scene in a page of its own, drawn by the software card. */
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'billetwright-scene-'))
  await build({
    configFile: false,
    root: at('../../../src/scene'),
    logLevel: 'error',
    build: {
      outDir: folder,
      emptyOutDir: true,
      target: 'es2022',
      rolldownOptions: { input: at('../../../src/scene/against-engine.html') },
    },
    worker: { format: 'es' },
  })
  browser = await chromium.launch({ executablePath: browserPath(), args: softwareCard })
  page = await browser.newPage()
  const types = { html: 'text/html', js: 'text/javascript', css: 'text/css' }
  await page.route('http://scene.test/**', (route) => {
    const path = join(folder, new URL(route.request().url()).pathname)
    if (!existsSync(path)) return route.fulfill({ status: 404 })
    const kind = path.split('.').at(-1) as keyof typeof types
    return route.fulfill({ body: readFileSync(path), contentType: types[kind] })
  })
  await page.goto('http://scene.test/against-engine.html')
  await page.waitForFunction('window.measure')
})
afterAll(async () => {
  await browser?.close()
  rmSync(folder, { recursive: true, force: true })
})

function measured(asked: Asked): Promise<Differences> {
  return page.evaluate(
    (a) => (window as unknown as { measure(a: Asked): Promise<Differences> }).measure(a),
    asked,
  )
}

/** Each sample job: its face whole and coarse, a part of it near enough that every layer is seen, one side more. */
const faces: readonly (readonly [string, Asked])[] = [
  ['builders-plate', 2, 24, 'edge'],
  ['rigging-knife', 2, 60, 'spine'],
  ['galley-knife', 1.5, 60, 'spine'],
  ['presentation-sword', 0.6, 24, 'edge'],
].flatMap(([name, coarse, near, side]) => {
  const asked = { job: job(name as string), ppmm: near as number }
  const part = { along: 0.72, across: 0.45, width: 160, height: 100 }
  return [
    [`${name}, face`, { ...asked, ppmm: coarse as number, side: 'front' }],
    [`${name}, near`, { ...asked, side: 'front', part }],
    [`${name}, ground`, { ...asked, side: 'front', part, depth: 2e-4 }],
    [`${name}, ${side}`, { ...asked, side: side as Asked['side'], part }],
  ] as [string, Asked][]
})

/** The stamp's floor lies 0.9 mm under the face: ground less, it stands as it was pressed; ground more, it is gone. */
const [overStamp, underStamp] = [5e-4, 1.5e-3].map((depth): Asked => {
  const part = { along: 0.5, across: 0.5, width: 160, height: 160 }
  return { job: job('builders-plate'), side: 'front', ppmm: 8, part, depth }
}) as [Asked, Asked]

/** Of the structure of those before it: drawn by the same programs, given other numbers. */
const forgedThicker: (typeof faces)[number] = [
  'builders-plate, forged thicker',
  { ...faces[1]![1], job: job('builders-plate').replace('"16 mm"', '"16.4 mm"') },
]

describe('the card draws what the engine draws', () => {
  it.each([
    ...faces.slice(0, 4),
    forgedThicker,
    ['builders-plate, its stamp ground away', underStamp] as const,
    ...faces.slice(4),
  ])('%s', async (_name, asked) => {
    const found = await measured(asked)
    expect(found.pixels).toBeGreaterThan(300)
    if (found.resolved > 200) expect(found.within).toBeGreaterThanOrEqual(0.995)
    if (found.fine > 200) expect(Math.abs(found.byCard - found.byEngine)).toBeLessThan(0.002)
    if (found.parted > 200) expect(found.partedOff).toBeLessThan(0.02)
    expect(found.look).toBeLessThan(1)
  })
})

it('leaves a mark where it was pressed, however the face round it is ground', async () => {
  const found = await measured(overStamp)
  expect(found.resolved).toBeGreaterThan(10_000)
  expect(found.within).toBeGreaterThanOrEqual(0.995)
  // The engine meets a wall pixel by pixel, the card by its facets.
  expect(found.look).toBeLessThan(2)
})

it('tells the strain of a pixel as the mean of its parts', async () => {
  const asked: Asked = { job: job('builders-plate'), side: 'front', ppmm: 0.5 }
  const same = await page.evaluate((a) => {
    type Page = { sameStrain(a: Asked): Promise<{ parts: number; once: number }> }
    return (window as unknown as Page).sameStrain(a)
  }, asked)
  // A single look is off by what makes a picture grainy.
  expect(same.parts).toBeGreaterThan(0.8)
  expect(same.once).toBeLessThan(0.5)
})
