import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { engine, followAddress, listenToWindows, loadList, useDesk } from '#desk'
import { listenToKeys } from './shell/keys.ts'
import { Shell } from './shell/shell.tsx'

const root = document.getElementById('app')
if (root) {
  createRoot(root).render(
    <StrictMode>
      <Shell />
    </StrictMode>,
  )
}

engine
  .ask({ ask: 'declare' })
  .then((declared) => useDesk.setState({ declared }))
  .catch((fault: Error) => useDesk.setState({ notice: { words: fault.message } }))
void loadList()
void followAddress()
listenToWindows()
listenToKeys()

if ('serviceWorker' in navigator && import.meta.env.PROD)
  void navigator.serviceWorker.register('/service-worker.js').catch(() => undefined)
