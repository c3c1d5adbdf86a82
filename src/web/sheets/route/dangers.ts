/** How a danger stands on a row: it always comes with fire and hammer, it stood before, or it comes up here. */
export type DangerKind = 'usual' | 'again' | 'new'

export interface Danger {
  readonly word: string
  readonly kind: DangerKind
}

/** What every heat and every blow brings: the head of the card says it once. */
export const usualDangers: readonly string[] = ['heat', 'glare', 'gas', 'strike']

/** The cautions of one step in a word each, what is new first; several may share a word. */
export function dangersOf(
  names: readonly string[],
  told: readonly string[],
  wordOf: (name: string) => string,
): Danger[] {
  const kinds = new Map<string, DangerKind>()
  for (const name of names) {
    const word = wordOf(name)
    const kind = usualDangers.includes(name) ? 'usual' : told.includes(name) ? 'again' : 'new'
    if (kind === 'new' || !kinds.has(word)) kinds.set(word, kind)
  }
  const order: readonly DangerKind[] = ['new', 'again', 'usual']
  return [...kinds]
    .map(([word, kind]) => ({ word, kind }))
    .sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind))
}
