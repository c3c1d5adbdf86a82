import { lazy } from 'react'
import type { Sheet } from '../sheet.ts'

/** Fetched when first opened: the card need not wait for it. */
export const heatsSheet: Sheet = {
  name: 'heats',
  Page: lazy(async () => ({ default: (await import('./heats-page.tsx')).HeatsPage })),
}
