import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'

const root = document.getElementById('root')
if (root === null) throw new Error('The page has no element called root.')
createRoot(root).render(
  <StrictMode>
    <h1>Lidwright</h1>
  </StrictMode>,
)
