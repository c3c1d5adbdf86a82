import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { computeJob, rangeOfJob, readJob, readJobObject, whatIfOfJob } from '#job'
import { sayIn } from '#report'
import { findings } from './findings.ts'
import { type OpenApp, fieldAt, kept, openApp } from './open-app.ts'

const PATIENCE = 60_000
const name = 'galley-knife'
const text = readFileSync(new URL(`../../../jobs/${name}.json`, import.meta.url), 'utf8')
const job = readJob(text).ok!
const say = sayIn('metric')

let app: OpenApp
beforeAll(async () => {
  app = await openApp()
}, PATIENCE)
afterAll(async () => {
  await app.close()
})

async function open(path = `/${name}/route`): Promise<Page> {
  await fetch(`${app.server.address}/api/samples/reset`, { method: 'POST' })
  const page = await app.open(path)
  page.setDefaultTimeout(PATIENCE)
  await page.locator('.figures').waitFor()
  return page
}

/** Waits for something to become so, however busy the machine is. */
const eventually = <T>(look: () => T) => expect.poll(look, { timeout: PATIENCE })

/** What the page says, thin spaces and all as plain ones. */
const plain = (words: string) => words.replace(/[\u2009\u202f\u00a0]/g, ' ')

describe('what lies ahead of a route', () => {
  it(
    'the likely range is the engine’s own; cut longer as told, the piece comes up short no more',
    async () => {
      const page = await open()
      await page.getByRole('button', { name: 'Likely range' }).click()
      const bands = page.locator('.bands')
      const { mass } = rangeOfJob(job, { draws: 2000 }).ok!
      await eventually(async () => plain(await bands.innerText())).toContain(
        `${say.mass(mass!.low).replace(' g', '')}–${say.mass(mass!.high)}`,
      )
      const chance = async () =>
        Number(/^(\d+) in 100/m.exec(await page.locator('.shortfall').innerText())?.[1])
      expect(await chance()).toBeGreaterThan(30)
      await page.getByRole('button', { name: 'How much longer to cut?' }).click()
      await page.getByRole('button', { name: 'Cut it so' }).click()
      // What stood before the change is told to be old till the new one is there.
      await page.getByText('Of the card before the last change.').waitFor()
      await page.getByText('Of the card before the last change.').waitFor({ state: 'detached' })
      expect(await chance()).toBeLessThan(8)
      await page.context().close()
    },
    2 * PATIENCE,
  )

  it(
    'work that is no longer wanted is stopped, and begun again when asked for',
    async () => {
      const page = await open()
      await page.getByRole('button', { name: 'Likely range' }).click()
      await page.getByRole('button', { name: 'Stop' }).click()
      await page.getByRole('button', { name: 'Work it out' }).waitFor()
      expect(await page.locator('.bands').count()).toBe(0)
      await page.getByRole('button', { name: 'Work it out' }).click()
      await page.locator('.bands').waitFor()
      await page.context().close()
    },
    2 * PATIENCE,
  )

  it(
    'a number is tried, what moves is told, and nothing is changed before it is taken',
    async () => {
      const page = await open()
      const before = await kept(app, name)
      await page.getByRole('button', { name: 'What matters most' }).click()
      const lever = page.locator('button.lever', { hasText: '5.2 mm' })
      await lever.focus()
      await page.keyboard.press('Enter')
      const field = page.locator('.try-number input')
      await field.fill('5.6 mm')
      const { before: was, after } = whatIfOfJob(job, 'bars.knife[4].height', '5.6 mm').ok!
      const steel = page.locator('.moves tr', { hasText: 'steel off the rack' })
      await eventually(async () => plain(await steel.innerText())).toContain(say.mass(after.steel))
      expect(plain(await steel.innerText())).toContain(say.mass(was.steel))
      expect(await findings(page)).toEqual([])
      expect(await kept(app, name)).toEqual(before)

      await field.fill('90 mm')
      await page.locator('.try-number .fault').waitFor()
      expect(await page.getByRole('button', { name: 'Take it' }).count()).toBe(0)

      await field.fill('5.6 mm')
      await page.getByRole('button', { name: 'Take it' }).click()
      await eventually(async () => {
        const taken = (await kept(app, name)) as { bars: { knife: { height?: string }[] } }
        return taken.bars.knife[4].height
      }).toBe('5.6 mm')
      await page.getByRole('button', { name: /^Undo/ }).click()
      await eventually(() => kept(app, name)).toEqual(before)
      await page.context().close()
    },
    2 * PATIENCE,
  )

  it(
    'what was measured after a step stands on the card, and the plan goes on from it',
    async () => {
      const page = await open(`/${name}/route/jacket/3`)
      const before = await kept(app, name)
      await page.getByRole('button', { name: 'What was measured' }).click()
      const type = async (side: string, value: string) => {
        await fieldAt(page, `measured[0].${side}`).fill(value)
        await fieldAt(page, `measured[0].${side}`).press('Enter')
      }
      await type('width', '38.4 mm')
      await type('height', '12.2 mm')
      const measured = [{ bar: 'jacket', after: 4, width: '38.4 mm', height: '12.2 mm' }]
      await eventually(() => kept(app, name)).toMatchObject({ measured })
      const read = readJobObject({ ...(JSON.parse(text) as object), measured }).ok!
      const { spare } = computeJob(read).ok!.plan.standings[0]
      const words = spare < 0 ? `${say.length(-spare)} short` : `${say.length(spare)} to spare`
      const standing = page.locator('.standing')
      await eventually(async () => plain(await standing.innerText())).toContain(words)
      expect(await findings(page)).toEqual([])

      await page.getByRole('button', { name: 'Strike it out' }).click()
      await standing.waitFor({ state: 'detached' })
      await eventually(() => kept(app, name)).toEqual(before)
      expect(app.faults).toEqual([])
      await page.context().close()
    },
    2 * PATIENCE,
  )
})
