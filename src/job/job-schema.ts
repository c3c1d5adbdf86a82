import { z } from 'zod'
import { operations } from '#operations'
import { type Parameters, schemaOf } from '#parameters'
import { pieceKinds } from '#piece'
import { gradeForm } from '#steel'
import {
  cuttingParameters,
  rackItemParameters,
  rateParameters,
  shopParameters,
  toleranceParameters,
} from '#shop'
import { FORMAT } from './job.ts'
import { jobNames, measuredParameters, wishParameters } from './read-job.ts'

/** The JSON Schema (2020-12) of a job file, from the very declarations that read it. */
export function jobSchema(): Record<string, unknown> {
  const step = z.union(
    operations.map((o) =>
      schemaOf(o.parameters)
        .extend({ do: z.literal(o.name), note: z.string().optional() })
        .meta({ title: o.name, description: o.summary }),
    ),
  )
  const piece = z.union(
    pieceKinds.map((kind) =>
      schemaOf(kind.parameters)
        .extend({ kind: z.literal(kind.name) })
        .meta({ title: kind.title, description: kind.summary }),
    ),
  )
  const part = (parameters: Parameters) => schemaOf(parameters)
  const job = z
    .strictObject({
      billetwright: z.literal(FORMAT),
      name: z.string().min(1).max(200),
      note: z.string().optional(),
      piece: piece.optional(),
      wishes: part(wishParameters).optional(),
      shop: part(shopParameters).optional(),
      rates: part(rateParameters).optional(),
      tolerances: part(toleranceParameters).optional(),
      rack: z.array(part(rackItemParameters)).max(2000).optional(),
      cutting: part(cuttingParameters).optional(),
      steels: z.array(z.record(z.string(), z.unknown())).max(100).optional(),
      bars: z.record(z.string(), z.array(step).min(1)),
      finish: z.string().optional(),
      measured: z.array(part(measuredParameters)).optional(),
      seed: z.int().optional(),
    })
    .meta({
      title: 'Billetwright job',
      description: 'A piece of pattern-welded steel and the way it is made.',
    })
  const schema = z.toJSONSchema(job, { target: 'draft-2020-12' }) as {
    properties: Record<string, { description?: string; items?: unknown }>
  }
  schema.properties.steels.items = gradeForm
  for (const [name, about] of Object.entries(jobNames)) {
    if (schema.properties[name]) schema.properties[name].description ??= about
  }
  return schema as unknown as Record<string, unknown>
}
