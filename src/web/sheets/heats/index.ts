import type { Sheet } from '../sheet.ts'
import { HeatsPage } from './heats-page.tsx'

export const heatsSheet: Sheet = { name: 'heats', Page: HeatsPage }
