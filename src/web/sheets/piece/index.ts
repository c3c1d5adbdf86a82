import type { Sheet } from '../sheet.ts'
import { PiecePage } from './piece-page.tsx'

export const pieceSheet: Sheet = { name: 'piece', Page: PiecePage }
