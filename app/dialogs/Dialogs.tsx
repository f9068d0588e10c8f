/** Whichever dialog is open. */
import { lazy, Suspense, useEffect } from 'react'
import { openDialog, useDialogs } from '../actions/dialogs.ts'
import { openSample, SAMPLES } from '../actions/files.ts'
import { Dialog } from '../parts/Dialog.tsx'
import { useBench } from '../state/index.ts'
import { AllActions } from './AllActions.tsx'
import { FromLabel } from './FromLabel.tsx'
import { NewBox } from './NewBox.tsx'

const Shelf = lazy(() => import('../shelf/Shelf.tsx').then((page) => ({ default: page.Shelf })))
const LinkDialog = lazy(() =>
  import('../shelf/LinkDialog.tsx').then((page) => ({ default: page.LinkDialog })),
)

const close = () => openDialog(null)

export function Dialogs() {
  const open = useDialogs((dialogs) => dialogs.open)
  const fresh = useBench((bench) => bench.fresh)
  // A first visit begins with the builder's own box.
  useEffect(() => {
    if (fresh) openDialog('new-box')
  }, [fresh])
  switch (open) {
    case 'new-box':
      return <NewBox onClose={close} />
    case 'samples':
      return <Samples />
    case 'kept':
      return (
        <Suspense fallback={null}>
          <Shelf onClose={close} />
        </Suspense>
      )
    case 'link':
      return (
        <Suspense fallback={null}>
          <LinkDialog onClose={close} />
        </Suspense>
      )
    case 'all-actions':
      return <AllActions onClose={close} />
    case 'from-label':
      return <FromLabel onClose={close} />
    case 'trouble':
      return <Trouble />
    case null:
      return null
  }
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
