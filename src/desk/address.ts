import { useSyncExternalStore } from 'react'

/** Where one is: the job, the sheet, the open step, `/builders-plate/route/plate/3`; or the list of jobs, `/jobs`. */
export interface Address {
  readonly job?: string
  readonly sheet: string
  /** The open step: its bar and its index there. */
  readonly bar?: string
  readonly step?: number
  /** The list of jobs is open. */
  readonly list?: true
}

export const FIRST_SHEET = 'route'
const LIST = '/jobs'

export function readAddress(path: string): Address {
  if (path === LIST) return { list: true, sheet: FIRST_SHEET }
  const [job, sheet, bar, step] = path.split('/').filter(Boolean).map(decodeURIComponent)
  const index = Number(step)
  return {
    ...(job !== undefined && { job }),
    sheet: sheet ?? FIRST_SHEET,
    ...(bar !== undefined && Number.isInteger(index) && step !== undefined && { bar, step: index }),
  }
}

export function writeAddress({ job, sheet, bar, step, list }: Address): string {
  if (list) return LIST
  const parts = job === undefined ? [] : [job, sheet]
  if (job !== undefined && bar !== undefined && step !== undefined) parts.push(bar, String(step))
  return `/${parts.map(encodeURIComponent).join('/')}`
}

const listeners = new Set<() => void>()
const tell = () => listeners.forEach((listener) => listener())
let read: { readonly path: string; readonly address: Address } | undefined

/** The address as it stands; on the list, with the sheet one came from. */
export function address(): Address {
  const path = location.pathname
  if (read?.path !== path) {
    const here = readAddress(path)
    read = { path, address: here.list && read ? { ...here, sheet: read.address.sheet } : here }
  }
  return read.address
}

/** Goes there; `replace` where going back should not lead here. */
export function go(to: Partial<Address>, replace = false): void {
  const from = address()
  const kept = to.job === undefined && !to.list ? from : { sheet: from.sheet }
  const path = writeAddress({ ...kept, ...to })
  if (path === location.pathname) return
  history[replace ? 'replaceState' : 'pushState'](null, '', path)
  tell()
}

/** Closes the open step. */
export function closeStep(): void {
  const { job, sheet } = address()
  if (address().step !== undefined) {
    history.pushState(null, '', writeAddress({ job, sheet }))
    tell()
  }
}

if (typeof window !== 'undefined') addEventListener('popstate', tell)

export function useAddress(): Address {
  return useSyncExternalStore((listener) => {
    listeners.add(listener)
    return () => listeners.delete(listener)
  }, address)
}
