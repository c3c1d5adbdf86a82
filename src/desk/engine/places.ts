/** A place in a job: keys and indexes from the top. */
export type Path = readonly (string | number)[]

/** The place as problems name it: `bars.plate[3].width`. */
export function placeOf(path: Path): string {
  return path.reduce<string>(
    (at, key) => (typeof key === 'number' ? `${at}[${key}]` : at === '' ? key : `${at}.${key}`),
    '',
  )
}

/** A place as problems name it, back into keys. Names of bars may hold anything: they are matched. */
export function pathOf(at: string, bars: readonly string[]): Path {
  const bar = bars
    .filter((name) => at.startsWith(`bars.${name}`))
    .sort((a, b) => b.length - a.length)[0]
  const head = bar === undefined ? '' : `bars.${bar}`
  const rest = at.slice(head.length)
  const keys = [...rest.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, key]) =>
    index === undefined ? key : Number(index),
  )
  return bar === undefined ? keys : ['bars', bar, ...keys]
}

/** The value at a place, or undefined. */
export function valueAt(of: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null
        ? (at as Record<string | number, unknown>)[key]
        : undefined,
    of,
  )
}

/** A copy with another value at a place; all that is not on the way there is the very same. */
export function withValue<T>(of: T, path: Path, value: unknown): T {
  const [key, ...rest] = path
  if (key === undefined) return value as T
  if (typeof key === 'number') {
    const list = Array.isArray(of) ? [...(of as unknown[])] : []
    list[key] = withValue(list[key], rest, value)
    return list as T
  }
  const group: Record<string, unknown> =
    typeof of === 'object' && of !== null && !Array.isArray(of) ? { ...of } : {}
  if (rest.length === 0 && value === undefined) delete group[key]
  else group[key] = withValue(group[key], rest, value)
  return group as T
}

/** Names of the bars of a written job. */
export function barNames(job: Readonly<Record<string, unknown>>): string[] {
  const { bars } = job
  return typeof bars === 'object' && bars !== null ? Object.keys(bars) : []
}
