/** The designs kept in this browser, to go back to one or to throw one away. */
import { useEffect, useState } from 'react'
import { download } from '../actions/files.ts'
import { forgetViews } from '../canvas/lookings.ts'
import { Dialog } from '../parts/Dialog.tsx'
import { forgetKept, type KeptDesign, keptDesigns, openKept, untouchedFiles } from '../saving/index.ts'

const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' })

export function Kept({ onClose }: { readonly onClose: () => void }) {
  const [designs, setDesigns] = useState<readonly KeptDesign[] | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  const load = () =>
    void keptDesigns().then(setDesigns, () =>
      setFault('What is kept in this browser cannot be read just now.'),
    )
  useEffect(load, [])
  const open = async (design: KeptDesign) => {
    if (!(await openKept(design.record)))
      return setFault(`“${design.title}” could not be opened; the design on the bench stays.`)
    forgetViews()
    onClose()
  }
  const forget = async (design: KeptDesign) => {
    if (await forgetKept(design.record)) load()
    else setFault(`“${design.title}” is open here or in another tab, so it stays.`)
  }
  const untouched = untouchedFiles()
  return (
    <Dialog title="Designs kept in this browser" onClose={onClose}>
      <p className="soft">
        Kept on this machine only. Save one to a file to take it elsewhere, or to be sure of it.
      </p>
      <ul className="plain-list kept-list">
        {designs?.map((design) => (
          <li key={design.record}>
            <button type="button" disabled={design.here} onClick={() => void open(design)}>
              <span>{design.title || 'Untitled'}</span>
              <span className="small soft">{design.here ? 'on the bench' : WHEN.format(design.at)}</span>
            </button>
            {!design.here && <Forget onForget={() => void forget(design)} title={design.title} />}
          </li>
        ))}
      </ul>
      {designs?.length === 0 && <p>Nothing is kept yet.</p>}
      {fault && (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
      {untouched.length > 0 && (
        <>
          <h2>Could not be opened</h2>
          <p className="soft">They lie here as they were. Save them to a file, and nothing is lost.</p>
          <ul className="plain-list">
            {untouched.map((one) => (
              <li key={one.name}>
                <button type="button" onClick={() => download(one.name, one.text, 'application/json')}>
                  Save {one.name} as it is
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </Dialog>
  )
}

/** Throwing away is for good, so it is asked once more. */
function Forget({ title, onForget }: { title: string; onForget: () => void }) {
  const [asked, setAsked] = useState(false)
  return (
    <button
      type="button"
      className="quiet"
      aria-label={`Throw “${title}” away`}
      onClick={() => (asked ? onForget() : setAsked(true))}
    >
      {asked ? 'For good?' : 'Throw away'}
    </button>
  )
}
