import type { Sheet } from '../sheet.ts'
import { RoutePage } from './route-page.tsx'

export const routeSheet: Sheet = { name: 'route', Page: RoutePage }
