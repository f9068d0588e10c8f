/** Lay out: everything put on the faces, dragged where it belongs, and what is soldered between it. */
import { type KeyboardEvent, lazy, Suspense, useState } from 'react'
import { FaceStrip } from '../canvas/FaceStrip.tsx'
import { Inspector } from '../parts/Inspector.tsx'
import { SheetPanel } from '../parts/SheetPanel.tsx'
import { ThingList } from '../parts/ThingList.tsx'
import { WiringEditor } from '../parts/WiringEditor.tsx'
import { WiringSheet } from '../parts/WiringSheet.tsx'

const SHOWN = ['Faces', 'Wiring'] as const
type Shown = (typeof SHOWN)[number]

const PlaceForMe = lazy(() =>
  import('../parts/PlaceForMe.tsx').then((panel) => ({ default: panel.PlaceForMe })),
)

export function LayOut() {
  const [shown, setShown] = useState<Shown>('Faces')
  const wiring = shown === 'Wiring'
  const [placing, setPlacing] = useState(false)
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'ArrowRight' && event.key !== 'ArrowLeft') return
    event.preventDefault()
    const next = wiring ? 'Faces' : 'Wiring'
    setShown(next)
    document.getElementById(`lay-out-${next}`)?.focus()
  }
  return (
    <>
      <div className="column list-column">
        <div className="tabs lay-out-tabs" role="tablist" aria-label="What is laid out" onKeyDown={onKeyDown}>
          {SHOWN.map((title) => (
            <button
              key={title}
              type="button"
              role="tab"
              id={`lay-out-${title}`}
              aria-selected={shown === title}
              aria-controls="lay-out-middle"
              tabIndex={shown === title ? 0 : -1}
              className={shown === title ? 'place-tab here' : 'place-tab'}
              data-words={title}
              onClick={() => setShown(title)}
            >
              {title}
            </button>
          ))}
        </div>
        {placing ? (
          <Suspense fallback={null}>
            <PlaceForMe onClose={() => setPlacing(false)} />
          </Suspense>
        ) : (
          <>
            <button type="button" className="place-open" onClick={() => setPlacing(true)}>
              Place for me…
            </button>
            <ThingList />
          </>
        )}
      </div>
      <div className="middle" id="lay-out-middle">
        {wiring ? (
          <WiringSheet />
        ) : (
          <>
            <SheetPanel place="lay-out" opens="box" />
            <FaceStrip />
          </>
        )}
      </div>
      {wiring ? <WiringEditor /> : <Inspector />}
    </>
  )
}
