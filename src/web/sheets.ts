import type { Sheet } from './sheets/sheet.ts'
import { heatsSheet } from './sheets/heats/index.ts'
import { pieceSheet } from './sheets/piece/index.ts'
import { routeSheet } from './sheets/route/index.ts'
import { steelSheet } from './sheets/steel/index.ts'

/** The sheets of a job, in the order of the top line. One line a sheet. */
export const sheets: readonly Sheet[] = [pieceSheet, routeSheet, steelSheet, heatsSheet]
