import type { Written } from '#desk'

const found = import.meta.glob<Written>('../../../../jobs/patterns/*.json', {
  eager: true,
  import: 'default',
})

/** The small job that shows a pattern, by the pattern's trade name. */
export const patternJobs: ReadonlyMap<string, Written> = new Map(
  Object.values(found).flatMap((job) => {
    const { pattern } = (job.wishes ?? {}) as { readonly pattern?: unknown }
    return typeof pattern === 'string' ? [[pattern, job] as const] : []
  }),
)
