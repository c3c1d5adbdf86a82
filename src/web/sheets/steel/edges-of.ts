import type { Catalogue } from '#words'

export type Edges = keyof Catalogue['steelSheet']['views']

const EDGES: Readonly<Record<string, Edges>> = {
  'full-tang-knife': 'single',
  'hidden-tang-knife': 'single',
  sword: 'single',
  dagger: 'double',
}

/** How many cutting edges the piece of a job has: its sides are called by that. */
export function edgesOf(piece: unknown): Edges {
  const kind = (piece as { readonly kind?: unknown } | null | undefined)?.kind
  return EDGES[String(kind)] ?? 'none'
}
