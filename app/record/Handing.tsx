/** The sheet, the label and the whole bundle leave the page: printed, saved, handed over. */
import { useEffect, useRef, useState } from 'react'
import { LABEL_SIZE } from '../../exporters/index.ts'
import { check } from '../../geometry/index.ts'
import { download } from '../actions/files.ts'
import { useDesign, useLayout } from '../parts/calm.ts'
import { sayLength } from '../parts/say.ts'
import { stops } from '../parts/tightness.ts'
import { goTo } from '../state/index.ts'
import { type Bundling, startMaking } from './bundling.ts'
import { printLabelSheet, printSheetPage, saveLabel, saveSheet, saveSheetPdf } from './outgoing.ts'

/** Work shorter than this shows no progress, milliseconds. */
const SHORT = 500

export function Handing() {
  const design = useDesign()
  const [said, setSaid] = useState<string | null>(null)
  const say = (work: () => string | Promise<string>) => async () => {
    try {
      setSaid(await work())
    } catch (error) {
      setSaid(`Nothing was written: ${error instanceof Error ? error.message : String(error)}`)
    }
  }
  return (
    <aside className="inspector" aria-label="Hand over">
      <h2>The sheet</h2>
      <button type="button" className="main" onClick={() => printSheetPage(design)}>
        Print the sheet
      </button>
      <button type="button" onClick={say(() => saveSheetPdf(design))}>
        Save the sheet as PDF
      </button>
      <button type="button" onClick={say(() => saveSheet(design))}>
        Save the sheet as a page
      </button>
      <h2>The label</h2>
      <p className="small soft">
        For the inside of the box, {sayLength(LABEL_SIZE.width, design.units)} by{' '}
        {sayLength(LABEL_SIZE.height, design.units)}: what to string it with, and a code that opens the design
        again.
      </p>
      <button type="button" onClick={() => printLabelSheet(design)}>
        Print the label
      </button>
      <button type="button" onClick={say(() => saveLabel(design))}>
        Save the label
      </button>
      <Everything />
      <p className="small soft" role="status" aria-live="polite">
        {said ?? ''}
      </p>
    </aside>
  )
}

interface Progress {
  readonly done: number
  readonly of: number
  readonly what: string
}

/** One zip with everything, made beside the page, with its progress and a way to stop it. */
function Everything() {
  const design = useDesign()
  const blocked = stops(check(useLayout()))
  const [confirmed, setConfirmed] = useState(false)
  const [progress, setProgress] = useState<Progress | null>(null)
  const [slow, setSlow] = useState(false)
  const [said, setSaid] = useState<string | null>(null)
  const running = useRef<Bundling | null>(null)
  const ended = () => {
    running.current = null
    setProgress(null)
    setSlow(false)
  }
  useEffect(() => () => running.current?.stop(), [])
  const underWay = progress !== null
  useEffect(() => {
    if (!underWay) return
    const timer = window.setTimeout(() => setSlow(true), SHORT)
    return () => window.clearTimeout(timer)
  }, [underWay])
  const start = async () => {
    setSaid(null)
    setProgress({ done: 0, of: 1, what: 'beginning' })
    const bundling = startMaking({ make: 'everything', design, options: {} }, (done, of, what) => {
      if (running.current === bundling) setProgress({ done, of, what })
    })
    running.current = bundling
    try {
      const { name, bytes, cautions } = await bundling.made
      download(name, bytes, 'application/zip')
      setSaid([`Saved ${name}.`, ...cautions].join(' '))
    } catch (error) {
      setSaid(`Nothing was written: ${error instanceof Error ? error.message : String(error)}`)
    }
    ended()
  }
  const cancel = () => {
    running.current?.stop()
    ended()
    setSaid('Stopped. Nothing was written.')
  }
  return (
    <>
      <h2>Everything</h2>
      <p className="small soft">
        One zip: design, templates as SVG, DXF and PDF, sheet, tables, label. The same design gives the same
        bytes.
      </p>
      {blocked > 0 && (
        <div className="barred">
          <p>
            <b className="stop">
              {blocked === 1 ? 'One stop is' : `${blocked} stops are`} neither mended nor overruled.
            </b>{' '}
            The templates in it cannot be built as they stand, or will fail.
          </p>
          <button type="button" className="link" onClick={() => goTo('prove')}>
            See {blocked === 1 ? 'it' : 'them'} in Prove
          </button>
          <label className="check">
            <input
              type="checkbox"
              checked={confirmed}
              onChange={(event) => setConfirmed(event.target.checked)}
            />
            Save all the same
          </label>
        </div>
      )}
      {progress === null ? (
        <button type="button" disabled={blocked > 0 && !confirmed} onClick={() => void start()}>
          Save everything
        </button>
      ) : (
        <button type="button" onClick={cancel}>
          Stop
        </button>
      )}
      {progress !== null && slow && (
        <p className="small bundling">
          <progress value={progress.done} max={progress.of} aria-label="How far the zip is" />
          {progress.what}
        </p>
      )}
      <p className="small soft" role="status" aria-live="polite">
        {said ?? ''}
      </p>
    </>
  )
}
