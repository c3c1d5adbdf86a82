import { z } from 'zod'
import { type Endpoint, endpoints } from './endpoints.ts'

type Json = Record<string, unknown>

/** The description of the interface (OpenAPI 3.1), from the schemas that check what comes in. */
export function openApi(version: string): Json {
  const paths: Record<string, Json> = {}
  for (const one of endpoints) (paths[one.path] ??= {})[one.method.toLowerCase()] = describe(one)
  paths['/api/events'] = {
    get: {
      summary:
        'Server-sent events: `list` when the list changed, `job` when a job has a new version.',
      responses: { 200: { description: 'A stream.', content: { 'text/event-stream': {} } } },
    },
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Billetwright',
      version,
      description: 'Jobs and their versions, on this machine only.',
    },
    paths,
  }
}

function describe({ path, summary, query, body, answers }: Endpoint): Json {
  const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => ({
    name,
    in: 'path',
    required: true,
    schema: { type: 'string' },
  }))
  const inQuery = Object.entries(query ?? {}).map(([name, description]) => ({
    name,
    in: 'query',
    description,
    schema: { type: 'string' },
  }))
  return {
    summary,
    parameters: [...inPath, ...inQuery],
    ...(body && { requestBody: { required: true, content: content(body) } }),
    responses: Object.fromEntries(
      Object.entries(answers).map(([status, schema]) => [
        status,
        { description: said[Number(status)] ?? 'Done.', content: content(schema) },
      ]),
    ),
  }
}

const said: Readonly<Record<number, string>> = {
  201: 'Kept.',
  400: 'What was sent is not what is asked for.',
  404: 'It is not there.',
  409: 'Another version stands; both are kept.',
}

function content(schema: z.ZodType): Json {
  return { 'application/json': { schema: z.toJSONSchema(schema, { target: 'draft-2020-12' }) } }
}
