import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect } from 'vitest'
import { type Browser, type BrowserContextOptions, type Page, chromium } from 'playwright-core'
import { type Serving, serve } from '#server'

const at = (path: string) => fileURLToPath(new URL(`../../../${path}`, import.meta.url))

/** A machine with other work to do takes its time; what never comes is told soon enough. */
const PATIENCE = 30_000
/** For work that takes seconds on a machine of its own: a search for ways, a picture by a card that the processor plays. */
export const LONG = 150_000

/** The real app: a real server on a folder of its own, a real browser. */
export interface OpenApp {
  readonly server: Serving
  readonly browser: Browser
  readonly folder: string
  /** A window of its own; without `with`, of a person of their own. */
  open(path: string, options?: BrowserContextOptions): Promise<Page>
  /** Errors that any page told. */
  readonly faults: string[]
  close(): Promise<void>
}

const quiet = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]
/** A browser whose graphics card is played by the processor. */
export const softwareCard = [...quiet, '--use-angle=swiftshader', '--enable-unsafe-swiftshader']

export async function openApp(args: readonly string[] = quiet): Promise<OpenApp> {
  if (!existsSync(at('dist/web/index.html')))
    throw new Error('the app is not built: node scripts/set-up.mjs --app')
  const folder = mkdtempSync(join(tmpdir(), 'billetwright-app-'))
  const server = await serve({ port: 0, dataDir: folder })
  const browser = await chromium.launch({
    executablePath: browserPath(),
    args: [...args],
  })
  const faults: string[] = []
  return {
    server,
    browser,
    folder,
    faults,
    open: (path, options) => openPage(browser, server, faults, path, options),
    async close() {
      await browser.close()
      await server.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

async function openPage(
  browser: Browser,
  server: Serving,
  faults: string[],
  path: string,
  options: BrowserContextOptions = {},
): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    // Every new person would fetch the whole app for later; only what is tested with the network gone needs that.
    serviceWorkers: 'block',
    ...options,
  })
  const page = await context.newPage()
  page.setDefaultTimeout(PATIENCE)
  page.on('pageerror', (fault) => faults.push(String(fault.stack)))
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text())
  })
  await page.goto(server.address + path)
  return page
}

/** The browser that set-up found, else the usual place. */
export function browserPath(): string {
  const found = at('.setup/browser.json')
  if (!existsSync(found)) return '/usr/bin/chromium'
  return (JSON.parse(readFileSync(found, 'utf8')) as { executablePath: string }).executablePath
}

/** A picture of the page as it is, into a folder git does not keep. */
export async function picture(page: Page, name: string, whole = false): Promise<void> {
  mkdirSync(at('screenshots'), { recursive: true })
  // An empty frame says nothing of how the sheet looks.
  await page.locator('.face .undrawn').waitFor({ state: 'detached' })
  await page.screenshot({ path: at(`screenshots/${name}.png`), fullPage: whole })
}

/** Waits until the job is saved and the card stands. */
export async function settled(page: Page): Promise<void> {
  await page.locator('[data-saving="saved"]').waitFor()
}

/** The field at a place of the job: `bars.knife[3].height`. */
export function fieldAt(page: Page, place: string) {
  return page.locator(`[data-place="${place}"] :is(input, select)`).first()
}

/** Types into a field and leaves it. */
export async function type(page: Page, place: string, text: string): Promise<void> {
  const field = fieldAt(page, place)
  if ((await field.evaluate((element) => element.tagName)) === 'SELECT') {
    await field.selectOption(text)
    return
  }
  await field.click()
  await field.fill(text)
  await field.press('Enter')
}

/** Waits for something to become so; a busy machine takes its time. */
export function eventually<T>(look: () => T, patience = PATIENCE) {
  return expect.poll(look, { timeout: patience })
}

/** The job as the server has it. */
export async function kept(app: OpenApp, id: string): Promise<Record<string, unknown>> {
  const answer = await fetch(`${app.server.address}/api/jobs/${id}`)
  return ((await answer.json()) as { job: Record<string, unknown> }).job
}
