/** What fits this box: the questions beside, the drawing above, and the rows under it. */
import { useEffect } from 'react'
import { SheetPanel } from '../parts/SheetPanel.tsx'
import { FitAsk } from './FitAsk.tsx'
import { FitTable } from './FitTable.tsx'
import { useFitOpen } from './open.ts'
import { dropRow, useTrying } from './trying.ts'

export function FitPlace() {
  useEffect(() => {
    const stop = new AbortController()
    window.addEventListener(
      'keydown',
      (event) => {
        if (event.key !== 'Escape' || event.defaultPrevented || !useTrying.getState().row) return
        event.preventDefault()
        dropRow()
      },
      { signal: stop.signal, capture: true },
    )
    return () => {
      stop.abort()
      // Leaving drops what was only tried.
      dropRow()
    }
  }, [])
  return (
    <>
      <div className="column form-column fit-column">
        <p className="fit-opener">
          <button type="button" onClick={() => useFitOpen.setState({ open: false })}>
            Back to the choices
          </button>
        </p>
        <FitAsk />
      </div>
      <div className="middle fit-middle">
        <SheetPanel place="choose" opens="all" />
        <FitTable />
      </div>
    </>
  )
}
