import { existsSync } from 'node:fs'
import { join } from 'node:path'
import fastifyStatic from '@fastify/static'
import fastify, { type FastifyInstance } from 'fastify'
import type { z } from 'zod'
import type { Problem } from '#problem'
import type { JobStore, Sample } from '#store'
import { Announcements } from './announcements.ts'
import { type Desk, endpoints } from './endpoints.ts'
import { guard } from './guard.ts'
import { openApi } from './open-api.ts'

export interface AppParts {
  readonly store: JobStore
  readonly samples: readonly Sample[]
  /** The built pages; left out, only the interface answers. */
  readonly pages?: string
  readonly version: string
}

/** A job is a page of text. */
const LARGEST_BODY = 3_000_000

/** The server, not yet listening. */
export async function buildApp(parts: AppParts): Promise<FastifyInstance> {
  const app = fastify({
    bodyLimit: LARGEST_BODY,
    forceCloseConnections: true,
    routerOptions: { maxParamLength: 200 },
  })
  // JSON and nothing else: a plain form of a foreign page cannot send that.
  app.removeContentTypeParser('text/plain')
  await guard(app)
  const desk: Desk = { ...parts, announcements: new Announcements() }
  app.addHook('preClose', () => desk.announcements.close())
  app.setErrorHandler((error: Error & { statusCode?: number }, _request, reply) => {
    const status = error.statusCode ?? 500
    return reply.code(status).send({
      problems: [
        {
          at: 'request',
          what: status === 413 ? 'it is too large for a job' : 'the request could not be answered',
          why: status < 500 ? error.message : 'something broke inside the server',
          try: ['send JSON as /api/openapi.json describes it'],
        },
      ],
    })
  })
  addEndpoints(app, desk)
  app.get('/api/openapi.json', () => openApi(parts.version))
  app.get('/api/events', (_request, reply) => {
    reply.hijack()
    // What was said to guard the page goes out with the stream too.
    for (const [name, value] of Object.entries(reply.getHeaders()))
      if (value !== undefined) reply.raw.setHeader(name, value as string)
    desk.announcements.add(reply.raw)
  })
  await addPages(app, parts.pages)
  return app
}

function addEndpoints(app: FastifyInstance, desk: Desk): void {
  for (const { method, path, body, answer } of endpoints) {
    app.route({
      method,
      url: path.replace(/\{(\w+)\}/g, ':$1'),
      handler: async (request, reply) => {
        const read = body?.safeParse(request.body)
        if (read && !read.success) return reply.code(400).send({ problems: wrongBody(read.error) })
        const answered = await answer(desk, {
          params: request.params as Record<string, string>,
          query: request.query as Record<string, string>,
          body: read?.data,
        })
        return reply.code(answered.status).header('cache-control', 'no-store').send(answered.body)
      },
    })
  }
}

function wrongBody(error: z.ZodError): Problem[] {
  return error.issues.map((issue) => ({
    at: issue.path.join('.'),
    what: issue.message,
    why: 'it is not what /api/openapi.json asks for here',
    try: ['mend it and send it again'],
  }))
}

/** Built files never change under one name, and lie there compressed too; the page that names them is asked for each time. */
async function addPages(app: FastifyInstance, pages: string | undefined): Promise<void> {
  const page = pages === undefined ? undefined : join(pages, 'index.html')
  if (pages !== undefined && page !== undefined && existsSync(page)) {
    await app.register(fastifyStatic, {
      root: pages,
      cacheControl: false,
      preCompressed: true,
      setHeaders: (reply, path) => {
        const named = path.startsWith(join(pages, 'assets'))
        reply.header('cache-control', named ? 'public, max-age=31536000, immutable' : 'no-cache')
      },
    })
  }
  app.setNotFoundHandler((request, reply) => {
    const isPage = request.method === 'GET' && !/^\/(api|assets)\/|\.\w+$/.test(request.url)
    if (isPage && pages !== undefined && page !== undefined && existsSync(page))
      return reply.header('cache-control', 'no-cache').sendFile('index.html')
    return reply.code(404).send({
      problems: [
        {
          at: request.url.slice(0, 200),
          what: isPage ? 'the app is not built' : 'there is nothing at this address',
          why: isPage ? 'its built pages are not in dist/web' : 'no such page or endpoint',
          try: [isPage ? 'node scripts/set-up.mjs --app' : 'see /api/openapi.json'],
        },
      ],
    })
  })
}
