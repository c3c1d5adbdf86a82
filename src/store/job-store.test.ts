import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { afterEach, describe, expect, it } from 'vitest'
import { type JobStore, openStore } from './job-store.ts'

const folders: string[] = []
function folder(): string {
  const made = mkdtempSync(join(tmpdir(), 'billetwright-store-'))
  folders.push(made)
  return made
}
afterEach(() => folders.splice(0).forEach((f) => rmSync(f, { recursive: true })))

const knife = (note: string) => ({ billetwright: 1, name: 'Rigging knife', note, bars: {} })

async function openedWith(store: JobStore, id: string) {
  const got = await store.get(id)
  if (!got.ok) throw new Error(got.problems[0].what)
  return got.ok
}

describe('jobs are kept', () => {
  it('in a real file: what one process wrote another reads, and plain SQL finds it', async () => {
    const at = folder()
    const store = await openStore(at)
    const { id } = await store.add(knife('first'))
    await store.save(id, 1, knife('second'))
    await store.close()

    const raw = new DatabaseSync(join(at, 'billetwright.sqlite'), { readOnly: true })
    const rows = raw
      .prepare('select number, body from versions where job_id = ? order by number')
      .all(id)
    raw.close()
    expect(rows.map((r) => [r.number, JSON.parse(String(r.body)).note])).toEqual([
      [1, 'first'],
      [2, 'second'],
    ])

    const again = await openStore(at)
    expect((await openedWith(again, id)).job.note).toBe('second')
    await again.close()
  })

  it('keeps both when two write on the same version, and says which stands', async () => {
    const store = await openStore()
    const { id } = await store.add(knife('as it was'))
    const one = await store.save(id, 1, knife('from the bench'))
    const two = await store.save(id, 1, knife('from the forge'))
    expect(one.ok).toMatchObject({ saved: { version: 2 } })
    expect(two.ok).toMatchObject({ conflict: { keptAs: 3, standing: { version: 2 } } })
    expect((await openedWith(store, id)).job.note).toBe('from the bench')
    expect((await store.version(id, 3)).ok?.note).toBe('from the forge')
    expect((await store.versions(id)).ok?.map((v) => [v.number, v.aside])).toEqual([
      [3, true],
      [2, false],
      [1, false],
    ])
    await store.close()
  })

  it('restores an old version as a new one, and the same words are no new version', async () => {
    const store = await openStore()
    const { id } = await store.add(knife('a'))
    await store.save(id, 1, knife('b'))
    await store.save(id, 2, knife('b'))
    expect((await store.restore(id, 1)).ok).toMatchObject({ version: 3, job: { note: 'a' } })
    expect((await store.versions(id)).ok).toHaveLength(3)
    await store.close()
  })

  it('takes a job off the list and puts it back; unknown ids are problems', async () => {
    const store = await openStore()
    const { id } = await store.add(knife('a'))
    await store.remove(id)
    expect(await store.list()).toEqual([])
    expect((await store.list(true)).map((j) => j.id)).toEqual([id])
    await store.remove(id, true)
    expect((await store.list()).map((j) => j.id)).toEqual([id])
    expect((await store.get('nobody')).problems?.[0].what).toContain('nobody')
    expect((await store.save('nobody', 1, knife('x'))).problems).toHaveLength(1)
    expect((await store.version(id, 9)).problems).toHaveLength(1)
    await store.close()
  })

  it('resets samples without losing what was made of them', async () => {
    const store = await openStore()
    const samples = [{ id: 'plate', job: knife('as it came') }]
    expect(await store.isEmpty()).toBe(true)
    await store.resetSamples(samples)
    await store.save('plate', 1, knife('mine'))
    await store.remove('plate')
    await store.resetSamples(samples)
    expect((await openedWith(store, 'plate')).job.note).toBe('as it came')
    expect((await store.list()).map((j) => j.id)).toEqual(['plate'])
    expect((await store.version('plate', 2)).ok?.note).toBe('mine')
    await store.close()
  })
})
