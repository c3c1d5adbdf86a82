import type { Browser } from 'playwright-core'

/**
 * What a first visit fetches until the card stands and the face of the piece is drawn: bytes of each
 * file as the server sends it. The job itself, asked of the interface, is left aside.
 */
export async function firstLoad(browser: Browser, address: string): Promise<Map<string, number>> {
  const context = await browser.newContext({ locale: 'en-GB', serviceWorkers: 'block' })
  const page = await context.newPage()
  const sent = new Map<string, number>()
  context.on('response', (response) => {
    const { pathname } = new URL(response.url())
    if (!pathname.startsWith('/api/'))
      sent.set(pathname, Number(response.headers()['content-length']))
  })
  await page.goto(address)
  await page.locator('.figures').waitFor()
  await page.locator('.face canvas').waitFor()
  await context.close()
  return sent
}
