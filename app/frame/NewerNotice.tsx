/** A newer version of the page has been fetched: it begins when the builder says so, never under the hand. */
import { useState } from 'react'
import { useOffline } from '../offline/register.ts'

export function NewerNotice() {
  const takeOver = useOffline((offline) => offline.takeOver)
  const [later, setLater] = useState(false)
  if (!takeOver || later) return null
  return (
    <div className="notice" role="status">
      <p>A newer version of Lidwright is here. Your work is kept.</p>
      <button type="button" onClick={takeOver}>
        Use it now
      </button>
      <button type="button" className="quiet" onClick={() => setLater(true)}>
        Later
      </button>
    </div>
  )
}
