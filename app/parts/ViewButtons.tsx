/** The two views one always wants back, and zooming for those without a wheel. */
import { act } from '../actions/actions.ts'

export function ViewButtons() {
  return (
    <div className="view-buttons" role="group" aria-label="View">
      <button type="button" className="quiet" title="Show the box (B)" onClick={() => act('fit-box')}>
        Box
      </button>
      <button type="button" className="quiet" title="Show the whole instrument (F)" onClick={() => act('fit-all')}>
        Whole
      </button>
      <button type="button" className="quiet" aria-label="Zoom out" title="Zoom out (-)" onClick={() => act('farther')}>
        −
      </button>
      <button type="button" className="quiet" aria-label="Zoom in" title="Zoom in (+)" onClick={() => act('nearer')}>
        +
      </button>
    </div>
  )
}
