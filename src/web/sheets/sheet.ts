import type { ComponentType } from 'react'

/** One sheet of a job: its word in the address, its name in the catalogues, and what stands on it. */
export interface Sheet {
  readonly name: 'piece' | 'route' | 'steel' | 'heats'
  readonly Page: ComponentType
}
