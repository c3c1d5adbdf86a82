import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { findings } from './findings.ts'
import { LONG, type OpenApp, eventually, kept, openApp, picture, softwareCard } from './open-app.ts'

let app: OpenApp
beforeAll(async () => {
  app = await openApp(softwareCard)
})
afterAll(async () => {
  await app?.close()
})

/** Waits until the metal asked for is drawn in full. */
async function drawn(page: Page, by: 'card' | 'engine'): Promise<void> {
  const canvas = page.locator(
    `.stage[aria-busy="false"] canvas[data-by="${by}"][data-drawn="full"]`,
  )
  await canvas.waitFor({ timeout: LONG })
}

/** Share of the stage that is metal, and how light the metal is on the whole. */
function look(page: Page): Promise<{ readonly metal: number; readonly light: number }> {
  return page.locator('.stage canvas').evaluate((stage) => {
    const canvas = stage as HTMLCanvasElement
    const copy = document.createElement('canvas')
    copy.width = canvas.width
    copy.height = canvas.height
    const ink = copy.getContext('2d')!
    ink.drawImage(canvas, 0, 0)
    const { data } = ink.getImageData(0, 0, copy.width, copy.height)
    let [metal, light] = [0, 0]
    for (let i = 0; i < data.length; i += 4)
      if (data[i + 3]! > 127) {
        metal++
        light += data[i]!
      }
    return { metal: metal / (data.length / 4), light: light / Math.max(metal, 1) }
  })
}

describe('the steel', () => {
  it('is drawn by the engine where there is no card, and says so; other sheets fetch nothing of it', async () => {
    const page = await app.open('/rigging-knife/route', { bypassCSP: true })
    await page.locator('.figures').waitFor()
    const fetched = () =>
      page.evaluate(() => performance.getEntriesByType('resource').map((entry) => entry.name))
    const ofCard = (names: readonly string[]) => names.filter((n) => n.includes('card-painter'))
    expect(ofCard(await fetched())).toEqual([])
    await page.getByRole('button', { name: 'The steel' }).click()
    await drawn(page, 'engine')
    expect(ofCard(await fetched())).toHaveLength(1)
    await page.getByText('the engine draws instead').waitFor()
    expect((await look(page)).metal).toBeGreaterThan(0.1)
    await picture(page, 'steel-engine-light')
    expect(await findings(page)).toEqual([])
    // Marks of a rule are figures alone, in inches as in millimetres.
    for (const units of ['in', 'mm']) {
      await page.getByRole('button', { name: units, exact: true }).click()
      const marks = (await page.locator('.mark-rule .scale b').allInnerTexts()).join(' ')
      expect(marks).toMatch(/\d/)
      expect(marks).not.toMatch(/[a-z]/)
    }
    // A place stands in ink once the metal drawn is of it, and soft, as its size does, until then.
    const softPlace = (busy: boolean) =>
      page.evaluate((waits) => {
        document.querySelector('.stage')?.setAttribute('aria-busy', String(waits))
        const [place, soft] = ['.scrub .value', '.scrub .size'].map((of) => {
          return getComputedStyle(document.querySelector(of)!).color
        })
        return place === soft
      }, busy)
    expect(await softPlace(false)).toBe(false)
    await eventually(() => softPlace(true)).toBe(true)
    expect(await softPlace(false)).toBe(false)
    // Played, the route is gone through on the way of every step, and ends at the piece.
    const route = page.getByLabel('Through the route')
    await route.fill(String(Number(await route.getAttribute('max')) - 17.5))
    await page.getByRole('button', { name: 'Play' }).click()
    await eventually(() => route.getAttribute('aria-valuetext')).toMatch(/draw out.* done$/)
    await route.press('End')
    await route.press('ArrowLeft')
    await page.getByRole('button', { name: 'Play' }).click()
    await eventually(() => route.getAttribute('aria-valuetext')).toBe('the piece')
    await page.getByRole('button', { name: 'Play' }).waitFor()
    await page.getByRole('button', { name: 'Back', exact: true }).click()
    await eventually(() =>
      page.getByRole('button', { name: 'Back', exact: true }).getAttribute('aria-pressed'),
    ).toBe('true')
    await page.context().close()
  })

  it('is turned, cut, ground and followed through the route on a card', async () => {
    const page = await app.open('/rigging-knife/steel', {
      bypassCSP: true,
      colorScheme: 'dark',
      reducedMotion: 'reduce',
      // The processor plays the card: a small picture is soon drawn.
      viewport: { width: 1010, height: 480 },
    })
    await page.getByRole('button', { name: 'Use it all the same' }).click()
    // What is said to be drawn in full is: printing and saving go by that alone.
    await page
      .locator('.stage canvas[data-by="card"][data-drawn="full"]')
      .waitFor({ timeout: LONG })
    expect((await look(page)).metal).toBeGreaterThan(0.1)
    const press = (name: string) => page.getByRole('button', { name, exact: true }).click()
    const atRest = async () => {
      await drawn(page, 'card')
      return look(page)
    }
    await press('Face')
    const face = await atRest()
    expect(face.metal).toBeGreaterThan(0.1)
    await page.locator('.stage').focus()
    for (let i = 0; i < 6; i++) await page.keyboard.press('ArrowUp')
    expect((await atRest()).metal).toBeLessThan(0.95 * face.metal)
    await picture(page, 'steel-card-dark')
    // Half the blade cut away: what is left fills the stage, its section turned to the eye.
    await press('across')
    expect((await atRest()).metal).toBeGreaterThan(1.5 * face.metal)
    await picture(page, 'steel-section-dark')
    expect(await findings(page)).toEqual([])
    for (const shown of ['layer thickness', 'carbon', 'hardness', 'which bar', 'strain']) {
      await press(shown)
      await page.locator('.legend').waitFor()
    }
    await atRest()
    await picture(page, 'steel-strain-dark')
    await press('none')
    await press('etched')
    const route = page.getByLabel('Through the route')
    await route.fill('4')
    await page.getByText('5 restack').waitFor()
    await atRest()
    // What stands beside it is that step's, not the finished knife's.
    expect(await page.locator('.steel-side .figures').innerText()).toContain('step 5, restack')
    await picture(page, 'steel-step-dark')
    // On its way from weld to drawn out it is longer and thinner, and truly so: of the same metal, less its scale.
    const seen: { readonly metal: number; readonly sides: readonly number[] }[] = []
    for (const [key, times, told] of [
      ['PageUp', 2, 'step 7, weld'],
      ['ArrowRight', 10, 'step 8, draw out, half done'],
      ['PageUp', 1, 'step 8, draw out'],
    ] as const) {
      for (let i = 0; i < times; i++) await route.press(key)
      expect(await route.getAttribute('aria-valuetext')).toBe(told)
      const { metal } = await atRest()
      const size = await page.locator('.scrub .size').textContent()
      seen.push({ metal, sides: (size ?? '').split('×').map((side) => Number.parseFloat(side)) })
      if (key === 'ArrowRight') await picture(page, 'steel-on-its-way-dark')
    }
    const [weld, half, whole] = seen
    const volume = ({ sides }: (typeof seen)[number]) => sides.reduce((a, b) => a * b)
    for (const [one, next] of [
      [weld!, half!],
      [half!, whole!],
    ] as const) {
      expect(next.sides[0]).toBeGreaterThan(one.sides[0]!)
      expect(Math.abs(next.metal / one.metal - 1)).toBeGreaterThan(0.005)
      expect(volume(next) / volume(one)).toBeGreaterThan(0.95)
      expect(volume(next)).toBeLessThan(1.002 * volume(one))
    }
    // Who wants no motion is taken from stop to stop.
    await page.getByRole('button', { name: 'Play' }).click()
    await eventually(() => route.getAttribute('aria-valuetext')).toBe('step 9, restack')
    await page.getByRole('button', { name: 'Stop' }).click()
    await route.press('Home')
    expect(await route.getAttribute('aria-valuetext')).toBe('step 1, stack')
    await route.fill('4')
    await atRest()
    const saved = page.waitForEvent('download')
    await press('Save the picture')
    expect((await saved).suggestedFilename()).toBe('rigging-knife-for-the-kittiwake-ladder.png')
    await page.context().close()
  })
})

describe('the heats', () => {
  it('are drawn, told as tables and saved as files', async () => {
    const page = await app.open('/presentation-sword/heats', { bypassCSP: true })
    await page.getByRole('heading', { name: 'Hardening window' }).waitFor()
    await picture(page, 'heats-sword-light', true)
    const lines = await savedRows(page, '.temperature', 'Save as CSV')
    expect(lines[0]).toContain('bar,step,for,heats')
    const shown = await page.locator('.temperature tbody tr').count()
    expect(lines).toHaveLength(shown + 1)
    // No metal was hotter than its fire, none colder than the room.
    const means = lines.slice(1).map((row) => Number(row.split(',').at(-1)))
    expect(Math.min(...means)).toBeGreaterThan(10)
    expect(Math.max(...means)).toBeLessThan(1300)
    expect(await findings(page)).toEqual([])
    await page.context().close()
  })

  it('in German call steels as the card does, and are saved as a German spreadsheet opens them', async () => {
    const written = JSON.stringify(await kept(app, 'rigging-knife'))
    const answer = await fetch(`${app.server.address}/api/jobs`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: app.server.address },
      body: `{"job":${written.replaceAll('15N20', 'wrought iron')}}`,
    })
    const { id } = (await answer.json()) as { readonly id: string }
    const page = await app.open(`/${id}/heats`, { locale: 'de-DE' })
    await page.getByRole('heading', { name: 'Härtefenster' }).waitFor()
    await picture(page, 'heats-german-iron', true)
    const lines = await savedRows(page, '.carbon', 'Als CSV sichern')
    expect(lines[0]).toBe(
      '\uFEFFStab;Schritt;Stahl;Kohlenstoff, Masse-%;ärmste, Masse-%;reichste, Masse-%',
    )
    for (const line of lines.slice(1)) expect(line).toMatch(/^[^;]+;[^;]+;[^;]+(;\d(,\d+)?){3}$/)
    expect(lines.join()).toContain('Schweißeisen')
    // Not the plots, not what is told of them to those who cannot see them.
    expect(await page.locator('.sheet').innerHTML()).not.toContain('wrought iron')
    await page.context().close()
  })
})

/** Opens the table behind a plot and saves it. */
async function savedRows(page: Page, plot: string, save: string): Promise<string[]> {
  await page.locator(`${plot} summary`).click()
  const saved = page.waitForEvent('download')
  await page.locator(plot).getByRole('button', { name: save }).click()
  return readFileSync(await (await saved).path(), 'utf8')
    .trimEnd()
    .split('\r\n')
}
