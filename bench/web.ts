/**
 * The app in a real browser, from the local server: what is fetched before the 3D view, how soon it
 * answers, and how soon the card follows an edit. Machine, date and load are printed with the figures.
 * Run: node bench/web.ts (builds nothing: node scripts/set-up.mjs --app first).
 */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { cpus, loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { type Page, chromium } from 'playwright-core'
import { serve } from '#server'

const at = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url))
const EDITS = 60
const STARTS = 7

const folder = mkdtempSync(join(tmpdir(), 'billetwright-bench-'))
const server = await serve({ port: 0, dataDir: folder })
const found = at('.setup/browser.json')
const browser = await chromium.launch({
  executablePath: existsSync(found)
    ? (JSON.parse(readFileSync(found, 'utf8')) as { executablePath: string }).executablePath
    : '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-background-networking'],
})

const rows: [string, string, string][] = []
try {
  await weighFirstLoad()
  await timeStarts()
  await timeEdits('builders-plate', 'bars.plate[4].height', ['16 mm', '16.1 mm'])
  await timeEdits('presentation-sword', 'name', ['Sword', 'Sabre'])
} finally {
  await browser.close()
  await server.stop()
  rmSync(folder, { recursive: true })
}
console.log(`${cpus()[0]?.model}, ${cpus().length} cores, load ${loadavg()[0].toFixed(1)}`)
for (const [what, figure, target] of rows)
  console.log(`${what.padEnd(58)} ${figure.padStart(22)}   ${target}`)

/** Everything a first visit fetches until the card stands, gzipped as a server in front would send it. */
async function weighFirstLoad(): Promise<void> {
  const context = await browser.newContext({ serviceWorkers: 'block' })
  const page = await context.newPage()
  const fetched = new Set<string>()
  context.on('request', (request) => fetched.add(new URL(request.url()).pathname))
  await page.goto(server.address)
  await page.locator('.figures').waitFor()
  const sizes = [...fetched]
    .filter((path) => !path.startsWith('/api/'))
    .map((path) => at(`dist/web${path === '/' || !/\.\w+$/.test(path) ? '/index.html' : path}`))
    .filter((path) => existsSync(path))
    .map((path) => {
      const bytes = readFileSync(path)
      return path.endsWith('.woff2') ? bytes.length : gzipSync(bytes, { level: 9 }).length
    })
  const total = sizes.reduce((a, b) => a + b, 0)
  rows.push([
    'first load until the card stands, compressed',
    `${(total / 1000).toFixed(0)} kB`,
    '≤ 350',
  ])
  await context.close()
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
  }
  rows.push([`${job}: a number typed → the card shows it`, spread(times), 'p95 ≤ 50 ms'])
  rows.push([`${job}: longest task of the page meanwhile`, `${await longest()} ms`, '≤ 100 ms'])
  await page.close()
}

function oneEdit(page: Page, place: string, value: string): Promise<number> {
  return page.evaluate(
    ([where, text]) =>
      new Promise<number>((resolve) => {
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
