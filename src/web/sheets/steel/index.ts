import type { Sheet } from '../sheet.ts'
import { SteelPage } from './steel-page.tsx'

export const steelSheet: Sheet = { name: 'steel', Page: SteelPage }
