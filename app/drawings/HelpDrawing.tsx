/**
 * Small drawings beside fields: what is measured, from where to where. They are many and seldom asked for, so they are
 * fetched when the first one is wanted; until then, and where that fails, the sentence stands alone. They say nothing
 * that the sentence does not say, and are hidden from whoever listens to the page.
 */
import { useEffect, useState } from 'react'
import { useBench } from '../state/index.ts'
import type { Ink } from './help/pen.ts'

type Drawings = typeof import('./help/drawings.ts')

let drawings: Drawings | null = null
let fetching: Promise<void> | null = null

export function fetchDrawings(): Promise<void> {
  fetching ??= import('./help/drawings.ts')
    .then((page) => {
      drawings = page
    })
    // No network, and nothing kept yet: the next one who asks tries again.
    .catch(() => {
      fetching = null
    })
  return fetching
}

function useDrawings(): Drawings | null {
  const [, setHere] = useState(drawings !== null)
  useEffect(() => {
    let wanted = drawings === null
    if (wanted) void fetchDrawings().then(() => wanted && setHere(drawings !== null))
    return () => {
      wanted = false
    }
  }, [])
  return drawings
}

/** The drawing beside a field's help; one for each case, with its words, where the field has several. */
export function HelpDrawing({ of }: { readonly of: string }) {
  const here = useDrawings()
  const drawing = here?.drawingOf(of)
  if (!here || !drawing) return null
  if (!here.isCases(drawing))
    return (
      <span className="help-drawing" aria-hidden="true">
        <Picture ink={drawing} here={here} />
      </span>
    )
  return (
    <span className="help-cases" aria-hidden="true">
      {Object.entries(drawing.cases).map(([words, ink]) => (
        <span key={words} className="help-case">
          <Picture ink={ink} here={here} />
          <span>{words}</span>
        </span>
      ))}
    </span>
  )
}

/** One small drawing in a place kept for it; of several cases the one that is chosen. */
export function Sketch({ of, chosen }: { readonly of: string; readonly chosen?: string | undefined }) {
  const here = useDrawings()
  const drawing = here?.drawingOf(of)
  const ink = here && drawing && here.isCases(drawing) ? drawing.cases[chosen ?? ''] : drawing
  return (
    <span className="sketch" aria-hidden="true">
      {here && ink && !here.isCases(ink) && <Picture ink={ink} here={here} />}
    </span>
  )
}

/** As the plan of the design in hand is: a left-handed one has treble below. */
function Picture({ ink, here: { GRID, LAYERS } }: { readonly ink: Ink; readonly here: Drawings }) {
  const left = useBench(({ design }) => design.hand === 'left')
  const shown = (left && ink.left) || ink
  return (
    <svg
      className={left && shown.plan ? 'picture turned-over' : 'picture'}
      viewBox={`0 0 ${GRID.width} ${GRID.height}`}
      aria-hidden="true"
    >
      {LAYERS.map(
        (layer) => shown[layer] && <path key={layer} className={`ink-${layer}`} d={shown[layer]} />,
      )}
    </svg>
  )
}
