/** The sheet with its small head: what is seen, and the views one always wants back. */
import { useState } from 'react'
import { countsOf } from '../../geometry/index.ts'
import { act } from '../actions/actions.ts'
import type { Fitting } from '../canvas/camera.ts'
import { Drawing } from '../canvas/Drawing.tsx'
import { lookingOf } from '../canvas/lookings.ts'
import { useMode } from '../canvas/mode.ts'
import { useBench } from '../state/index.ts'

export function SheetPanel({ place, opens }: { readonly place: string; readonly opens: Fitting }) {
  const [pull, setPull] = useState(() => lookingOf(place, opens).pull)
  const [counts, setCounts] = useState(() => lookingOf(place, opens).counts)
  const others = useBench(({ design }) => countsOf(design).length > 1)
  return (
    <section className="sheet sheet-panel" aria-label="Plan, rule and section">
      <header className="sheet-head">
        <h2>Plan from the front, section under it</h2>
        <fieldset className="view-buttons" aria-label="View">
          {place === 'choose' && (
            <button
              type="button"
              className="quiet"
              aria-pressed={pull}
              title="Draws the bow of the neck, the slant of the saddle and the room it needs"
              onClick={() => setPull(!pull)}
            >
              Show the pull
            </button>
          )}
          {others && (
            <button
              type="button"
              className="quiet"
              aria-pressed={counts}
              title="Draws where the strings run with the other counts that the holes serve"
              onClick={() => setCounts(!counts)}
            >
              Other counts
            </button>
          )}
          <ModeButtons />
          <button type="button" className="quiet" title="Show the box (B)" onClick={() => act('fit-box')}>
            Box
          </button>
          <button
            type="button"
            className="quiet"
            title="Show the whole instrument (F)"
            onClick={() => act('fit-all')}
          >
            Whole
          </button>
          <button
            type="button"
            className="quiet"
            aria-label="Zoom out"
            title="Zoom out (-)"
            onClick={() => act('farther')}
          >
            −
          </button>
          <button
            type="button"
            className="quiet"
            aria-label="Zoom in"
            title="Zoom in (+)"
            onClick={() => act('nearer')}
          >
            +
          </button>
        </fieldset>
      </header>
      <div className="sheet-body">
        <Drawing place={place} opens={opens} pull={pull} counts={counts && others} />
      </div>
    </section>
  )
}

/** What a press on the drawing means, for those without a keyboard at hand. */
function ModeButtons() {
  const mode = useMode((state) => state.mode)
  return (
    <>
      <button
        type="button"
        className="quiet"
        aria-pressed={mode === 'frame'}
        title="Drag a frame to select everything it meets (C); Shift-drag does the same"
        onClick={() => act('frame')}
      >
        Frame
      </button>
      <button
        type="button"
        className="quiet"
        aria-pressed={mode === 'measure'}
        title="Press two edges, centres or lines to measure between them (D)"
        onClick={() => act('measure-tool')}
      >
        Measure
      </button>
    </>
  )
}
