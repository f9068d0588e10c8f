/** Is the page as narrow as that of a tablet? The style sheets draw the line at the same width. */
import { useSyncExternalStore } from 'react'

const NARROW = '(max-width: 1180px)'

function subscribe(changed: () => void): () => void {
  const widths = window.matchMedia(NARROW)
  widths.addEventListener('change', changed)
  return () => widths.removeEventListener('change', changed)
}

export const useNarrow = (): boolean =>
  useSyncExternalStore(subscribe, () => window.matchMedia(NARROW).matches)
