import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { type OpenApp, eventually, fieldAt, kept, openApp, settled, type } from './open-app.ts'

let app: OpenApp
beforeAll(async () => {
  app = await openApp()
})
afterAll(async () => {
  await app.close()
})
afterEach(() => {
  app.faults.length = 0
})

describe('nothing is lost', () => {
  it('a reload in the middle of a thought keeps the thought, its undo, and the open step', async () => {
    const page = await app.open('/rigging-knife/route/knife/3')
    // Saving never gets through: what is typed lives in the browser alone.
    await page.route('**/api/jobs/*', (route) =>
      route.request().method() === 'PUT' ? route.abort() : route.fallback(),
    )
    await type(page, 'bars.knife[3].height', '13.5 mm')
    await page.reload()
    await eventually(() => fieldAt(page, 'bars.knife[3].height').inputValue()).toBe('13.5 mm')
    expect(await page.getByRole('button', { name: /^Undo/ }).innerText()).toBe('Undo 1')
    await page.unroute('**/api/jobs/*')
    await settled(page)
    expect(await kept(app, 'rigging-knife')).toMatchObject({
      bars: { knife: { 3: { height: '13.5 mm' } } },
    })
    await page.getByRole('button', { name: /^Undo/ }).click()
    await eventually(() => fieldAt(page, 'bars.knife[3].height').inputValue()).toBe('14 mm')
    await page.context().close()
  })

  it('back and forward lead through sheets and open steps', async () => {
    const page = await app.open('/rigging-knife/route')
    await page.locator('[data-step="knife 4"]').click()
    await page.getByRole('button', { name: 'The piece', exact: true }).click()
    await fieldAt(page, 'piece.width').waitFor()
    await page.goBack()
    await page.locator('.open-step').waitFor()
    await page.goBack()
    await page.locator('.open-step').waitFor({ state: 'detached' })
    await page.goForward()
    await fieldAt(page, 'bars.knife[4].pieces').waitFor()
    await page.context().close()
  })

  it('while a job is fetched no other stands under its address, and one that comes late stays away', async () => {
    const page = await app.open('/builders-plate/route')
    await page.locator('.step').first().waitFor()
    const { promise: held, resolve: release } = Promise.withResolvers<void>()
    await page.route('**/api/jobs/rigging-knife', async (route) => {
      await held
      await route.continue()
    })
    const choose = async (name: RegExp) => {
      await page.getByRole('button', { name: 'Jobs', exact: true }).click()
      await page.getByRole('button', { name }).click()
    }
    await choose(/^Rigging knife/)
    await eventually(() => page.url()).toMatch(/\/rigging-knife\/route$/)
    expect(await page.locator('.step').count()).toBe(0)
    await choose(/^Galley knife/)
    await page.locator('[data-step="core 0"]').waitFor()
    const answer = page.waitForResponse('**/api/jobs/rigging-knife')
    release()
    await (await answer).finished()
    await page.evaluate(() => new Promise((done) => setTimeout(done)))
    expect(await page.title()).toMatch(/^Galley knife/)
    await choose(/^Rigging knife/)
    await page.getByRole('heading', { name: /^Rigging knife/ }).waitFor()
    await page.context().close()
  })

  it('a slow answer to a save clashes with no change made meanwhile', async () => {
    const page = await app.open('/rigging-knife/piece')
    const { promise: held, resolve: release } = Promise.withResolvers<void>()
    let sent = 0
    await page.route('**/api/jobs/*', async (route) => {
      if (route.request().method() !== 'PUT') return route.fallback()
      sent++
      const response = await route.fetch()
      await held
      await route.fulfill({ response })
    })
    await type(page, 'name', 'Rigging knife, first thought')
    await eventually(() => sent).toBe(1)
    await type(page, 'name', 'Rigging knife, second thought')
    // Longer than a change waits to be saved.
    await page.waitForTimeout(1200)
    expect(sent).toBe(1)
    release()
    await settled(page)
    expect((await kept(app, 'rigging-knife')).name).toBe('Rigging knife, second thought')
    expect(await page.getByRole('button', { name: /^Undo/ }).innerText()).toBe('Undo 2')
    await page.context().close()
  })

  it('opens again with the network gone, from the first visit on, and saves when it is back', async () => {
    const page = await app.open('/galley-knife/route', { serviceWorkers: 'allow' })
    const { length } = (await (await fetch(`${app.server.address}/api/jobs`)).json()) as unknown[]
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready
    })
    const jobsKept = () =>
      page.evaluate(async () => {
        const requests = await (await caches.open('jobs')).keys()
        return requests.filter(({ url }) => /\/api\/jobs\/[^/]+$/.test(url)).length
      })
    await eventually(jobsKept).toBe(length)
    await page.context().setOffline(true)
    await page.reload()
    await page.locator('.figures').waitFor()
    // A job that was never opened here.
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    await page.getByRole('button', { name: /^Rigging knife/ }).click()
    await page.locator('.figures').waitFor()
    await page.goBack()
    await page.goBack()
    await page.getByRole('heading', { name: /^Galley knife/ }).waitFor()
    await page.getByRole('button', { name: 'The piece', exact: true }).click()
    await type(page, 'name', 'Galley knife, thought of at sea')
    await page.locator('[data-saving="offline"]').waitFor()
    await page.reload()
    await page.getByRole('heading', { name: 'Galley knife, thought of at sea' }).waitFor()
    await page.context().setOffline(false)
    await settled(page)
    expect((await kept(app, 'galley-knife')).name).toBe('Galley knife, thought of at sea')
    // What was saved is kept here too, as it was saved.
    const nameKept = () =>
      page.evaluate(async () => {
        const answer = await (await caches.open('jobs')).match('/api/jobs/galley-knife')
        return ((await answer?.json()) as { name?: string } | undefined)?.name
      })
    await eventually(nameKept).toBe('Galley knife, thought of at sea')
    await page.context().close()
  })

  it('without its engine a job can still be read, whatever is done with the notice of it', async () => {
    const page = await app.open('/jobs')
    await page.route('**/*engine-worker*', (route) => route.abort())
    await page.goto(app.server.address + '/rigging-knife/route')
    const notice = page.locator('.notice')
    for (const job of ['rigging-knife', 'builders-plate']) {
      await page.evaluate((to) => {
        history.pushState({}, '', `/${to}/route`)
        dispatchEvent(new PopStateEvent('popstate'))
      }, job)
      await notice.getByText('The engine could not be loaded.').waitFor()
      await notice.getByRole('button', { name: 'Close' }).click()
      await page.locator('.step').first().waitFor()
    }
    await page.context().close()
  })

  it('the list of jobs has an address: reload stays there, back and forward lead out and in', async () => {
    const page = await app.open('/rigging-knife/piece')
    await fieldAt(page, 'piece.width').waitFor()
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    expect(new URL(page.url()).pathname).toBe('/jobs')
    await page.getByRole('heading', { name: 'New job' }).waitFor()
    await page.reload()
    await page.getByRole('heading', { name: 'New job' }).waitFor()
    expect(await page.title()).toMatch(/^Jobs/)
    await page.goBack()
    await fieldAt(page, 'piece.width').waitFor()
    await page.goForward()
    await page.getByRole('heading', { name: 'New job' }).waitFor()
    // Out of it again by its own word and by the key that closes what is open.
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    await fieldAt(page, 'piece.width').waitFor()
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    await page.keyboard.press('Escape')
    await fieldAt(page, 'piece.width').waitFor()
    // Reloaded there, the sheets are those of the job this window had open, not of the newest.
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    await page.reload()
    const newest = await page.locator('.job-name').first().innerText()
    await page.getByRole('button', { name: 'The piece', exact: true }).click()
    await fieldAt(page, 'piece.width').waitFor()
    expect(new URL(page.url()).pathname).toBe('/rigging-knife/piece')
    expect(await page.locator('.sheet').innerText()).not.toContain(newest)
    await page.context().close()
  })

  it('two windows on one job agree, of one browser at once, of two as they save', async () => {
    const one = await app.open('/builders-plate/piece')
    const two = await one.context().newPage()
    await two.goto(one.url())
    const far = await app.open('/builders-plate/piece')
    for (const page of [one, two, far]) await fieldAt(page, 'piece.width').waitFor()
    await type(one, 'piece.width', '61 mm')
    for (const page of [two, far])
      await eventually(() => fieldAt(page, 'piece.width').inputValue()).toBe('61 mm')
    await settled(one)
    await type(two, 'piece.width', '60.5 mm')
    await settled(two)
    await eventually(() => fieldAt(far, 'piece.width').inputValue()).toBe('60.5 mm')
    await type(far, 'piece.width', '60 mm')
    await settled(far)
    await eventually(() => fieldAt(one, 'piece.width').inputValue()).toBe('60 mm')
    await one.context().close()
    await far.context().close()
  })

  it('two windows that change at once: one stands, the other is kept and can be laid on top', async () => {
    const here = await app.open('/presentation-sword/piece')
    const there = await app.open('/presentation-sword/piece')
    for (const page of [here, there]) await fieldAt(page, 'name').waitFor()
    // Here is cut off while both change; what it has to say comes late.
    await here.route('**/api/**', (route) => route.abort())
    await type(here, 'name', 'Sword, from here')
    await type(there, 'name', 'Sword, from there')
    await settled(there)
    await here.unroute('**/api/**')
    const notice = here.locator('.notice')
    await notice.getByText(/yours is kept as version/).waitFor()
    expect((await kept(app, 'presentation-sword')).name).toBe('Sword, from there')
    await notice.getByRole('button', { name: 'Lay mine on top' }).click()
    await settled(here)
    expect((await kept(app, 'presentation-sword')).name).toBe('Sword, from here')
    await eventually(() => fieldAt(there, 'name').inputValue()).toBe('Sword, from here')
    await here.context().close()
    await there.context().close()
  })

  it('versions can be restored; samples come back; what is put away can be put back', async () => {
    const page = await app.open('/builders-plate/piece')
    await type(page, 'name', 'Plate, spoilt')
    await settled(page)
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    await page.getByRole('button', { name: 'Versions', exact: true }).click()
    await page.getByRole('button', { name: 'Restore: version 1', exact: true }).click()
    await eventually(async () => (await kept(app, 'builders-plate')).name).toBe(
      "Builder's plate, pilot cutter Kittiwake",
    )
    await page.getByRole('button', { name: 'Back to the jobs' }).click()
    await page.getByRole('button', { name: /^Put away: Rigging knife/ }).click()
    await page.getByRole('button', { name: 'Put it back' }).click()
    await page.getByRole('button', { name: /^Put away: Rigging knife/ }).waitFor()
    await page.getByRole('button', { name: 'Bring the sample jobs back' }).click()
    await eventually(async () => (await kept(app, 'presentation-sword')).name).toContain(
      'Presentation sword',
    )
    await page.context().close()
  })

  it('the job file comes out as it went in', async () => {
    const page = await app.open('/builders-plate/route')
    await page.locator('.figures').waitFor()
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download the job file' }).click(),
    ])
    const text = await (await download.createReadStream()).toArray()
    expect(JSON.parse(Buffer.concat(text as Buffer[]).toString())).toEqual(
      await kept(app, 'builders-plate'),
    )
    await page.context().close()
  })
})
