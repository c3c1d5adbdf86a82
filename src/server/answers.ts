import { z } from 'zod'

/** What goes over the wire, declared once: it checks what comes in and describes the interface. */

export const problem = z
  .object({ at: z.string(), what: z.string(), why: z.string(), try: z.array(z.string()) })
  .meta({ id: 'Problem', description: 'What cannot be, where, why, and what to try.' })

export const problems = z.object({ problems: z.array(problem) }).meta({ id: 'Problems' })

/** A job file's object. It is kept whatever is wrong with it: half a thought is worth keeping. */
export const written = z
  .record(z.string(), z.unknown())
  .meta({ id: 'Job', description: 'A job file as an object; see `billetwright schema`.' })

export const jobLine = z
  .object({
    id: z.string(),
    name: z.string(),
    sample: z.string().nullable().describe('The sample it is, if it is one.'),
    version: z.int().describe('Number of the version that stands.'),
    changedAt: z.iso.datetime(),
  })
  .meta({ id: 'JobLine' })

export const storedJob = jobLine.extend({ job: written }).meta({ id: 'StoredJob' })

export const versionLine = z
  .object({
    number: z.int(),
    basedOn: z.int().nullable(),
    aside: z.boolean().describe('Kept beside the standing one: another was saved before it.'),
    savedAt: z.iso.datetime(),
    name: z.string(),
  })
  .meta({ id: 'VersionLine' })

export const conflict = z
  .object({ standing: storedJob, keptAs: z.int() })
  .meta({ id: 'Conflict', description: 'Another version stands; the one sent is kept beside it.' })

export const newJob = z.object({ job: written }).meta({ id: 'NewJob' })

export const saving = z
  .object({
    version: z.int().min(1).describe('The version the writer had before them.'),
    job: written,
    by: z.string().max(60).optional().describe('The window that saves, told to the others.'),
  })
  .meta({ id: 'Saving' })

export const restoring = z.object({ number: z.int().min(1) }).meta({ id: 'Restoring' })
