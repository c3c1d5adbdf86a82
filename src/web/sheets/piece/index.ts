import { lazy } from 'react'
import type { Sheet } from '../sheet.ts'

/** Fetched when first opened: the card need not wait for it. */
export const pieceSheet: Sheet = {
  name: 'piece',
  Page: lazy(async () => ({ default: (await import('./piece-page.tsx')).PiecePage })),
}
