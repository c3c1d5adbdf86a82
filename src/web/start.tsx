import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { loadWords } from '#words'
import { engine, followAddress, listenToWindows, loadList, useDesk } from '#desk'
import { keepAppAndJobs } from './offline/keep.ts'
import { holdWhilePressed } from './form/press.ts'
import { listenToKeys } from './shell/keys.ts'
import { Shell } from './shell/shell.tsx'

const root = document.getElementById('app')
const show = () => {
  if (!root) return
  createRoot(root).render(
    <StrictMode>
      <Shell />
    </StrictMode>,
  )
}
void loadWords(useDesk.getState().language).then(show, show)

engine
  .ask({ ask: 'declare' })
  .then((declared) => useDesk.setState({ declared }))
  .catch((fault: Error) => useDesk.setState({ notice: { words: fault.message } }))
void loadList()
void followAddress()
listenToWindows()
listenToKeys()
holdWhilePressed()
if (import.meta.env.PROD) keepAppAndJobs()
