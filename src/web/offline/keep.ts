import { useDesk } from '#desk'

/**
 * Has the service worker keep the app, and every job as it stands: from the first visit on, and again
 * whenever the list changes, as it does at every save.
 */
export function keepAppAndJobs(): void {
  if (!('serviceWorker' in navigator)) return
  const { serviceWorker } = navigator
  serviceWorker.register('/service-worker.js').catch(() => undefined)
  void serviceWorker.ready.then(({ active }) => {
    const tell = () => {
      const { jobs } = useDesk.getState()
      // A worker that was replaced meanwhile has done its work.
      if (jobs.length > 0) (serviceWorker.controller ?? active)?.postMessage({ jobs })
    }
    tell()
    useDesk.subscribe((now, before) => {
      if (now.jobs !== before.jobs) tell()
    })
  })
}
