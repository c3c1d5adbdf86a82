import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { cardSteps, computeJob, readJob } from '#job'
import { LONG, type OpenApp, eventually, fieldAt, openApp, type } from './open-app.ts'

let app: OpenApp
beforeAll(async () => {
  app = await openApp()
})
afterAll(async () => {
  await app.close()
})

/** The plate's card as the engine has it. */
function plate() {
  const read = readJob(
    readFileSync(new URL('../../../jobs/builders-plate.json', import.meta.url), 'utf8'),
  )
  const computed = read.ok && computeJob(read.ok)
  if (!computed?.ok) throw new Error('the plate does not work out')
  return cardSteps(computed.ok).steps
}

const row = (page: Page, index: number) => page.locator('.step').nth(index)

describe('the card', () => {
  it('says the unit and the noun of every figure wherever it has no heads', async () => {
    const ounces = `${(plate()[0].mass / 0.028349523125).toFixed(1)} oz`
    const page = await app.open('/builders-plate/route', { viewport: { width: 360, height: 780 } })
    await page.locator('.figures').waitFor()
    await page.getByRole('button', { name: 'in', exact: true }).click()
    const said = async (what: string) => (await row(page, 0).locator(what).innerText()).trim()
    await eventually(() => said('.mass')).toBe(ounces)
    expect(await said('.size')).toMatch(/ in$/)
    expect(await said('.layers')).toBe('15 layers')
    expect(await row(page, 2).locator('.lost').innerText()).toMatch(/^scale [\d.]+ oz$/)
    const isShown = (what: string) =>
      row(page, 0)
        .locator(`${what} .unit`)
        .evaluate((unit) => unit.getBoundingClientRect().width > 8)
    for (const what of ['.size', '.mass', '.layers']) expect(await isShown(what), what).toBe(true)
    // Beside its heads the same row says it to the ear only, and on paper there are heads.
    await page.setViewportSize({ width: 1440, height: 900 })
    expect(await page.locator('.card-head .mass').innerText()).toBe('Weight, oz')
    expect(await isShown('.mass')).toBe(false)
    await page.setViewportSize({ width: 703, height: 900 })
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.card-head .mass').isVisible()).toBe(true)
    await page.context().close()
  })

  it('says how long each heat takes and how many blows, on the open step and on paper', async () => {
    const [weld] = plate().filter((step) => step.title === 'weld')
    const blows = Math.round(weld.force?.blows.value ?? 0)
    const page = await app.open('/builders-plate/route/plate/2')
    await page.locator('.row-notes').getByText(`: ${blows} blows (`).waitFor()
    await page.locator('.row-notes').getByText('1 × 1150 °C: from cold about 6 min').waitFor()
    await page.emulateMedia({ media: 'print' })
    const printed = row(page, 2).locator('.printed')
    expect(await printed.innerText()).toContain(`Power hammer of 25 kg: ${blows} blows (`)
    expect(await printed.innerText()).toContain('work it down to 900 °C')
    // What is cut comes first on paper, and once.
    const racks = page.getByRole('heading', { name: 'Off the rack' })
    const tops = await racks.evaluateAll((all) =>
      all.filter((one) => one.checkVisibility()).map((one) => one.getBoundingClientRect().top),
    )
    expect(tops).toHaveLength(1)
    expect(tops[0]).toBeLessThan((await row(page, 0).boundingBox())?.y ?? 0)
    await page.context().close()
  })

  it('names the dangers on every step that has any, and marks each where it first comes up', async () => {
    const page = await app.open('/builders-plate/route')
    await page.locator('.figures').waitFor()
    const dangerous = plate().flatMap(({ cautions }, i) => (cautions.length > 0 ? [i] : []))
    expect(dangerous.length).toBeGreaterThan(20)
    for (const i of dangerous) expect(await row(page, i).locator('.dangers').isVisible()).toBe(true)
    const marked = page.locator('.step', { has: page.locator('.dangers .mark') })
    const specials = ['saw', 'dust', 'arc', 'flux', 'sealed', 'quench', 'acid', 'drill', 'spring']
    const firsts = new Set(
      specials.map((name) => plate().findIndex((s) => s.cautions.some((c) => c.name === name))),
    )
    firsts.delete(-1)
    expect(await marked.count()).toBe(firsts.size)
    expect(firsts.size).toBeLessThan(8)
    await page.context().close()
  })

  it('lays other ways side by side with the card, and stops looking when told', async () => {
    const page = await app.open('/builders-plate/route')
    await page.locator('.figures').waitFor()
    await page.getByRole('button', { name: 'Other ways' }).click()
    const stop = page.locator('.ways-list').getByRole('button', { name: 'Stop' })
    await stop.click()
    await page.getByRole('button', { name: 'Work it out' }).click()
    const table = page.getByRole('region', { name: 'Ways side by side' })
    await table.waitFor({ timeout: LONG })
    const heads = table.locator('thead th')
    expect(await heads.nth(1).innerText()).toContain('the card as it stands')
    expect(await heads.count()).toBeGreaterThan(2)
    const written = (what: string) =>
      table.getByRole('row', { name: what }).locator('td').first().innerText()
    expect(await written('Heats')).toBe('21')
    expect(await written('Cost')).toMatch(/\d/)
    expect(await written('A weld fails')).toMatch(/in 100$/)
    // The heats of every way are followed for its hardness.
    await eventually(() => written('Hardness'), LONG).toMatch(/^\d\d/)
    await page.context().close()
  })

  it('keeps the keyboard where the work is, brings a step into view, and swallows no press', async () => {
    const page = await app.open('/builders-plate/route')
    await page.locator('.figures').waitFor()
    const steps = page.locator('.step')
    const count = await steps.count()
    // A step low on the page: its fields are seen once it is open.
    await page.locator('[data-step="plate 14"]').click()
    const height = fieldAt(page, 'bars.plate[14].height')
    await height.waitFor()
    expect((await height.boundingBox())?.y).toBeLessThan(850)
    // Typed, and pressed at once without leaving the field: both count.
    await height.click()
    await height.fill('10.4 mm')
    const double = page.getByRole('button', { name: 'Duplicate', exact: true })
    const box = await double.boundingBox()
    await page.mouse.move((box?.x ?? 0) + 20, (box?.y ?? 0) + 4)
    await page.mouse.down()
    await page.waitForTimeout(120)
    await page.mouse.up()
    await eventually(() => steps.count()).toBe(count + 1)
    // A step put in by keys has its first field in hand.
    await page.getByRole('button', { name: 'Add a step after this' }).click()
    await page.keyboard.type('crop')
    await page.keyboard.press('Enter')
    const inHand = () =>
      page.evaluate(() => document.activeElement?.closest<HTMLElement>('.field')?.dataset.place)
    await eventually(inHand).toBe('bars.plate[15].start')
    // A job begun from the list puts the keyboard on its sheet.
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    await page.getByRole('button', { name: 'a blank card' }).click()
    await page.getByRole('button', { name: 'Lay the first stack' }).waitFor()
    await eventually(() => page.evaluate(() => document.activeElement?.id)).toBe('sheet')
    await page.context().close()
  })

  it('draws to the same scale while a figure makes no sense, and pushes no field away', async () => {
    const page = await app.open('/galley-knife/route/jacket/3')
    await page.locator('.figures').waitFor()
    const width = fieldAt(page, 'bars.jacket[3].width')
    const drawn = () => page.locator('.head .note').first().innerText()
    const before = await drawn()
    const left = (await width.boundingBox())?.x
    await type(page, 'bars.jacket[3].height', 'banana')
    await page.locator('.field-faults').getByText('Height').waitFor()
    expect(await drawn()).toBe(before)
    // The word itself is a little wider than the figure.
    expect(Math.abs(((await width.boundingBox())?.x ?? 0) - (left ?? 0))).toBeLessThan(33)
    await page.context().close()
  })
})
