import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App.tsx'
import { keepForOffline } from './offline/register.ts'
import { flushKeeping, startKeeping } from './saving/index.ts'
import './style/index.css'

/** What was kept is waited for this long, so that it is the first thing seen; then the page opens without it. */
const PATIENCE_MS = 500

const root = document.getElementById('root')
if (root === null) throw new Error('The page has no element called root.')
const patience = new Promise((resolve) => setTimeout(resolve, PATIENCE_MS))
keepForOffline(flushKeeping)
void Promise.race([startKeeping(), patience]).then(() =>
  createRoot(root).render(
    <StrictMode>
      <App />
    </StrictMode>,
  ),
)
