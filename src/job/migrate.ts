import { type Result, failed, ok } from '#problem'
import { FORMAT } from './job.ts'

type Raw = Readonly<Record<string, unknown>>

/** Each entry brings a file of that format to the next one. Pure; a frozen sample of each format is kept in the tests. */
const steps: Readonly<Record<number, (raw: Raw) => Raw>> = {}

/** Brings an older job file to today's format. Newer ones are refused: they would be saved over with less. */
export function migrate(raw: Raw): Result<Raw> {
  const format = raw.billetwright
  if (typeof format !== 'number' || !Number.isInteger(format) || format < 1) {
    return failed({
      at: 'billetwright',
      what: 'the file does not say which format it is',
      why: 'every job file carries its format number',
      try: [`write "billetwright": ${FORMAT} at the top`],
    })
  }
  if (format > FORMAT) {
    return failed({
      at: 'billetwright',
      what: `the file is of format ${format}; this program knows up to ${FORMAT}`,
      why: 'it was written by a newer program and may hold what this one would drop',
      try: ['use the newer program', 'ask for the job in the older format'],
    })
  }
  let now = raw
  for (let f = format; f < FORMAT; f++) now = { ...steps[f](now), billetwright: f + 1 }
  return ok(now)
}
