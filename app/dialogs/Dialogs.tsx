/** Whichever dialog is open. */
import { type ComponentType, lazy, Suspense, useEffect } from 'react'
import { type DialogName, openDialog, useDialogs } from '../actions/dialogs.ts'
import { openSample, SAMPLES } from '../actions/files.ts'
import { Dialog } from '../parts/Dialog.tsx'
import { useBench } from '../state/index.ts'
import { NewBox } from './NewBox.tsx'

/** Every dialog but the first is fetched when it is asked for. */
const SHOWN: Readonly<Record<Exclude<DialogName, 'new-box' | null>, ComponentType<{ onClose: () => void }>>> =
  {
    samples: Samples,
    kept: lazy(() => import('../shelf/Shelf.tsx').then((page) => ({ default: page.Shelf }))),
    link: lazy(() => import('../shelf/LinkDialog.tsx').then((page) => ({ default: page.LinkDialog }))),
    'all-actions': lazy(() => import('./AllActions.tsx').then((page) => ({ default: page.AllActions }))),
    'from-label': lazy(() => import('./FromLabel.tsx').then((page) => ({ default: page.FromLabel }))),
    history: lazy(() => import('./History.tsx').then((page) => ({ default: page.History }))),
    row: lazy(() => import('./RowDialog.tsx').then((page) => ({ default: page.RowDialog }))),
    measure: lazy(() => import('./MeasureDialog.tsx').then((page) => ({ default: page.MeasureDialog }))),
    trouble: Trouble,
  }

const close = () => openDialog(null)

export function Dialogs() {
  const open = useDialogs((dialogs) => dialogs.open)
  const fresh = useBench((bench) => bench.fresh)
  // A first visit begins with the builder's own box.
  useEffect(() => {
    if (fresh) openDialog('new-box')
  }, [fresh])
  if (open === null) return null
  if (open === 'new-box') return <NewBox onClose={close} />
  const Shown = SHOWN[open]
  return (
    <Suspense fallback={null}>
      <Shown onClose={close} />
    </Suspense>
  )
}

function Samples() {
  return (
    <Dialog title="Sample instruments" onClose={close}>
      <p className="soft">
        Finished designs to look at and change. What is on the bench is replaced; undo brings it back.
      </p>
      <ul className="plain-list">
        {SAMPLES.map((sample) => (
          <li key={sample.name}>
            <button
              type="button"
              onClick={() => {
                close()
                void openSample(sample)
              }}
            >
              {sample.title}
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  )
}

function Trouble() {
  const trouble = useDialogs((dialogs) => dialogs.trouble)
  return (
    <Dialog title={trouble?.title ?? 'Something is wrong'} onClose={close}>
      <ul className="trouble-list">
        {trouble?.sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p className="soft">What is on the bench is as it was.</p>
    </Dialog>
  )
}
