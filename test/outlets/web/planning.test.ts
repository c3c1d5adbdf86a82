import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { computeJob, readJob } from '#job'
import {
  LONG,
  type OpenApp,
  eventually,
  fieldAt,
  kept,
  openApp,
  settled,
  type,
} from './open-app.ts'

let app: OpenApp
beforeAll(async () => {
  app = await openApp()
})
afterAll(async () => {
  await app.close()
})

const sample = (name: string) =>
  readFileSync(new URL(`../../../jobs/${name}.json`, import.meta.url), 'utf8')

/** The finished mass as the engine has it, as the card prints it. */
function massOf(text: string): string {
  const read = readJob(text)
  const computed = read.ok && computeJob(read.ok)
  if (!computed?.ok) throw new Error(JSON.stringify(read.problems ?? computed?.problems))
  return `${(computed.ok.finishedMass * 1000).toFixed(0)} g`
}

describe('planning', () => {
  it('opens on the plate, complete; a changed size changes card and drawing', async () => {
    const page = await app.open('/')
    await eventually(() => page.url()).toMatch(/builders-plate\/route/)
    await page.getByRole('heading', { name: 'Builder’s plate, pilot cutter Kittiwake' }).waitFor()
    const figures = page.locator('.figures')
    await figures.getByText(massOf(sample('builders-plate')), { exact: true }).waitFor()
    expect(await page.locator('.step').count()).toBe(25)
    expect(await page.locator('.step canvas').count()).toBe(50)

    await page.getByRole('button', { name: 'The piece', exact: true }).click()
    const drawn = page.locator('.scale-drawing svg').first()
    const before = await drawn.innerHTML()
    const cuttings = page.locator('.patterns img')
    expect(await cuttings.count()).toBe(await page.locator('.patterns li').count())
    await cuttings.last().scrollIntoViewIfNeeded()
    await eventually(() =>
      cuttings.evaluateAll((all) => all.every((one) => (one as HTMLImageElement).naturalWidth > 0)),
    ).toBe(true)
    await type(page, 'piece.length', '141 mm')
    await type(page, 'wishes.mass', '512 g')
    await eventually(() => drawn.innerHTML()).not.toBe(before)
    await page.getByRole('button', { name: 'The route', exact: true }).click()
    const changed = sample('builders-plate')
      .replace('"140 mm"', '"141 mm"')
      .replace(/"mass": "\d+ g"/, '"mass": "512 g"')
    await figures.getByText(massOf(changed), { exact: true }).waitFor()
    await settled(page)
    expect(await kept(app, 'builders-plate')).toMatchObject({ piece: { length: '141 mm' } })
    await page.context().close()
  })

  it('a weight that cannot be comes with two cures; pressing one makes the plan sound', async () => {
    const page = await app.open('/builders-plate/piece')
    await type(page, 'wishes.mass', '700 g')
    const wish = page.locator('.weight-wish')
    await wish.getByRole('heading', { level: 2 }).waitFor()
    expect(await wish.getByRole('button').count()).toBe(2)
    await wish.getByRole('button').first().click()
    await wish.waitFor({ state: 'detached' })
    await settled(page)
    const after = (await kept(app, 'builders-plate')) as { piece: { thickness: string } }
    expect(parseFloat(after.piece.thickness)).toBeGreaterThan(9)
    const read = readJob(JSON.stringify(after))
    const { kind, values } = read.ok?.piece ?? {}
    const solid = kind?.build(values as never)
    expect((solid?.ok?.volume ?? 0) * 7850).toBeGreaterThan(0.7 * 0.94)
    expect((solid?.ok?.volume ?? 0) * 7850).toBeLessThan(0.7 * 1.06)
    await page.context().close()
  })

  it('the rigging knife from an empty card', async () => {
    const wanted = JSON.parse(sample('rigging-knife')) as {
      piece: Record<string, string>
      shop: Record<string, string>
      bars: { knife: Record<string, unknown>[] }
    }
    const page = await app.open('/builders-plate/route')
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    await page.getByRole('button', { name: 'a blank card' }).click()
    await page.getByRole('button', { name: 'Lay the first stack' }).waitFor()
    const id = new URL(page.url()).pathname.split('/')[1]

    await page.getByRole('button', { name: 'The piece', exact: true }).click()
    await fieldAt(page, 'piece.kind').selectOption('Knife, full tang')
    await page.getByRole('button', { name: /more, left as usual/ }).click()
    for (const [name, value] of Object.entries(wanted.piece))
      if (name !== 'kind') await type(page, `piece.${name}`, value)
    await page.getByRole('button', { name: 'The shop', exact: true }).click()
    for (const [name, value] of Object.entries(wanted.shop)) await type(page, `shop.${name}`, value)

    await page.getByRole('button', { name: 'The route', exact: true }).click()
    for (const [i, step] of wanted.bars.knife.entries()) {
      await page
        .getByRole('button', { name: i === 0 ? 'Lay the first stack' : 'Add a step', exact: true })
        .click()
      await page.getByRole('combobox', { name: 'What is done next?' }).fill(String(step.do))
      await page.keyboard.press('Enter')
      await eventually(() => page.url()).toMatch(new RegExp(`/route/bar/${i}$`))
      for (const [name, value] of Object.entries(step)) {
        if (name === 'do') continue
        if (!Array.isArray(value)) {
          await type(page, `bars.bar[${i}].${name}`, String(value))
          continue
        }
        for (const [k, item] of (value as Record<string, string>[]).entries())
          for (const [key, one] of Object.entries(item))
            await type(page, `bars.bar[${i}].${name}[${k}].${key}`, one)
      }
    }
    const figures = page.locator('.figures')
    await figures.getByText(massOf(sample('rigging-knife')), { exact: true }).waitFor()
    await settled(page)
    expect(await kept(app, id)).toMatchObject({
      piece: wanted.piece,
      shop: wanted.shop,
      bars: { bar: wanted.bars.knife },
    })
    await page.context().close()
  })

  it('a blank card draws and sizes the kind of piece chosen before there is any bar', async () => {
    const page = await app.open('/builders-plate/route')
    await page.getByRole('button', { name: 'Jobs', exact: true }).click()
    await page.getByRole('button', { name: 'a blank card' }).click()
    await page.getByRole('button', { name: 'Lay the first stack' }).waitFor()
    await page.getByRole('button', { name: 'The piece', exact: true }).click()
    await fieldAt(page, 'piece.kind').selectOption('Knife, full tang')
    await page.locator('.scale-drawing svg').first().waitFor()
    expect(await fieldAt(page, 'piece.bladeLength').inputValue()).toBe('120 mm')
    expect(await fieldAt(page, 'piece.handleLength').inputValue()).toBe('110 mm')
    expect(await page.getByText('keeps its last sound plan').count()).toBe(0)
    const length = () => page.locator('.scale-drawing svg').first().innerHTML()
    const before = await length()
    await type(page, 'piece.bladeLength', '150 mm')
    await eventually(length).not.toBe(before)
    await page.getByRole('button', { name: 'Lay the first stack' }).click()
    await eventually(() => page.url()).toMatch(/\/route$/)
    await page.context().close()
  })

  it('a kind of piece nobody knows is told once, in words, without the names of the file', async () => {
    const job = { ...JSON.parse(sample('rigging-knife')), piece: { kind: 'tang-knife' } } as object
    const answer = await fetch(`${app.server.address}/api/jobs`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: app.server.address },
      body: JSON.stringify({ job }),
    })
    const { id } = (await answer.json()) as { id: string }
    const page = await app.open(`/${id}/piece`)
    await page.getByText('This program knows no such kind of piece.').first().waitFor()
    expect(await page.getByText('This program knows no such kind of piece.').count()).toBe(1)
    await page.getByRole('button', { name: 'The route', exact: true }).click()
    await page.getByText('This program knows no such kind of piece.').first().waitFor()
    expect(await page.locator('main').innerText()).not.toMatch(/-knife/)
    await page.context().close()
  })

  it('fifty changes are undone one by one and done again', async () => {
    const page = await app.open('/galley-knife/piece')
    await fieldAt(page, 'name').waitFor()
    const before = await kept(app, 'galley-knife')
    const field = fieldAt(page, 'name')
    for (let i = 1; i <= 50; i++) {
      await field.fill(`Galley knife ${i}`)
      await field.press('Enter')
    }
    const undo = page.getByRole('button', { name: /^Undo/ })
    expect(await undo.innerText()).toBe('Undo 50')
    for (let i = 0; i < 49; i++) await page.keyboard.press('Control+z')
    await undo.click()
    expect(await undo.isDisabled()).toBe(true)
    await settled(page)
    expect(await kept(app, 'galley-knife')).toEqual(before)
    for (let i = 0; i < 50; i++) await page.keyboard.press('Control+Shift+z')
    await settled(page)
    expect((await kept(app, 'galley-knife')).name).toBe('Galley knife 50')
    await page.context().close()
  })

  it('a broken job file says what is wrong and harms nothing; a faulty one opens with its faults', async () => {
    const page = await app.open('/builders-plate/route')
    await page.locator('.step').first().waitFor()
    const drop = (name: string, text: string) =>
      page.evaluate(
        ([file, content]) => {
          const data = new DataTransfer()
          data.items.add(new File([content], file, { type: 'application/json' }))
          for (const kind of ['dragover', 'drop'])
            window.dispatchEvent(new DragEvent(kind, { dataTransfer: data, cancelable: true }))
        },
        [name, text] as const,
      )
    await drop('torn.json', '{ "billetwright": 1, "name": "torn", "bars": {')
    const notice = page.locator('.notice')
    await notice.getByText('“torn.json” cannot be opened as a job').waitFor()
    expect(await notice.innerText()).toContain('line 1')
    expect(new URL(page.url()).pathname).toBe('/builders-plate/route')
    await notice.getByRole('button', { name: 'Close' }).click()

    // What is no job at all is named as one would name it, and nothing is said to be open.
    await drop('deck.jpg', '\u00ff\u00d8\u00ff\u00e0 JFIF')
    await notice.getByText('“deck.jpg” is no job file').waitFor()
    expect(await notice.innerText()).not.toMatch(/token|JSON\b(?! )/)
    await drop('long.json', sample('rigging-knife').replace('{', `{ "note": "${'x'.repeat(6e6)}",`))
    await notice.getByText('“long.json” is 6 MB, too large for a job').waitFor()
    // One that the engine takes and the server does not.
    await page.route('**/api/jobs', (route) =>
      route.request().method() === 'POST'
        ? route.fulfill({ status: 413, json: { problems: [] } })
        : route.fallback(),
    )
    await drop('faulty.json', sample('rigging-knife').replace('"weld"', '"wled"'))
    await notice.getByText('It is too large for a job').waitFor()
    await page.unroute('**/api/jobs')
    expect(new URL(page.url()).pathname).toBe('/builders-plate/route')

    await drop('faulty.json', sample('rigging-knife').replace('"weld"', '"wled"'))
    // The plate may have faults of its own by now: the new job's are meant.
    await eventually(() => page.url()).not.toMatch(/builders-plate/)
    const wrong = page.locator('.step.wrong').first()
    await wrong.waitFor()
    await wrong.getByRole('button').first().click()
    await page.getByRole('button', { name: 'Take weld' }).click()
    await page.locator('.step.wrong').first().waitFor({ state: 'detached' })
    await page.locator('.figures').waitFor()
    await page.context().close()
  })

  it('steps are moved by dragging, doubled, removed, and a bar beside another can be begun', async () => {
    const page = await app.open('/rigging-knife/route')
    const names = () => page.locator('.step .name b').allInnerTexts()
    await page.locator('.figures').waitFor()
    const before = await names()
    const [from, to] = [page.locator('.number').nth(17), page.locator('.number').nth(16)]
    await from.hover()
    await page.mouse.down()
    const box = await to.boundingBox()
    await page.mouse.move((box?.x ?? 0) + 5, (box?.y ?? 0) + 4, { steps: 5 })
    await page.mouse.up()
    await eventually(names).toEqual([
      ...before.slice(0, 16),
      before[17],
      before[16],
      ...before.slice(18),
    ])
    await page.getByRole('button', { name: /^Undo/ }).click()
    await eventually(names).toEqual(before)

    await page.locator('[data-step="knife 1"]').click()
    await page.getByRole('button', { name: 'Duplicate', exact: true }).click()
    await eventually(() => page.locator('.step').count()).toBe(before.length + 1)
    await page.locator('[data-step="knife 2"]').focus()
    await page.keyboard.press('Delete')
    await eventually(names).toEqual(before)

    await page.getByRole('button', { name: 'Add a bar' }).click()
    await page.getByRole('combobox', { name: 'What is done next?' }).fill('take bar')
    await page.keyboard.press('Enter')
    await eventually(() => page.locator('.bar-head').count()).toBe(2)
    await page.getByText('becomes the piece').waitFor()
    await settled(page)
    await page.context().close()
  })

  it('a pattern pressed is planned for, another way taken, and both are undone', async () => {
    await fetch(`${app.server.address}/api/samples/reset`, { method: 'POST' })
    const page = await app.open('/rigging-knife/piece')
    const raindrop = page.getByRole('button', { name: /^Raindrop/ })
    // Cuttings are drawn by the engine, with the build: none is of one tone.
    await eventually(() =>
      raindrop.locator('img').evaluate((drawn: HTMLImageElement) => {
        const copy = new OffscreenCanvas(drawn.naturalWidth || 1, drawn.naturalHeight || 1)
        const ink = copy.getContext('2d')!
        ink.drawImage(drawn, 0, 0)
        return new Set(ink.getImageData(0, 0, copy.width, copy.height).data).size
      }),
    ).toBeGreaterThan(20)
    const before = await kept(app, 'rigging-knife')
    await raindrop.click()
    await eventually(() => raindrop.getAttribute('aria-pressed'), LONG).toBe('true')
    await settled(page)
    const after = (await kept(app, 'rigging-knife')) as { bars: { knife: { do: string }[] } }
    expect(after.bars.knife.map((step) => step.do)).toContain('dimple')
    expect(after.bars.knife.map((step) => step.do)).not.toContain('ladder')
    await page.getByRole('button', { name: /^Undo/ }).click()
    await settled(page)
    expect(await kept(app, 'rigging-knife')).toEqual(before)

    await page.getByRole('button', { name: 'The route', exact: true }).click()
    await page.getByRole('button', { name: 'Other ways' }).click()
    const take = page.getByRole('button', { name: 'Take this way' })
    await take.first().waitFor({ timeout: LONG })
    expect(await page.getByText('as it is written').count()).toBeLessThanOrEqual(1)
    await take.first().click()
    await settled(page)
    const taken = await kept(app, 'rigging-knife')
    expect(taken).not.toEqual(before)
    const read = readJob(JSON.stringify(taken))
    expect(read.ok && computeJob(read.ok).problems).toBeUndefined()
    await page.context().close()
  })

  it('no page told an error', () => {
    // An answer of the server that refuses is told by the browser as well.
    expect(app.faults.filter((fault) => !/Failed to load resource/.test(fault))).toEqual([])
  })
})
