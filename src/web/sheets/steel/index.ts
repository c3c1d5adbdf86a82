import { lazy } from 'react'
import type { Sheet } from '../sheet.ts'

/** Fetched when first opened: the card need not wait for it. */
export const steelSheet: Sheet = {
  name: 'steel',
  Page: lazy(async () => ({ default: (await import('./steel-page.tsx')).SteelPage })),
}
