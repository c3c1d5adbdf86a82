/**
 * The app in a real browser, from the local server: what is fetched before the 3D view, how soon it
 * answers, how soon the card follows an edit, and how soon the picture of the graphics card does.
 * Machine, date, load and graphics card are printed with the figures. Where no card is found the
 * processor plays one: then only the time until the card is given its work says anything of others.
 * Run: node bench/web.ts (builds nothing: node scripts/set-up.mjs --app first).
 */
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync } from 'node:fs'
import { cpus, loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Page, chromium } from 'playwright-core'
import { serve } from '#server'
import { firstLoad } from '../test/outlets/web/first-load.ts'

const at = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url))
const EDITS = 60
/** Pictures by a real card, and by a processor that plays one, which takes seconds for each in full. */
const PICTURES = { card: 60, processor: 12 }
const STARTS = 7
/** Between two edits, ms: as fast as a hand presses the arrow of a field. */
const BETWEEN = 150

const folder = mkdtempSync(join(tmpdir(), 'billetwright-bench-'))
const server = await serve({ port: 0, dataDir: folder })
const found = at('.setup/browser.json')
const browser = await chromium.launch({
  executablePath: existsSync(found)
    ? (JSON.parse(readFileSync(found, 'utf8')) as { executablePath: string }).executablePath
    : '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-background-networking',
    '--ignore-gpu-blocklist',
    '--enable-unsafe-swiftshader',
  ],
})
let card = 'none'

const rows: [string, string, string][] = []
try {
  await weigh()
  await timeStarts()
  await timeEdits('builders-plate', 'bars.plate[4].height', ['16 mm', '16.1 mm'])
  await timeEdits('presentation-sword', 'bars.edge[9].height', ['9.4 mm', '9.5 mm'])
  await timePictures('builders-plate')
} finally {
  await browser.close()
  await server.stop()
  rmSync(folder, { recursive: true })
}
console.log(`${cpus()[0]?.model}, ${cpus().length} cores, load ${loadavg()[0].toFixed(1)}`)
console.log(`${new Date().toISOString().slice(0, 10)}, pictures by ${card}`)
for (const [what, figure, target] of rows)
  console.log(`${what.padEnd(58)} ${figure.padStart(22)}   ${target}`)

/** Everything a first visit fetches, and everything there is, as the server sends it. */
async function weigh(): Promise<void> {
  const kilobytes = (sizes: Iterable<number>) =>
    `${([...sizes].reduce((a, b) => a + b, 0) / 1000).toFixed(0)} kB`
  const first = await firstLoad(browser, server.address)
  rows.push(['sent until the card and the face stand', kilobytes(first.values()), '≤ 350'])
  const assets = at('dist/web/assets')
  const all = readdirSync(assets)
    .filter((name) => !existsSync(join(assets, `${name}.br`)))
    .map((name) => statSync(join(assets, name)).size)
  rows.push(['everything there is, so sent', kilobytes(all), '≤ 900'])
}

async function timeStarts(): Promise<void> {
  const times: number[] = []
  for (let i = 0; i < STARTS; i++) {
    const context = await browser.newContext({ serviceWorkers: 'block' })
    const page = await context.newPage()
    await page.goto(server.address)
    await page.locator('.step canvas').first().waitFor()
    times.push(await page.evaluate(() => performance.now()))
    await context.close()
  }
  rows.push(['address typed → card of the plate drawn', spread(times), 'p50 ≤ 1500 ms'])
}

/** From the keystroke to the frame that shows the figures it leads to. */
async function timeEdits(job: string, place: string, values: readonly string[]): Promise<void> {
  const page = await browser.newPage()
  const index = /\[(\d+)\]/.exec(place)?.[1]
  const bar = /bars\.(\w+)/.exec(place)?.[1]
  const sheet = bar === undefined ? 'piece' : `route/${bar}/${index}`
  await page.goto(`${server.address}/${job}/${sheet}`)
  const field = page.locator(`[data-place="${place}"] input`)
  await field.waitFor()
  await page.waitForTimeout(2500)
  const times: number[] = []
  const longest = await watchLongTasks(page)
  for (let i = 0; i < EDITS; i++) {
    await field.focus()
    times.push(await oneEdit(page, place, values[(i + 1) % values.length]))
    await page.waitForTimeout(BETWEEN)
  }
  rows.push([`${job}: a number typed → the card shows it`, spread(times), 'p95 ≤ 50 ms'])
  rows.push([`${job}: longest task of the page meanwhile`, `${await longest()} ms`, '≤ 100 ms'])
  await page.close()
}

function oneEdit(page: Page, place: string, value: string): Promise<number> {
  return page.evaluate(
    ([where, text]) =>
      new Promise<number>((resolve, reject) => {
        setTimeout(() => reject(new Error(`the card never showed ${text}`)), 60_000)
        const field = document.querySelector<HTMLInputElement>(`[data-place="${where}"] input`)
        const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set
        const shown = document.documentElement
        const before = shown.dataset.worked
        const since = performance.now()
        set?.call(field, text)
        field?.dispatchEvent(new Event('input', { bubbles: true }))
        const look = () =>
          shown.dataset.worked === before
            ? requestAnimationFrame(look)
            : resolve(performance.now() - since)
        requestAnimationFrame(look)
      }),
    [place, value] as const,
  )
}

/** From undo and redo on the sheet of the steel to the picture that shows them, by the graphics card. */
async function timePictures(job: string): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1010, height: 640 } })
  await page.goto(`${server.address}/${job}/route/plate/4`)
  const field = page.locator('[data-place="bars.plate[4].height"] input')
  await field.fill('16.1 mm')
  await field.press('Enter')
  await page.getByRole('button', { name: 'The steel', exact: true }).click()
  const insist = page.getByRole('button', { name: 'Use it all the same' })
  await insist.click({ timeout: 10_000 }).catch(() => undefined)
  const canvas = page.locator('.stage canvas[data-by="card"]')
  await canvas.and(page.locator('[data-drawn="full"]')).waitFor({ timeout: 90_000 })
  card = await canvas.evaluate((stage) => {
    const gl = (stage as HTMLCanvasElement).getContext('webgl2')!
    const info = gl.getExtension('WEBGL_debug_renderer_info')
    return String(gl.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : gl.RENDERER))
  })
  const [given, drawn]: [number[], number[]] = [[], []]
  const pictures = /swiftshader|llvmpipe|software/i.test(card) ? PICTURES.processor : PICTURES.card
  for (let i = 0; i < pictures; i++) {
    const [first, done] = await onePicture(page, i % 2 === 0 ? 'z' : 'y')
    given.push(first)
    drawn.push(done)
    await canvas.and(page.locator('[data-drawn="full"]')).waitFor({ timeout: 90_000 })
    await page.waitForTimeout(BETWEEN)
  }
  rows.push([`${job}: undone → the card has its picture to draw`, spread(given), ''])
  rows.push([`${job}: undone → drawn by the card`, spread(drawn), 'p95 ≤ 100 ms (GPU)'])
  await page.close()
}

/** Until the card is given the first picture of the metal laid anew, and until it has drawn it. */
function onePicture(page: Page, key: 'z' | 'y'): Promise<readonly [number, number]> {
  return page.locator('.stage canvas').evaluate(
    (stage, pressed) =>
      new Promise<readonly [number, number]>((resolve, reject) => {
        setTimeout(() => reject(new Error('the card drew nothing')), 60_000)
        const canvas = stage as HTMLCanvasElement
        const since = performance.now()
        let laid = false
        new MutationObserver((_changes, watch) => {
          if (canvas.dataset.drawn === 'no') laid = true
          if (!laid || canvas.dataset.drawn !== 'first') return
          watch.disconnect()
          const first = performance.now() - since
          const gl = canvas.getContext('webgl2')!
          // A pixel cannot be read before it is drawn.
          gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, new Uint8Array(4))
          resolve([first, performance.now() - since])
        }).observe(canvas, { attributes: true, attributeFilter: ['data-drawn'] })
        const options = { key: pressed, ctrlKey: true, bubbles: true }
        document.body.dispatchEvent(new KeyboardEvent('keydown', options))
      }),
    key,
  )
}

async function watchLongTasks(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    const longest = { duration: 0 }
    ;(window as unknown as { longest: typeof longest }).longest = longest
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries())
        longest.duration = Math.max(longest.duration, duration)
    }).observe({ type: 'longtask' })
  })
  return () =>
    page.evaluate(() =>
      Math.round((window as unknown as { longest: { duration: number } }).longest.duration),
    )
}

function spread(times: readonly number[]): string {
  const sorted = [...times].sort((a, b) => a - b)
  const p = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]
  return `p50 ${p(0.5).toFixed(0)}, p95 ${p(0.95).toFixed(0)} ms`
}
