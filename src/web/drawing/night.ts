import { useSyncExternalStore } from 'react'
import { type Theme, useDesk } from '#desk'

const dark = window.matchMedia('(prefers-color-scheme: dark)')

/** Whether the night shop's colours are on. */
export function isNight(theme: Theme): boolean {
  return theme === 'night' || (theme === 'system' && dark.matches)
}

export function useNight(): boolean {
  const theme = useDesk((desk) => desk.theme)
  return useSyncExternalStore(
    (changed) => {
      dark.addEventListener('change', changed)
      return () => dark.removeEventListener('change', changed)
    },
    () => isNight(theme),
  )
}
