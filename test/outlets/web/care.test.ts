import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type OpenApp, eventually, fieldAt, kept, openApp, picture, settled } from './open-app.ts'
import { findings } from './findings.ts'
import { firstLoad } from './first-load.ts'

let app: OpenApp
beforeAll(async () => {
  app = await openApp()
})
afterAll(async () => {
  await app.close()
})

/** Each screen, and what stands there once it is all there. */
const screens = [
  ['piece', '/builders-plate/piece', '.face canvas'],
  ['route', '/builders-plate/route', '.figures'],
  ['route-open', '/builders-plate/route/plate/5', '.before-after'],
  ['route-branches', '/presentation-sword/route', '.figures'],
  ['steel', '/builders-plate/steel', '.stage[aria-busy="false"] canvas[data-drawn="full"]'],
  ['heats', '/builders-plate/heats', '.hardness svg'],
  ['jobs', '/builders-plate/route', '.figures'],
] as const

/** How far a size beside the plan reaches over its outline, px. */
const reachOverPlan = (page: Page) =>
  page.evaluate(() => {
    const left = document
      .querySelector('.scale-drawing svg .ink-line')!
      .getBoundingClientRect().left
    const rights = [...document.querySelectorAll('.aside .placed')].map(
      (one) => one.getBoundingClientRect().right,
    )
    return Math.max(...rights) - left
  })

/** How much room is left at the least, px: right of a step's name, of its dangers, and of its last column. */
const roomOnCard = (page: Page) =>
  page.evaluate(() => {
    const right = (of: Element | Range) => of.getBoundingClientRect().right
    const inked = (element: Element) => {
      const range = document.createRange()
      range.selectNodeContents(element)
      return right(range)
    }
    const least = (selector: string, room: (one: Element) => number) =>
      Math.min(...[...document.querySelectorAll(selector)].map(room))
    return {
      names: least('.step .name', (name) => right(name) - inked(name)),
      dangers: least('.dangers > span', (one) => right(one.closest('.heats')!) - inked(one)),
      columns: least('.step .heats', (one) => right(one.closest('.card')!) - right(one)),
    }
  })

const FACE_IN_FULL = `(document.querySelector('.face canvas')?.width ?? 0) > 250`

const phone = { viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true } as const
const kinds = [
  ['desk', {}],
  ['phone', phone],
] as const

describe('care', () => {
  for (const [kind, size] of kinds)
    it(`no serious finding on any screen, by day and by night, ${kind}; each is pictured`, async () => {
      const page = await app.open('/', { ...size, reducedMotion: 'reduce', bypassCSP: true })
      const found: Record<string, string[]> = {}
      for (const [name, path, ready] of screens) {
        await page.emulateMedia({ colorScheme: 'light' })
        await page.goto(app.server.address + path)
        await page.locator(ready).first().waitFor()
        if (name === 'jobs') {
          await page.getByRole('button', { name: 'Jobs', exact: true }).click()
          await page.locator('.job-name').first().waitFor()
        }
        if (name === 'route-open') await page.locator(ready).first().scrollIntoViewIfNeeded()
        // First comes a coarse face.
        if (/^(piece|route)/.test(name)) await page.waitForFunction(FACE_IN_FULL)
        if (name === 'piece')
          expect(
            await reachOverPlan(page),
            `a size on the ${kind} covers the plan`,
          ).toBeLessThanOrEqual(0)
        await picture(page, `${name}-${kind}-light`)
        // The card is looked into with a row open.
        if (name !== 'route') found[`${name}, light`] = await findings(page)
        const across = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        )
        expect(across, `${name} on the ${kind} runs over its side`).toBeLessThanOrEqual(0)
        await page.emulateMedia({ colorScheme: 'dark' })
        await page.locator('html[data-theme="night"]').waitFor()
        if (name !== 'jobs') await page.locator(ready).first().waitFor()
        await picture(page, `${name}-${kind}-dark`)
        // By night all is as by day but its colours.
        if (name !== 'route') found[`${name}, dark`] = await findings(page, ['color-contrast'])
      }
      expect(
        Object.fromEntries(Object.entries(found).filter(([, list]) => list.length > 0)),
      ).toEqual({})
      await page.context().close()
    })

  it('the whole planning flow by keyboard alone', async () => {
    const page = await app.open('/builders-plate/route')
    await page.locator('.figures').waitFor()
    const active = () =>
      page.evaluate(() => {
        const element = document.activeElement
        if (!(element instanceof HTMLButtonElement)) return ''
        return `${element?.getAttribute('aria-label') ?? ''} ${element?.textContent ?? ''}`
      })
    const tabTo = async (words: RegExp, most = 120) => {
      for (let i = 0; i < most; i++) {
        if (words.test(await active())) return
        await page.keyboard.press('Tab')
      }
      throw new Error(`${String(words)} is not reached by the tab key; at ${await active()}`)
    }
    // A new job from a kind of piece.
    await tabTo(/^ Jobs$/)
    await page.keyboard.press('Enter')
    await tabTo(/a blank card/)
    await page.keyboard.press('Enter')
    // The first steps of its route.
    await tabTo(/Lay the first stack/)
    await page.keyboard.press('Enter')
    await page.keyboard.type('stack')
    await page.keyboard.press('Enter')
    await eventually(() => page.url()).toMatch(/\/route\/bar\/0$/)
    const id = new URL(page.url()).pathname.split('/')[1]
    await tabTo(/Add a step after this/)
    await page.keyboard.press('Enter')
    await page.keyboard.type('draw')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('ArrowUp')
    await page.keyboard.press('Enter')
    await eventually(() => page.url()).toMatch(/\/route\/bar\/1$/)
    // On a slow screen the field is there long before its next frame: no key is lost.
    await page.evaluate(() => {
      const next = requestAnimationFrame.bind(window)
      window.requestAnimationFrame = (draw) => window.setTimeout(() => next(draw), 150)
    })
    await fieldAt(page, 'bars.bar[1].height').focus()
    await page.keyboard.type('11 mm', { delay: 60 })
    await page.keyboard.press('Enter')
    // Moved up, undone, removed, undone, closed.
    await page.locator('[data-step="bar 1"]').focus()
    await page.keyboard.press('Alt+ArrowUp')
    await eventually(() => page.locator('.step .name').allInnerTexts()).toEqual([
      'Draw out',
      'Stack',
    ])
    await page.keyboard.press('Control+z')
    await eventually(() => page.locator('.step .name').allInnerTexts()).toEqual([
      'Stack',
      'Draw out',
    ])
    await page.locator('[data-step="bar 1"]').focus()
    await page.keyboard.press('Delete')
    await eventually(() => page.locator('.step').count()).toBe(1)
    await page.keyboard.press('Control+z')
    await eventually(() => page.locator('.step').count()).toBe(2)
    await page.keyboard.press('Escape')
    await page.locator('.open-step').waitFor({ state: 'detached' })
    await settled(page)
    expect(await kept(app, id)).toMatchObject({
      bars: { bar: [{ do: 'stack' }, { do: 'draw out', height: '11 mm' }] },
    })
    await page.context().close()
  })

  it('every target is at least 44 px or has 44 px to itself, on a phone', async () => {
    const page = await app.open('/builders-plate/route', phone)
    await page.locator('.figures').waitFor()
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('button, select, input')]
        .map((element) => {
          const own = element.getBoundingClientRect()
          // A name stretches over its whole row.
          const box = element.classList.contains('name')
            ? (element.closest('.step-grid')?.getBoundingClientRect() ?? own)
            : own
          return { text: element.textContent, width: box.width, height: box.height }
        })
        .filter(({ height, width }) => width > 0 && height < 43.5),
    )
    expect(small).toEqual([])
    await page.context().close()
  })

  it('jobs begun on a phone have their names, their figures and their plots whole', async () => {
    // The longest name of a kind, and the heaviest piece.
    for (const kind of ['Dagger or double-edged sword', 'Ingot']) {
      const page = await app.open('/jobs', { ...phone, bypassCSP: true })
      await page.locator('.kinds').getByText(kind, { exact: true }).click()
      await page.waitForFunction(FACE_IN_FULL)
      const cut = (selector: string) =>
        page.evaluate(
          (of) =>
            [...document.querySelectorAll(of)]
              .filter((one) => one.scrollWidth > one.clientWidth + 1)
              .map((one) => one.textContent),
          selector,
        )
      expect(await cut('.ledger .shown')).toEqual([])
      await picture(page, `begun-${kind.split(' ')[0]!.toLowerCase()}-phone-light`, true)
      await page.getByRole('button', { name: 'The route', exact: true }).click()
      await page.locator('.figures').waitFor()
      expect(await cut('.figures > p')).toEqual([])
      await page.getByRole('button', { name: 'The heats', exact: true }).click()
      await page.locator('.carbon-cell').first().waitFor()
      const wide = await page
        .locator('.cells > li:not(.whole)')
        .evaluateAll((cells) => cells.map((cell) => Math.round(cell.clientWidth)))
      expect(new Set(wide).size, `cells of ${wide.join(', ')} px`).toBe(1)
      await page.context().close()
    }
  })

  it('names of sixty letters stay on a phone; on a wide screen plots are lettered as large as the notes', async () => {
    const name = 'the bar forged from the old anchor chain of the yard, 1912/3'
    const written: Record<string, unknown> = {
      ...(await kept(app, 'presentation-sword')),
      name,
    }
    const bars = written.bars as Record<string, unknown[]>
    const long = { ...bars, [name]: bars.edge }
    const answer = await fetch(`${app.server.address}/api/jobs`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: app.server.address },
      body: JSON.stringify({ job: { ...written, bars: long } }),
    })
    const { id } = (await answer.json()) as { readonly id: string }
    const page = await app.open(`/${id}/route`, phone)
    await page.locator('.bar-head').nth(4).waitFor()
    const across = () =>
      page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      )
    expect(await across()).toBeLessThanOrEqual(0)
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    await page.locator('.job-name').first().waitFor()
    expect(await across()).toBeLessThanOrEqual(0)
    await page.context().close()

    const wide = await app.open('/builders-plate/heats', {
      viewport: { width: 3840, height: 2160 },
    })
    const lettering = (selector: string) =>
      wide
        .locator(selector)
        .first()
        .evaluate((one) => {
          const box = one.getBoundingClientRect()
          return box.height
        })
    await wide.locator('.hardness svg text').first().waitFor()
    const ratio = (await lettering('.hardness svg text')) / (await lettering('.plot-head .note'))
    expect(ratio).toBeGreaterThan(0.6)
    expect(ratio).toBeLessThan(1.1)
    await picture(wide, 'heats-wide-light')
    await wide.context().close()
  })

  it('speaks German throughout, and the units re-express what was typed without touching it', async () => {
    const page = await app.open('/builders-plate/route/plate/0', { locale: 'de-DE' })
    await page.getByRole('button', { name: 'Der Arbeitsgang', exact: true }).waitFor()
    await page.locator('.figures').waitFor()
    await page.getByText('Was dabei herauskommt').waitFor()
    expect(await page.locator('html').getAttribute('lang')).toBe('de')
    const thickness = fieldAt(page, 'bars.plate[0].sheets[0].thickness')
    await eventually(() => thickness.inputValue()).toBe('≈ 3,18 mm')
    await page.getByRole('button', { name: 'in', exact: true }).click()
    await eventually(() => thickness.inputValue()).toBe('1/8 in')
    expect(await kept(app, 'builders-plate')).toMatchObject({
      bars: { plate: { 0: { sheets: { 0: { thickness: '1/8 in' } } } } },
    })
    for (const [name, path, ready] of screens) {
      await page.goto(app.server.address + path)
      await page.locator(ready).first().waitFor()
      if (name === 'jobs') await page.getByRole('button', { name: 'Aufträge', exact: true }).click()
      await picture(page, `${name}-german`)
      // What has no German says so to screen readers: nothing may, but the language's own name.
      const foreign = page.locator('[lang="en"]:not(option)')
      expect(await foreign.allInnerTexts(), name).toEqual([])
    }
    // Long as they are, names and words of danger keep to their columns, and the columns to the card.
    await page.goto(app.server.address + '/presentation-sword/route')
    await page.locator('.figures').waitFor()
    for (const units of ['mm', 'in']) {
      await page.getByRole('button', { name: units, exact: true }).click()
      for (const width of [1440, 905, 760, 360]) {
        await page.setViewportSize({ width, height: 900 })
        const { names, dangers, columns } = await roomOnCard(page)
        const at = `${width} px, ${units}`
        expect(names, `a name runs out of its column, ${at}`).toBeGreaterThanOrEqual(-0.5)
        expect(columns, `a column runs out of the card, ${at}`).toBeGreaterThanOrEqual(-0.5)
        // On a narrow card they are set from the right.
        expect(dangers, `a word of danger touches the edge, ${at}`).toBeGreaterThan(
          width > 800 ? 5 : -0.5,
        )
      }
    }
    // And what the engine says on a step is there, in German.
    await page.goto(app.server.address + '/builders-plate/route/plate/5')
    await page.getByText('Den Stab in gleiche Stücke schneiden').waitFor()
    await page.context().close()
  })

  it('prints the card with every caution beside its step', async () => {
    const page = await app.open('/builders-plate/route')
    await page.locator('.figures').waitFor()
    // The face is printed as fine as it will be drawn, not as it first stands.
    const wide = () => page.locator('.face canvas').evaluate((c) => (c as HTMLCanvasElement).width)
    await page.evaluate(() => {
      window.print = () => {
        const face = document.querySelector<HTMLCanvasElement>('.face canvas')
        document.documentElement.dataset.printed = String(face?.width)
      }
    })
    await page.keyboard.press('Control+p')
    const printed = await page
      .locator('html[data-printed]')
      .evaluate((root) => Number(root.dataset.printed))
    await page.waitForTimeout(1500)
    expect(printed).toBe(await wide())
    expect(printed).toBeGreaterThan(300)
    // The browser's own menu waits for nothing: what it prints without, it says, and once only.
    await page.reload()
    await page.locator('.figures').waitFor()
    await page.evaluate(() =>
      addEventListener('beforeprint', () => {
        const card = document.querySelector('.card')?.textContent ?? ''
        document.documentElement.dataset.paper = card
      }),
    )
    const fromMenu = async () => {
      await page.pdf()
      const card = (await page.locator('html').getAttribute('data-paper')) ?? ''
      return { isWithout: card.includes('without their times'), hasTimes: /hot; held/.test(card) }
    }
    expect(await fromMenu()).toEqual({ isWithout: true, hasTimes: false })
    await eventually(fromMenu).toEqual({ isWithout: false, hasTimes: true })
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.printed').first().isVisible()).toBe(true)
    expect(await page.locator('.top').isVisible()).toBe(false)
    expect((await page.pdf({ format: 'A4' })).length).toBeGreaterThan(20_000)
    await picture(page, 'route-print', true)
    await page.context().close()
  })

  it('nothing leaps from under a hand while a sheet fills, on a slow machine', async () => {
    for (const path of ['/rigging-knife/piece', '/builders-plate/route/plate/5']) {
      const page = await app.open('/jobs', { bypassCSP: true })
      const machine = await page.context().newCDPSession(page)
      await machine.send('Emulation.setCPUThrottlingRate', { rate: 4 })
      await page.addInitScript(() => {
        const leaps: string[] = []
        Object.assign(globalThis, { leaps })
        new PerformanceObserver((list) => {
          for (const one of list.getEntries() as (PerformanceEntry & { value: number })[])
            if (one.value > 0.01) leaps.push(`${one.value} after ${one.startTime} ms`)
        }).observe({ type: 'layout-shift', buffered: true })
      })
      await page.goto(app.server.address + path)
      await page.waitForFunction(FACE_IN_FULL)
      expect(await page.evaluate(() => (globalThis as { leaps?: string[] }).leaps), path).toEqual(
        [],
      )
      await page.context().close()
    }
  })

  it('is light: little is sent before the card and the face stand, and nothing of the 3D view', async () => {
    const sent = await firstLoad(app.browser, `${app.server.address}/builders-plate/route`)
    const bytes = [...sent.values()].reduce((sum, size) => sum + size, 0)
    const list = [...sent].map(([path, size]) => `${size} ${path}`).join('\n')
    // A page of code, the engine, styles and two weights of a typeface are the least there is.
    expect(sent.size, list).toBeGreaterThan(6)
    expect(bytes, list).toBeGreaterThan(200_000)
    expect(bytes, list).toBeLessThanOrEqual(350_000)
    expect(list).not.toMatch(/card-painter|german/)
  })

  it('no page told an error', () => {
    expect(app.faults.filter((fault) => !/Content Security|ERR_/.test(fault))).toEqual([])
  })
})
