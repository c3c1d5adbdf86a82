import { createServer } from 'node:http'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { request } from 'node:http'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Serving, serve } from '#server'

let server: Serving
const folder = mkdtempSync(join(tmpdir(), 'billetwright-server-'))
beforeAll(async () => {
  server = await serve({ port: 0, dataDir: folder })
})
afterAll(async () => {
  await server.stop()
  rmSync(folder, { recursive: true })
})

async function ask(method: string, path: string, body?: unknown) {
  const answer = await fetch(server.address + path, {
    method,
    ...(body !== undefined && {
      body: JSON.stringify(body),
      headers: { 'content-type': 'application/json' },
    }),
  })
  return { status: answer.status, body: (await answer.json()) as Record<string, unknown> }
}

/** The status of a request with headers a browser would not let a page set. */
function raw(headers: Record<string, string>, path = '/api/jobs'): Promise<number> {
  const { port } = new URL(server.address)
  return new Promise((resolve, reject) => {
    request({ host: '127.0.0.1', port, path, headers }, (answer) => {
      answer.resume()
      resolve(answer.statusCode ?? 0)
    })
      .on('error', reject)
      .end()
  })
}

describe('the server', () => {
  it('answers only this machine’s own pages', async () => {
    expect(await raw({ host: 'billets.example' })).toBe(403)
    expect(await raw({ host: '127.0.0.1', origin: 'http://billets.example' })).toBe(403)
    expect(await raw({ host: 'localhost' })).toBe(200)
    const page = await fetch(server.address)
    expect(page.headers.get('content-security-policy')).toContain("default-src 'self'")
    expect(page.headers.get('cross-origin-embedder-policy')).toBe('require-corp')
    expect(page.headers.get('access-control-allow-origin')).toBeNull()
  })

  it('describes every endpoint it answers, and answers as described', async () => {
    const { body } = await ask('GET', '/api/openapi.json')
    const paths = body.paths as Record<string, Record<string, { responses: object }>>
    expect(body.openapi).toBe('3.1.0')
    for (const [path, methods] of Object.entries(paths)) {
      for (const [method, { responses }] of Object.entries(methods)) {
        if (path === '/api/events') continue
        const asked = path.replace('{id}', 'nobody').replace('{number}', '7')
        const needsBody = method === 'put' || (method === 'post' && !/put-back|reset/.test(path))
        const { status } = await ask(method.toUpperCase(), asked, needsBody ? {} : undefined)
        expect(Object.keys(responses), `${method} ${path}`).toContain(String(status))
      }
    }
  })

  it('keeps both of two that save on one version', async () => {
    const job = { billetwright: 1, name: 'Boom fitting', bars: {} }
    const { body: line } = await ask('POST', '/api/jobs', { job })
    const path = `/api/jobs/${String(line.id)}`
    const one = await ask('PUT', path, { version: 1, job: { ...job, note: 'one' } })
    const two = await ask('PUT', path, { version: 1, job: { ...job, note: 'two' } })
    expect([one.status, two.status]).toEqual([200, 409])
    expect(two.body).toMatchObject({ keptAs: 3, standing: { version: 2, job: { note: 'one' } } })
    expect((await ask('GET', `${path}/versions/3`)).body.note).toBe('two')
  })

  it('tells all windows what was saved', async () => {
    const stop = new AbortController()
    const stream = await fetch(`${server.address}/api/events`, { signal: stop.signal })
    const reader = stream.body?.pipeThrough(new TextDecoderStream()).getReader()
    let heard = ''
    const hear = async (words: string) => {
      while (!heard.includes(words)) {
        const { value, done } = (await reader?.read()) ?? { done: true }
        if (done) throw new Error(`the stream ended: ${heard}`)
        heard += value
      }
    }
    await hear('event: hello')
    const job = { billetwright: 1, name: 'Cleat', bars: {} }
    const { body } = await ask('POST', '/api/jobs', { job })
    await hear('event: list')
    await ask('PUT', `/api/jobs/${String(body.id)}`, { version: 1, job: { ...job, note: 'x' } })
    await hear(`"id":"${String(body.id)}","version":2`)
    stop.abort()
  })

  it('takes the next port when one is taken', async () => {
    const blocker = createServer()
    const port = await new Promise<number>((resolve) =>
      blocker.listen(0, '127.0.0.1', () => resolve((blocker.address() as { port: number }).port)),
    )
    const other = await serve({ port, dataDir: mkdtempSync(join(folder, 'other-')) })
    expect(Number(new URL(other.address).port)).toBeGreaterThan(port)
    await other.stop()
    blocker.close()
  })

  it('refuses what is too large or no JSON, in the shape of problems', async () => {
    const big = await ask('POST', '/api/jobs', { job: { name: 'x'.repeat(4_000_000) } })
    expect(big.status).toBe(413)
    expect(big.body.problems).toHaveLength(1)
    const form = await fetch(`${server.address}/api/jobs`, { method: 'POST', body: 'name=x' })
    expect(form.status).toBe(415)
  })
})
