/** What the builder has to know about how the work is kept, in whole sentences under the bar. */
import { useState } from 'react'
import { saveDesign } from '../actions/files.ts'
import { useBench } from '../state/index.ts'

export function KeptNotice() {
  const { state, words } = useBench((bench) => bench.keeping)
  const [read, setRead] = useState<string | null>(null)
  if (words === null || words === read) return null
  return (
    <div
      className={state === 'failed' ? 'notice notice-bad' : 'notice'}
      role={state === 'failed' ? 'alert' : 'status'}
    >
      <p>{words}</p>
      <button type="button" onClick={saveDesign}>
        Save to a file
      </button>
      {state !== 'failed' && (
        <button type="button" className="quiet" onClick={() => setRead(words)}>
          I have read it
        </button>
      )}
    </div>
  )
}
